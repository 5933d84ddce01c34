import { mayLieAt, quartersIn, turnedBy, um } from '../units';
import { type LyingCopy, moveTo } from './lying';
import type { Problem } from './problem';

/** The least x from the near side on at which a copy of some width keeps clear of copies beside it, which are sorted by x; `null` if there is none. */
function freeAcross(
  beside: readonly LyingCopy[],
  width: number,
  from: number,
  to: number,
  gap: number,
): number | null {
  let x = from;
  for (const other of beside) {
    if (x + width + gap <= other.x) break;
    x = Math.max(x, other.x + other.width + gap);
  }
  return x + width <= to ? x : null;
}

/** Where a copy begins along a film if it lies as near to the front as others and no-print stretches let it. */
function startsOf({ film, margins, gap }: Problem, others: readonly LyingCopy[]): number[] {
  const noPrint = film.kind === 'roll' ? film.noPrint.map(({ to }) => to) : [];
  const lines =
    film.kind === 'roll' && film.spanMax !== null
      ? others.map(({ y, length }) => y + length + gap / 2 + Math.max(gap / 2, film.cutBlank))
      : [];
  const starts = [margins.lead, ...noPrint, ...others.map(({ y, length }) => y + length + gap), ...lines];
  return [...new Set(starts)].filter((start) => start >= margins.lead).sort((a, b) => a - b);
}

/** The first free places of a copy on one film that end before `end`, at most so many, by a sweep along the film. */
function placesOn(
  problem: Problem,
  others: readonly LyingCopy[],
  copy: LyingCopy,
  { end, most }: { readonly end: number; readonly most: number },
): LyingCopy[] {
  const { film, margins, gap } = problem;
  const [left, right] = [margins.left, film.width - margins.right];
  const byStart = others.toSorted((a, b) => a.y - b.y);
  const found: LyingCopy[] = [];
  let ahead = 0;
  /** The copies beside the place that is asked about, by x. */
  let beside: LyingCopy[] = [];
  for (const y of startsOf(problem, others)) {
    const reach = y + copy.length;
    if (found.length === most || reach >= end) break;
    beside = beside.filter((other) => other.y + other.length + gap > y);
    for (let other = byStart[ahead]; other && other.y < reach + gap; other = byStart[ahead]) {
      ahead += 1;
      if (other.y + other.length + gap <= y) continue;
      const { x } = other;
      const at = beside.findIndex((own) => own.x > x);
      beside.splice(at < 0 ? beside.length : at, 0, other);
    }
    const x = freeAcross(beside, copy.width, left, right, gap);
    if (x !== null) found.push(moveTo(copy, { x: um(x), y: um(y) }));
  }
  return found;
}

/**
 * Free places of a copy nearer to the leading edge than its own, among them the nearest so many. Of a place nothing is said but that it is free:
 * it is for others to say whether knife lines and cuts let a copy lie there.
 */
export function nearerPlaces(
  problem: Problem,
  copies: readonly LyingCopy[],
  index: number,
  most: number,
): LyingCopy[] {
  const { film, margins } = problem;
  const copy = copies[index];
  if (!copy) return [];
  const isTurned = copy.width !== copy.length && mayLieAt(copy.turning, turnedBy(copy.angle, 90));
  const ways = isTurned && quartersIn(copy.angle) !== null ? [copy, quarterTurned(copy)] : [copy];
  const bySheet: LyingCopy[][] = Array.from({ length: copy.sheet + 1 }, () => []);
  for (const other of copies) if (other !== copy) bySheet[other.sheet]?.push(other);
  const sheetEnd = film.kind === 'sheet' ? film.length - margins.tail + 1 : Number.POSITIVE_INFINITY;
  const found: LyingCopy[] = [];
  for (const [sheet, others] of bySheet.entries()) {
    if (found.length >= most) break;
    if (film.kind === 'sheet' && sheet < film.printed) continue;
    const end = sheet === copy.sheet ? Math.min(sheetEnd, copy.y + copy.length) : sheetEnd;
    for (const way of ways) found.push(...placesOn(problem, others, moveTo(way, { sheet }), { end, most }));
  }
  return found;
}

const quarterTurned = (copy: LyingCopy): LyingCopy => ({
  ...copy,
  width: copy.length,
  length: copy.width,
  // Back again where it was turned before, so that few lie upside down.
  angle: turnedBy(copy.angle, (quartersIn(copy.angle) ?? 0) % 2 === 0 ? 90 : -90),
});
