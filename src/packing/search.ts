import { type Aim, FILM, nextAim, unitOf } from './aim';
import { isTaken, warmthAt } from './annealing';
import { AtBound } from './at-bound';
import type { Limits } from './build';
import { Ending } from './ending';
import { Exchange } from './exchange';
import { Lane } from './lane';
import { keep, type Layout } from './layout';
import { copySequence, disturb, type Sequence } from './sequence';
import { startSequences } from './starts';
import { isEmpty, type Strip } from './strip';
import type { Trial } from './trial';
import { waysOf } from './ways';

const ANY = Number.POSITIVE_INFINITY;

/** Layouts in a lane's first cycle of annealing; cycles get longer as the search goes on. */
const CYCLE = 4000;
const LONGEST_CYCLE = 60_000;
/** How many of the steps on sheets take a few of them apart instead of building all: most, while one fewer may be possible. */
const EXCHANGE_SHARE = 0.95;
const EXCHANGE_SHARE_AT_LEAST = 0.6;

/** What another engine of the same problem may go on from: the order of its best layout, and the way to build it. */
export interface Idea {
  readonly sequence: Sequence;
  /** Which of the search's ways. */
  readonly way: number;
}

/**
 * An anytime search for a layout of given copies: some sorted orders under each rule first, then simulated
 * annealing over the order in which runs of identical copies ask for a place, in cycles.
 *
 * After E. K. Burke, G. Kendall and G. Whitwell, A new placement heuristic for the orthogonal stock-cutting problem,
 * Operations Research 52(4), 655-671, 2004 (sorted orders, lowest gap first), and the annealing over sequences of
 * Leung, Zhang and Sim 2011 (see `SkylineDecoder`).
 */
export class Search {
  /** The best layout so far; `null` before the first step. */
  best: Layout | null = null;
  iterations = 0;
  private readonly strip: Strip;
  private readonly count: Int32Array;
  private readonly limits: Limits;
  private readonly random: () => number;
  private readonly unit: number;
  private readonly turnable: boolean;
  private readonly starts: readonly Sequence[];
  private readonly lanes: Lane[];
  private lane: Lane;
  private leftInCycle = 0;
  private cycleLength = CYCLE;
  private aim: Aim = FILM;
  private exchange: Exchange | null = null;
  private readonly atBound: AtBound | null;
  private readonly ending: Ending | null;
  /** No layout takes less, a length or a number of sheets; less is not tried. */
  private readonly least: () => number;

  constructor(strip: Strip, count: Int32Array, limits: Limits, random: () => number, least = () => 0) {
    this.strip = strip;
    this.count = count;
    this.limits = limits;
    this.random = random;
    this.least = least;
    this.unit = unitOf(strip);
    this.turnable = strip.turns.includes(1);
    this.starts = startSequences(strip, count);
    this.lanes = waysOf(strip).map((way) => new Lane(way, strip, limits));
    this.lane = this.lanes[0] as Lane;
    this.atBound = AtBound.of(strip, count, random, least);
    this.ending = Ending.of(this.lanes, { strip, count, limits, random, unit: this.unit, least });
  }

  /**
   * How many steps the sorted orders take; annealing begins after them.
   */
  get startSteps(): number {
    return this.starts.length * this.lanes.length;
  }

  /**
   * Builds one layout.
   * @returns whether it is the best so far
   */
  step(): boolean {
    const index = this.iterations;
    this.iterations += 1;
    if (index < this.startSteps) {
      const lane = this.lanes[index % this.lanes.length] as Lane;
      const sequence = this.starts[Math.floor(index / this.lanes.length)] as Sequence;
      return this.enter(lane, sequence);
    }
    if (this.random() < this.exchangeShare()) return this.exchangeSheets();
    if (this.best && this.atBound?.isDue(this.best)) return this.keepLayout(this.atBound.step());
    if (this.ending?.isDue(this.lanes)) return this.keepLayout(this.ending.step(this.lanes));
    if (this.leftInCycle === 0) this.nextCycle();
    this.ending?.wait();
    return this.anneal();
  }

