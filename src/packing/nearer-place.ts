import { um } from '../units';
import { type LyingCopy, moveTo } from './lying';
import type { Problem } from './problem';

/** The least x from the near side on at which a copy of some width keeps clear of copies beside it; `null` if there is none. */
function freeAcross(
  beside: readonly LyingCopy[],
  width: number,
  from: number,
  to: number,
  gap: number,
): number | null {
  let x = from;
  for (const other of beside.toSorted((a, b) => a.x - b.x)) {
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

/**
 * Free places of a copy nearer to the leading edge than its own, the nearest first. Of a place nothing is said but that it is free: it is for
 * others to say whether knife lines and cuts let a copy lie there.
 */
export function nearerPlaces(problem: Problem, copies: readonly LyingCopy[], index: number): LyingCopy[] {
  const { film, margins, gap } = problem;
  const copy = copies[index];
  if (!copy) return [];
  const found: LyingCopy[] = [];
  const firstSheet = film.kind === 'sheet' ? film.printed : 0;
  const [left, right] = [margins.left, film.width - margins.right];
  const ways = copy.mayTurn && copy.width !== copy.length ? [copy, quarterTurned(copy)] : [copy];
  for (let sheet = firstSheet; sheet <= copy.sheet; sheet += 1) {
    const others = copies.filter((other, at) => at !== index && other.sheet === sheet);
    for (const y of startsOf(problem, others)) {
      for (const way of ways) {
        const reach = y + way.length;
        if (sheet === copy.sheet && reach >= copy.y + copy.length) continue;
        if (film.kind === 'sheet' && reach > film.length - margins.tail) continue;
        const beside = others.filter((other) => other.y < reach + gap && other.y + other.length + gap > y);
        const x = freeAcross(beside, way.width, left, right, gap);
        if (x !== null) found.push(moveTo(way, { x: um(x), y: um(y), sheet }));
      }
    }
  }
  return found;
}

const quarterTurned = (copy: LyingCopy): LyingCopy => ({
  ...copy,
  width: copy.length,
  length: copy.width,
  turned: !copy.turned,
});
