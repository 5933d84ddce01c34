import { countBy, um } from '../units';
import { compareEach } from './completion';
import { layoutFaults } from './faults';
import { knifeLines } from './knife-lines';
import type { LyingCopy } from './lying';
import { lyingCopies } from './lying';
import type { Placed, Problem, Span } from './problem';

/** Layouts looked through in all: the soonest orders have them first. */
const MOST_ASKED = 200;

/** Where a roll with copies on it is cut; `null` if no lines can cut it so. */
function linesOf({ film, margins, gap }: Problem, copies: readonly LyingCopy[]): readonly Span[] | null {
  if (film.kind === 'sheet') return [];
  const { spanMax, cutBlank } = film;
  const end = copies.reduce((far, { y, length }) => Math.max(far, y + length), 0);
  return knifeLines(copies, { gap, spanMax, cutBlank, lengthUsed: um(end + margins.tail) });
}

/** How far from the leading edge copies reach, sheet after sheet. */
export const reachOf = ({ film }: Problem, { sheet, y, length }: LyingCopy): number =>
  (film.kind === 'sheet' ? sheet * film.length : 0) + y + length;

/** How far from the leading edge all copies reach. */
const furthest = (problem: Problem, copies: readonly LyingCopy[]): number =>
  copies.reduce((far, copy) => Math.max(far, reachOf(problem, copy)), 0);

/** How far the copies of each rank reach that may be moved, the soonest rank first. */
function reaches(problem: Problem, copies: readonly LyingCopy[]): number[] {
  const far = new Map<number, number>();
  for (const copy of copies) {
    if (!copy.fixed) far.set(copy.rank, Math.max(far.get(copy.rank) ?? 0, reachOf(problem, copy)));
  }
  return [...far].sort(([a], [b]) => a - b).map(([, reach]) => reach);
}

/** Film from the first copy of each rank to its last one's end, weighed by its copies. */
function spreadOf(problem: Problem, copies: readonly LyingCopy[]): number {
  const stretches = new Map<number, { from: number; to: number; copies: number }>();
  for (const copy of copies) {
    const to = reachOf(problem, copy);
    const own = stretches.get(copy.rank) ?? { from: Number.POSITIVE_INFINITY, to: 0, copies: 0 };
    stretches.set(copy.rank, {
      from: Math.min(own.from, to - copy.length),
      to: Math.max(own.to, to),
      copies: own.copies + 1,
    });
  }
  return [...stretches.values()].reduce((sum, { from, to, copies: each }) => sum + each * (to - from), 0);
}

/** A layout that is being bettered, and what it may not lose by that. */
export class SoonestLayout {
  copies: readonly LyingCopy[];
  lines: readonly Span[] | null;
  private faults: ReadonlyMap<string, number>;
  private end: number;
  private asked = 0;
  private readonly problem: Problem;
  private reaches: readonly number[];

  constructor(problem: Problem, placed: readonly Placed[]) {
    this.problem = problem;
    this.copies = lyingCopies(problem, placed);
    this.lines = linesOf(problem, this.copies);
    this.reaches = reaches(problem, this.copies);
    this.end = furthest(problem, this.copies);
    this.faults = this.faultsOf(this.copies, this.lines ?? []);
  }

  /** How often each thing is wrong: some was so by hand. */
  private faultsOf(copies: readonly LyingCopy[], lines: readonly Span[]): ReadonlyMap<string, number> {
    return countBy(layoutFaults(this.problem, copies, lines), ({ code }) => code);
  }

  /** Whether copies may lie so: they take no more film, nothing more is wrong than now, no knife line is added, and orders that are to lie near do so as before. */
  mayBe(copies: readonly LyingCopy[]): boolean {
    this.asked += 1;
    return this.asked <= MOST_ASKED && this.isSound(copies);
  }

  private isSound(copies: readonly LyingCopy[]): boolean {
    const { problem, lines } = this;
    if (furthest(problem, copies) > this.end) return false;
    const next = linesOf(problem, copies);
    if (lines === null || next === null || next.length > lines.length) return false;
    if (problem.together.kind === 'near' && spreadOf(problem, copies) > spreadOf(problem, this.copies))
      return false;
    return [...this.faultsOf(copies, next)].every(([code, count]) => count <= (this.faults.get(code) ?? 0));
  }

  /** Takes other places where a soonest order reaches less far by them. @returns whether it did */
  take(copies: readonly LyingCopy[]): boolean {
    const next = reaches(this.problem, copies);
    if (compareEach(next, this.reaches) >= 0 || !this.isSound(copies)) return false;
    this.copies = copies;
    this.lines = linesOf(this.problem, copies);
    this.reaches = next;
    this.end = furthest(this.problem, copies);
    this.faults = this.faultsOf(copies, this.lines ?? []);
    return true;
  }
}