  private exchangeShare(): number {
    const { best, strip } = this;
    // What is taken apart is built anew sheet by sheet, whatever is due on the others.
    if (strip.together.kind === 'by-due') return 0;
    if (strip.bins.kind !== 'sheets' || !isEmpty(strip) || !best?.complete || best.tops.length < 2) return 0;
    return best.tops.length > this.least() ? EXCHANGE_SHARE : EXCHANGE_SHARE_AT_LEAST;
  }

  private exchangeSheets(): boolean {
    const { best, strip, limits, random } = this;
    if (best && (!this.exchange || this.exchange.aim >= best.tops.length)) {
      const ways = this.lanes.map(({ way }) => way);
      this.exchange = new Exchange(strip, best, { ways, limits, random });
    }
    return this.keepLayout(this.exchange?.step() ?? null);
  }

  /** Keeps a layout that is the best so far. */
  private keepLayout(layout: Layout | null): boolean {
    if (!layout || (this.best && layout.cost >= this.best.cost)) return false;
    this.best = layout;
    return true;
  }

  /** The order that has led furthest; `null` before the first step. */
  idea(): Idea | null {
    const lane = this.bestLane();
    return lane.bestCost < ANY ? { sequence: lane.best, way: this.lanes.indexOf(lane) } : null;
  }

  private bestLane(): Lane {
    return this.lanes.reduce((best, other) => (other.bestCost < best.bestCost ? other : best));
  }

  /**
   * Goes on from another engine's idea, where it is the better one; one of another problem is let be.
   * @returns whether the layout is the best so far
   */
  take({ sequence, way }: Idea): boolean {
    const lane = this.lanes[way];
    if (!lane || !this.isOf(sequence)) return false;
    return this.enter(lane, sequence);
  }

  /** Builds a sequence in a lane, whatever the present cycle is after, and keeps it there if it is the lane's best. */
  private enter(lane: Lane, sequence: Sequence): boolean {
    const trial = lane.build(sequence, FILM);
    lane.keepIfBetter(sequence, trial.film);
    return this.keepIfBetter(trial);
  }

  /** Whether a sequence asks for just the copies of this search. */
  private isOf({ piece, count }: Sequence): boolean {
    const left = this.count.slice();
    for (const [run, own] of piece.entries()) {
      if (left[own] === undefined) return false;
      left[own] -= count[run] ?? 0;
    }
    return left.every((copies) => copies === 0);
  }

  /** Tries an order of the caller's own, whatever its copies, under the rule that has done best. */
  layoutOf(sequence: Sequence): Layout {
    const { build, film } = this.bestLane().build(sequence, FILM);
    return keep(build, film);
  }

  /** Keeps a trial if its film, in all bins, is the least so far. */
  private keepIfBetter({ build, film }: Trial): boolean {
    if (this.best !== null && film >= this.best.cost) return false;
    this.best = keep(build, film);
    return true;
  }

  private anneal(): boolean {
    const { lane, random, aim } = this;
    const done = 1 - this.leftInCycle / this.cycleLength;
    this.leftInCycle -= 1;
    const candidate = copySequence(lane.current);
    disturb(candidate, random, this.turnable);
    const trial = lane.build(candidate, aim);
    const { cost } = trial;
    const warmth = (this.best?.cost ?? cost) * warmthAt(done);
    if (isTaken(cost - lane.currentCost, warmth, random)) {
      lane.accept(candidate, trial, aim);
      // It fits: the next cycle tries less film.
      if (aim.kind === 'fit' && cost === 0) this.leftInCycle = 0;
    }
    return this.keepIfBetter(trial);
  }

  /** Every lane has a cycle first; from then on the better lanes are chosen more often. */
  private nextCycle(): void {
    const { best, limits, unit, random, least } = this;
    const byCost = [...this.lanes].sort((a, b) => a.bestCost - b.bestCost);
    let chosen = byCost.find((lane) => lane.cycles === 0);
    const isFirst = chosen !== undefined;
    for (const lane of byCost) {
      chosen ??= this.random() < 0.45 ? lane : undefined;
    }
    const lane = chosen ?? (byCost[0] as Lane);
    this.lane = lane;
    this.aim = isFirst ? FILM : nextAim(this.strip, { best, limits, unit, random, least });
    this.cycleLength = Math.min(LONGEST_CYCLE, CYCLE * 2 ** lane.cycles);
    this.leftInCycle = this.cycleLength;
    lane.begin(this.aim);
  }
}
