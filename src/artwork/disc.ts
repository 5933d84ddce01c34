import { type BitMask, bitMask, lastBits } from './bit-mask';

/** Space between the centres of neighbouring pixels on each axis; both in one unit of the caller's choice. */
export interface Pitch {
  readonly x: number;
  readonly y: number;
}

/** A disc of pixels: how many it reaches to each side in each row, from that of its middle on. */
export type Disc = readonly number[];

/** The square of a distance of so many pixels. */
const squared = (across: number, down: number, pitch: Pitch): number =>
  (down * pitch.y) ** 2 + (across * pitch.x) ** 2;

/** All pixels whose centres lie closer to that of the middle than a radius. */
export function discOf(radius: number, pitch: Pitch): Disc {
  const rows: number[] = [];
  for (let down = 0; squared(0, down, pitch) < radius * radius; down += 1) {
    let across = 0;
    while (squared(across + 1, down, pitch) < radius * radius) across += 1;
    rows.push(across);
  }
  return rows;
}

/** From the middle of a disc to a pixel of it. */
export interface Step {
  readonly x: number;
  readonly y: number;
  readonly distance: number;
}

/** The pixels of a disc as steps from its middle, the nearest first. */
export const stepsOf = (disc: Disc, pitch: Pitch): Step[] =>
  disc
    .flatMap((reach, down) =>
      Array.from({ length: 2 * reach + 1 }, (_, index) => ({
        x: index - reach,
        y: down,
        distance: Math.sqrt(squared(index - reach, down, pitch)),
      })),
    )
    .flatMap((step) => (step.y === 0 ? [step] : [step, { ...step, y: -step.y }]))
    .sort((a, b) => a.distance - b.distance);

/** Words of a row, from one up to another, with all that is in one pixel longer to each side. */
function widen(row: Int32Array, from: number, to: number): void {
  let before = 0;
  for (let index = from; index < to; index += 1) {
    const own = row[index] as number;
    const next = index + 1 < to ? (row[index + 1] as number) : 0;
    row[index] = own | (own << 1) | (own >>> 1) | (before >>> 31) | (next << 31);
    before = own;
  }
}

/** Whether a word holds, or borders on, an end of what is in: all else reaches nowhere that its ends do not. */
function hasEnds({ span, height, words }: BitMask, x: number, y: number): boolean {
  const own = words[y * span + x];
  if (own === 0) return false;
  for (let down = Math.max(0, y - 1); down <= Math.min(height - 1, y + 1); down += 1) {
    for (let across = Math.max(0, x - 1); across <= Math.min(span - 1, x + 1); across += 1) {
      if (words[down * span + across] !== -1) return true;
    }
  }
  return false;
}

/** The words of a row that hold ends, from one up to another; those go together that lie no more than so many words apart. */
function* stretches(mask: BitMask, y: number, apart: number): Generator<readonly [from: number, to: number]> {
  let [from, to] = [0, 0];
  for (let x = 0; x < mask.span; x += 1) {
    if (!hasEnds(mask, x, y)) continue;
    if (to === 0) from = x;
    else if (x > to + apart) {
      yield [from, to];
      from = x;
    }
    to = x + 1;
  }
  if (to > 0) yield [from, to];
}

/**
 * The pixels that lie within a disc around any that is in: a dilation (J. Serra, "Image Analysis and Mathematical Morphology",
 * 1982), the same as where an exact Euclidean distance transform stays below the disc's radius. The ends of what is in, row by row,
 * go into the rows that the disc reaches from them, as much longer to each side as the disc is there, 32 pixels at a time.
 */
export function grow(mask: BitMask, disc: Disc): BitMask {
  const { width, height, span, words } = mask;
  const grown = bitMask(width, height);
  const [reach] = disc;
  if (reach === undefined) return grown;
  grown.words.set(words);
  const row = new Int32Array(span);
  const addTo = (y: number, from: number, to: number): void => {
    if (y < 0 || y >= height) return;
    for (let index = from, at = y * span + from; index < to; index += 1, at += 1) {
      (grown.words[at] as number) |= row[index] as number;
    }
  };
  // What is so near that both reach the same words goes together.
  const side = Math.ceil(reach / 32);
  for (let y = 0; y < height; y += 1) {
    for (const [first, end] of stretches(mask, y, 2 * side)) {
      const [from, to] = [Math.max(0, first - side), Math.min(span, end + side)];
      row.fill(0, from, to);
      row.set(words.subarray(y * span + first, y * span + end), first);
      let longer = 0;
      for (let down = disc.length - 1; down >= 0; down -= 1) {
        for (; longer < (disc[down] as number); longer += 1) widen(row, from, to);
        addTo(y + down, from, to);
        if (down > 0) addTo(y - down, from, to);
      }
    }
  }
  const last = lastBits(mask);
  for (let at = span - 1; at < words.length; at += span) (grown.words[at] as number) &= last;
  return grown;
}
