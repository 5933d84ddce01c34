import { type Micrometres, seededRandom } from '../units';
import { assemble, placementsOf } from './assemble';
import { leastFilm, leastOnLastSheet } from './bounds';
import type { Limits } from './build';
import type { Placement, Plan, Problem } from './problem';
import { type Idea, Search } from './search';
import { type Strip, stripOf, tooLarge } from './strip';

/** An engine at work on one problem: the same problem, seed and iterations always give the same plan. */
export interface Planner {
  /**
   * Builds so many layouts more.
   * @returns whether one of them is the best so far
   */
  step(iterations: number): boolean;
  /** The best plan so far; builds a first one if there is none. */
  best(): Plan;
  /** Film that no plan can go below: micrometres on a roll, sheets otherwise. */
  readonly bound: Micrometres;
  /** The best plan places every copy that fits the film, and uses no more than the bound. */
  proven(): boolean;
  /** Proven, and of sheets nothing more to gain: the last one's clean offcut can be no longer. */
  finished(): boolean;
  readonly iterations: number;
  /** What other engines of the same problem may go on from; `null` before the first layout. */
  idea(): Idea | null;
  /**
   * Goes on from another engine's idea; one of another problem is let be.
   * @returns whether its layout is the best so far
   */
  take(idea: Idea): boolean;
  /** Compares plans of one problem by copies placed, then by film; smaller is better. */
  cost(): number;
}

/** The copies that the film can take at all. */
const fitting = (strip: Strip): Int32Array =>
  strip.count.map((count, piece) => (tooLarge(strip, piece) === null ? count : 0));

const sum = (counts: Int32Array): number => counts.reduce((total, count) => total + count, 0);

/** The first so many copies by rank; within a rank, pieces in their order. */
function firstByRank(strip: Strip, counts: Int32Array, copies: number): Int32Array {
  const chosen = new Int32Array(counts.length);
  let left = copies;
  const byRank = [...counts.keys()].sort((a, b) => (strip.rank[a] ?? 0) - (strip.rank[b] ?? 0) || a - b);
  for (const piece of byRank) {
    chosen[piece] = Math.min(left, counts[piece] ?? 0);
    left -= chosen[piece] ?? 0;
  }
  return chosen;
}

/** Layouts tried to find out whether so many copies fit a roll that ends. */
const TRIES = 12;
/** Engines of all seeds choose the same copies, so that their layouts compare. */
const CHOICE_SEED = 1;

function fits(strip: Strip, counts: Int32Array, limits: Limits): boolean {
  const search = new Search(strip, counts, limits, seededRandom(CHOICE_SEED));
  for (let tried = 0; tried < TRIES; tried += 1) {
    search.step();
    if (search.best?.complete) return true;
  }
  return sum(counts) === 0;
}

/** As many copies as a roll that ends takes, soonest rank first: halving the doubt each time. */
function chosenCounts(strip: Strip, limits: Limits): Int32Array {
  const all = fitting(strip);
  const { bins } = strip;
  if ((bins.kind === 'sheets' ? bins.most : bins.total) === Number.POSITIVE_INFINITY) return all;
  if (fits(strip, all, limits)) return all;
  let least = 0;
  let most = sum(all);
  while (most - least > 1) {
    const middle = Math.floor((least + most) / 2);
    if (fits(strip, firstByRank(strip, all, middle), limits)) least = middle;
    else most = middle;
  }
  return firstByRank(strip, all, least);
}

/** Places of the copies left over, around those that have one: holes and what is left at the end of a roll. */
function fillUp(
  problem: Problem,
  placed: readonly Placement[],
  chosen: Int32Array,
  seed: number,
): Placement[] {
  const around: Problem = {
    ...problem,
    pieces: problem.pieces.map((piece, index) => ({ ...piece, count: piece.count - (chosen[index] ?? 0) })),
    pinned: [...problem.pinned, ...placed],
  };
  const strip = stripOf(around);
  const waiting = fitting(strip);
  if (sum(waiting) === 0) return [];
  const search = new Search(strip, waiting, strip.bins, seededRandom(seed));
  const byRank = [...waiting.keys()]
    .filter((piece) => (waiting[piece] ?? 0) > 0)
    .sort((a, b) => (strip.rank[a] ?? 0) - (strip.rank[b] ?? 0) || a - b);
  const layout = search.layoutOf({
    piece: byRank,
    count: byRank.map((piece) => waiting[piece] ?? 0),
    turned: byRank.map(() => 0),
  });
  return placementsOf(layout, strip, around);
}

/**
 * Starts planning. Where a roll is too short for all copies, those of the lowest ranks are chosen as far as they
 * fit, laid out, and whatever else still finds room is added.
 * @param seed of the search's random numbers
 */
export function createPlanner(problem: Problem, seed: number): Planner {
  const strip = stripOf(problem);
  const limits: Limits = strip.bins;
  const counts = chosenCounts(strip, limits);
  const short = sum(counts) < sum(fitting(strip));
  let known: Micrometres | null = null;
  // Worked out when it is first asked for: a first layout does not wait for it.
  const bound = (): Micrometres => {
    known ??= leastFilm(short ? withCounts(problem, counts) : problem);
    return known;
  };
  const leastGrown = () => (strip.bins.kind === 'sheets' ? bound() : bound() - strip.before - strip.after);
  const search = new Search(strip, counts, limits, seededRandom(seed), leastGrown);
  let plan: Plan | null = null;

  const step = (iterations: number): boolean => {
    let better = false;
    for (let done = 0; done < iterations; done += 1) better = search.step() || better;
    if (better) plan = null;
    return better;
  };

  const best = (): Plan => {
    if (plan) return plan;
    if (!search.best) search.step();
    const placed = search.best ? placementsOf(search.best, strip, problem) : [];
    const added = short && problem.together.kind !== 'apart' ? fillUp(problem, placed, counts, seed) : [];
    plan = assemble(problem, strip, [...placed, ...added]);
    return plan;
  };

  const proven = (): boolean => {
    const { lengthUsed, sheetsUsed } = best();
    return (
      !short &&
      search.best?.complete === true &&
      (problem.film.kind === 'roll' ? lengthUsed : sheetsUsed) <= bound()
    );
  };

  let knownLast: number | null = null;
  const finished = (): boolean => {
    // How near to each other copies can lie on so little film is not known.
    if (!proven() || problem.together.kind === 'near') return false;
    if (strip.bins.kind !== 'sheets' || !search.best) return true;
    const { tops } = search.best;
    // Proven, so the number of sheets does not change any more.
    knownLast ??= leastOnLastSheet(strip, tops.length);
    return Math.min(...tops) <= knownLast;
  };

  return {
    step,
    best,
    get bound() {
      return bound();
    },
    proven,
    finished,
    get iterations() {
      return search.iterations;
    },
    idea: () => search.idea(),
    take: (idea) => {
      const better = search.take(idea);
      if (better) plan = null;
      return better;
    },
    cost: () => search.best?.cost ?? Number.POSITIVE_INFINITY,
  };
}

const withCounts = (problem: Problem, counts: Int32Array): Problem => ({
  ...problem,
  pieces: problem.pieces.map((piece, index) => ({ ...piece, count: counts[index] ?? 0 })),
});
