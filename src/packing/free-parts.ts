/** A rectangle of the strip, in grown coordinates: `across` it from `x`, `along` it from `y`. */
export interface Part {
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly along: number;
}

/** Film that straight cuts part from all that lies on it already. */
export interface FreePart extends Part {
  /** How many directions of cuts it takes to part it: 0 where nothing lies, 1 where it is as wide as the film, 2 beside a row, and so on. */
  readonly stage: number;
}

type Axis = 'across' | 'along';
const other = (axis: Axis): Axis => (axis === 'across' ? 'along' : 'across');
/** Cuts across the film part what lies along it. */
const fromOf = (part: Part, axis: Axis) => (axis === 'across' ? part.y : part.x);
const toOf = (part: Part, axis: Axis) => (axis === 'across' ? part.y + part.along : part.x + part.across);
const cutTo = (part: Part, axis: Axis, from: number, to: number): Part =>
  axis === 'across' ? { ...part, y: from, along: to - from } : { ...part, x: from, across: to - from };

/**
 * The film around what lies on it that straight cuts part from it, first across the film, then along it, and on in turns. What
 * no straight cut parts stays together, and nothing is free between.
 * @param taken what lies there
 * @param most directions of cuts: 3 for cuts in stages
 * @returns the parts, none of which overlap, nor reach into what is taken
 */
export function freeParts(taken: readonly Part[], whole: Part, most: number): FreePart[] {
  const found: FreePart[] = [];
  const part = (inside: readonly Part[], region: Part, axis: Axis, stage: number, stuck: boolean): void => {
    if (inside.length === 0) {
      found.push({ ...region, stage: stage - 1 });
      return;
    }
    if (stage > most) return;
    const [from, to] = [fromOf(region, axis), toOf(region, axis)];
    let reached = from;
    let group: Part[] = [];
    const regions: { region: Part; inside: Part[] }[] = [];
    const close = () => {
      if (group.length === 0) return;
      const start = Math.max(from, Math.min(...group.map((own) => fromOf(own, axis))));
      if (reached > start) regions.push({ region: cutTo(region, axis, start, reached), inside: group });
      group = [];
    };
    for (const own of inside.toSorted((a, b) => fromOf(a, axis) - fromOf(b, axis))) {
      const start = Math.min(to, fromOf(own, axis));
      if (start >= reached) {
        close();
        if (start > reached) regions.push({ region: cutTo(region, axis, reached, start), inside: [] });
      }
      group.push(own);
      reached = Math.max(reached, Math.min(to, toOf(own, axis)));
    }
    close();
    if (to > reached) regions.push({ region: cutTo(region, axis, reached, to), inside: [] });
    const [only] = regions;
    const isWhole = regions.length === 1 && only?.inside.length === inside.length;
    if (isWhole && stuck) return;
    for (const next of regions) part(next.inside, next.region, other(axis), stage + 1, isWhole);
  };
  part(taken, whole, 'across', 1, false);
  return found.sort((a, b) => a.y - b.y || a.x - b.x);
}
