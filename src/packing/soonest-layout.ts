import { compareEach, countBy, um } from '../units';
import { isClear, layoutFaults } from './faults';
import { knifeLines } from './knife-lines';
import type { LyingCopy } from './lying';
import { lyingCopies } from './lying';
import { isApart, type Placed, type Problem, type Span } from './problem';

/** Copies looked through in all, over and over: the soonest orders have them first, and no film takes long. */
const MOST_LOOKED_AT = 30_000;

/** A copy that comes to lie elsewhere, by its index. */
export type Move = readonly [number, LyingCopy];

/** Where a roll with copies on it is cut; `null` if no lines can cut it so. */
function linesOf({ film, margins, gap }: Problem, copies: readonly LyingCopy[]): readonly Span[] | null {
  if (film.kind === 'sheet') return [];
  const { spanMax, cutBlank } = film;
  const end = copies.reduce((far, { y, length }) => Math.max(far, y + length), 0);
  return knifeLines(copies, { gap, spanMax, cutBlank, lengthUsed: um(end + margins.tail) });
}

/** How far from the leading edge copies reach, sheet after sheet. */
export const reachOf = (
  { film }: Problem,
  { sheet, y, length }: Pick<LyingCopy, 'sheet' | 'y' | 'length'>,
): number => (film.kind === 'sheet' ? sheet * film.length : 0) + y + length;

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

/** How often each thing is wrong with copies. */
const faultCounts = (problem: Problem, copies: readonly LyingCopy[], lines: readonly Span[]) =>
  countBy(layoutFaults(problem, copies, lines), ({ code }) => code);

/** A layout that is being bettered, and what it may not lose by that. */
export class SoonestLayout {
  copies: readonly LyingCopy[];
  lines: readonly Span[] | null;
  private readonly problem: Problem;
  private reaches: readonly number[];
  private end: number;
  /** Some may be wrong by hand; counted when it is first asked for. */
  private faults: ReadonlyMap<string, number> | null = null;
  private lookedAt = 0;

  constructor(problem: Problem, placed: readonly Placed[]) {
    this.problem = problem;
    this.copies = lyingCopies(problem, placed);
    this.lines = linesOf(problem, this.copies);
    this.reaches = reaches(problem, this.copies);
    this.end = furthest(problem, this.copies);
  }

  /** Whether the copies may be looked through once more; counts it. */
  mayLook(): boolean {
    this.lookedAt += this.copies.length;
    return this.lookedAt <= MOST_LOOKED_AT;
  }

  /** Whether copies may lie so: they take no more film, nothing more is wrong than now, no knife line is added, and orders that are to lie near do so as before. */
  mayBe(copies: readonly LyingCopy[]): boolean {
    return this.mayLook() && this.isSound(copies);
  }

  /**
   * Copies some of which lie elsewhere. Only those are held against the others, unless a rule is one for the layout as a whole.
   * @param copies that may lie as they do
   * @returns `null` if they may not lie so
   */
  afterMoves(copies: readonly LyingCopy[], moves: readonly Move[]): readonly LyingCopy[] | null {
    if (!this.mayLook()) return null;
    const { problem } = this;
    const next = [...copies];
    for (const [index, copy] of moves) next[index] = copy;
    if (!moves.every(([index]) => isClear(problem, next, index))) return null;
    const isOfSingles =
      (problem.cutting === 'free' || problem.cutting === 'outlines') && !isApart(problem.together);
    return (isOfSingles ? this.takesNoMore(next) : this.isSound(next)) ? next : null;
  }

  private takesNoMore(copies: readonly LyingCopy[]): boolean {
    const { problem, lines, end } = this;
    if (furthest(problem, copies) > end) return false;
    const next = linesOf(problem, copies);
    if (lines === null || next === null || next.length > lines.length) return false;
    return problem.together.kind !== 'near' || spreadOf(problem, copies) <= spreadOf(problem, this.copies);
  }

  private isSound(copies: readonly LyingCopy[]): boolean {
    const { problem } = this;
    if (!this.takesNoMore(copies)) return false;
    this.faults ??= faultCounts(problem, this.copies, this.lines ?? []);
    const before = this.faults;
    const now = faultCounts(problem, copies, linesOf(problem, copies) ?? []);
    return [...now].every(([code, count]) => count <= (before.get(code) ?? 0));
  }

  /** Takes other places where a soonest order reaches less far by them. @returns whether it did */
  take(copies: readonly LyingCopy[]): boolean {
    return this.isSooner(copies) && this.isSound(copies) && this.put(copies);
  }

  /** Takes places that are known to be sound, as {@link take} does. */
  takeSound(copies: readonly LyingCopy[]): boolean {
    return this.isSooner(copies) && this.put(copies);
  }

  private isSooner(copies: readonly LyingCopy[]): boolean {
    return compareEach(reaches(this.problem, copies), this.reaches) < 0;
  }

  private put(copies: readonly LyingCopy[]): true {
    this.copies = copies;
    this.lines = linesOf(this.problem, copies);
    this.reaches = reaches(this.problem, copies);
    this.end = furthest(this.problem, copies);
    this.faults = null;
    return true;
  }
}
