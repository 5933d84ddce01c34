import type { Block } from './blocks';

/** For each block all that it waits for, directly or not: `table[block * count + other]`. */
export function ancestors(blocks: readonly Block[], sequence: readonly number[]): Uint8Array {
  const count = blocks.length;
  const table = new Uint8Array(count * count);
  for (const block of sequence) {
    for (const before of blocks[block]?.before ?? []) {
      table[block * count + before] = 1;
      for (let other = 0; other < count; other += 1) {
        if (table[before * count + other]) table[block * count + other] = 1;
      }
    }
  }
  return table;
}

/**
 * A sequence put in the order of the places given to its blocks, none before what it waits for.
 * @param sequence blocks, each after those that it waits for
 * @param places a place for each block, a whole number; changed to the one it gets
 */
export function inPlaces(
  blocks: readonly Block[],
  sequence: readonly number[],
  places: Float64Array,
): number[] {
  for (const block of sequence) {
    let least = places[block] ?? 0;
    for (const before of blocks[block]?.before ?? []) least = Math.max(least, places[before] ?? 0);
    places[block] = least;
  }
  // Numbers are sorted several times as fast without a comparison of our own: its turn is what is left over of a key.
  const count = sequence.length;
  const keys = new Float64Array(count);
  for (let at = 0; at < count; at += 1) keys[at] = (places[sequence[at] ?? 0] ?? 0) * count + at;
  keys.sort();
  const sorted: number[] = [];
  for (const key of keys) sorted.push(sequence[key - Math.floor(key / count) * count] ?? 0);
  return sorted;
}

/** Moves one block forward or back by some places, and with it all on the way that it waits for, or that waits for it. */
export function moved(sequence: readonly number[], waitsFor: Uint8Array, random: () => number): number[] {
  const count = sequence.length;
  const from = Math.floor(random() * count);
  // Small moves are tried more often than far ones.
  const far = Math.max(1, Math.floor(random() ** 2 * count));
  const to = random() < 0.5 ? from - far : from + far;
  const low = Math.max(0, Math.min(from, to));
  const high = Math.min(count - 1, Math.max(from, to));
  const block = sequence[from] ?? 0;
  const isBack = to < from;
  const along: number[] = [];
  const without: number[] = [];
  for (let at = low; at <= high; at += 1) {
    const other = sequence[at] ?? 0;
    const related = isBack ? waitsFor[block * count + other] : waitsFor[other * count + block];
    (other === block || related ? along : without).push(other);
  }
  const between = isBack ? [...along, ...without] : [...without, ...along];
  return [...sequence.slice(0, low), ...between, ...sequence.slice(high + 1)];
}

/** Moves one block with all that it waits for and that waits for it: a whole job, soonest to latest. */
export function movedWhole(
  blocks: readonly Block[],
  sequence: readonly number[],
  waitsFor: Uint8Array,
  random: () => number,
): number[] {
  const count = sequence.length;
  const block = Math.floor(random() * count);
  const shift = 2 * Math.round((random() - 0.5) * count) + 1;
  const places = new Float64Array(count);
  sequence.forEach((other, at) => {
    const isKin = other === block || waitsFor[block * count + other] || waitsFor[other * count + block];
    places[other] = 2 * at + (isKin ? shift : 0);
  });
  return inPlaces(blocks, sequence, places);
}
