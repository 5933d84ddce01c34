import { seededRandom } from '../units';
import { assemble, filmUsed, placedOf } from './assemble';
import { leastFilm, leastOnLastSheet } from './bounds';
import { chosenCounts, fitting, sum } from './choice';
import { fillUp } from './fill-up';
import { type FilmAmount, isApart, type Placed, type Plan, type Problem } from './problem';
import { type Idea, Search } from './search';
import { soonestFirst } from './soonest-first';
import { type Strip, stripOf } from './strip';

/** An engine at work on one problem: the same problem, seed and iterations always give the same plan. */
export interface Planner {
  /**
   * Builds so many layouts more.
   * @returns whether one of them is the best so far
   */
  step(iterations: number): boolean;
  /** The best plan so far, the soonest ranks first; builds a first one if there is none. Takes far longer than a layout. */
  best(): Plan;
  /** Film that no plan can go below. */
  readonly bound: FilmAmount;
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

/** An engine with a search of its own; see {@link createPlanner}. */
class SearchPlanner implements Planner {
  private readonly problem: Problem;
  private readonly seed: number;
  private readonly strip: Strip;
  /** How many copies of each piece are laid out. */
  private readonly chosen: Int32Array;
  /** The film has an end that does not let all copies be laid out. */
  private readonly isShort: boolean;
  private readonly search: Search;
  /** Where the best layout puts its copies, the pinned ones first. */
  private laid: readonly Placed[] | null = null;
  private plan: Plan | null = null;
  private knownBound: FilmAmount | null = null;
  private knownLast: number | null = null;

  constructor(problem: Problem, seed: number) {
    this.problem = problem;
    this.seed = seed;
    this.strip = stripOf(problem);
    this.chosen = chosenCounts(this.strip);
    this.isShort = sum(this.chosen) < sum(fitting(this.strip));
    this.search = new Search(this.strip, this.chosen, this.strip.bins, seededRandom(seed), () =>
      this.leastToTry(),
    );
  }

  step(iterations: number): boolean {
    let better = false;
    for (let done = 0; done < iterations; done += 1) better = this.search.step() || better;
    return this.heard(better);
  }

  take(idea: Idea): boolean {
    return this.heard(this.search.take(idea));
  }

  /** A plan is made of the best layout when it is asked for. */
  private heard(better: boolean): boolean {
    if (better) {
      this.laid = null;
      this.plan = null;
    }
    return better;
  }

  best(): Plan {
    const { problem, strip } = this;
    this.plan ??= assemble(problem, strip, soonestFirst(problem, this.asLaid()));
    return this.plan;
  }

  private asLaid(): readonly Placed[] {
    this.laid ??= this.placed();
    return this.laid;
  }

  private placed(): Placed[] {
    const { problem, search, strip } = this;
    if (!search.best) search.step();
    const laid = search.best ? placedOf(search.best, strip, problem) : [];
    const mayFill = this.isShort && !isApart(problem.together);
    const added = mayFill ? fillUp(problem, laid, this.chosen, this.seed) : [];
    return [...problem.pinned, ...laid, ...added];
  }

  /** Worked out when it is first asked for: a first layout does not wait for it. */
  get bound(): FilmAmount {
    this.knownBound ??= leastFilm(this.isShort ? withCounts(this.problem, this.chosen) : this.problem);
    return this.knownBound;
  }

  /** The bound in the search's terms: a grown length, or sheets. */
  private leastToTry(): number {
    const { bound, strip } = this;
    return bound.kind === 'sheets' ? bound.sheets : bound.length - strip.before - strip.after;
  }

  proven(): boolean {
    return this.isLeast(this.best().placed);
  }

  /** Whether placed copies are all that fit, and take no more film than the bound. */
  private isLeast(placed: readonly Placed[]): boolean {
    if (this.isShort || !this.search.best?.complete) return false;
    const { bound, problem } = this;
    const used = filmUsed(problem, placed);
    if (bound.kind === 'sheets') return used.kind === 'sheets' && used.sheets <= bound.sheets;
    return used.kind === 'roll' && used.length <= bound.length;
  }

  finished(): boolean {
    // How near to each other copies can lie on so little film is not known.
    if (this.problem.together.kind === 'near') return false;
    // Asked between any two steps: no plan is made for it, and a plan takes no more film than the layout.
    if (!this.isLeast(this.asLaid())) return false;
    const { strip, search } = this;
    if (strip.bins.kind !== 'sheets' || !search.best) return true;
    const { tops } = search.best;
    // Proven, so the number of sheets does not change any more.
    this.knownLast ??= leastOnLastSheet(strip, tops.length);
    return Math.min(...tops) <= this.knownLast;
  }

  get iterations(): number {
    return this.search.iterations;
  }

  idea(): Idea | null {
    return this.search.idea();
  }

  cost(): number {
    return this.search.best?.cost ?? Number.POSITIVE_INFINITY;
  }
}

const withCounts = (problem: Problem, counts: Int32Array): Problem => ({
  ...problem,
  pieces: problem.pieces.map((piece, index) => ({ ...piece, count: counts[index] ?? 0 })),
});

/**
 * Starts planning. Where a roll is too short for all copies, those of the lowest ranks are chosen as far as they
 * fit, laid out, and whatever else still finds room is added.
 * @param seed of the search's random numbers
 */
export const createPlanner = (problem: Problem, seed: number): Planner => new SearchPlanner(problem, seed);
