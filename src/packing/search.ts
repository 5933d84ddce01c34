import type { Build, Decoder, Limits, Rule, Way } from './build';
import { ApartDecoder } from './decode-apart';
import { AroundSkylineDecoder } from './decode-around-skyline';
import { AroundStraightDecoder } from './decode-around-straight';
import { GuillotineDecoder } from './decode-guillotine';
import { SkylineDecoder } from './decode-skyline';
import { StagedDecoder } from './decode-staged';
import { Exchange } from './exchange';
import { costOf, keep, type Layout } from './layout';
import { copySequence, disturb, type Sequence } from './sequence';
import { startSequences } from './starts';
import { isEmpty, type Strip } from './strip';

const ANY = Number.POSITIVE_INFINITY;

/**
 * No one rule is best on every day: they differ in how much strip a copy may leave unusable beside itself. Each
 * has a lane of its own, and the better a lane's layouts, the more of the time it gets.
 */
const rules: readonly Rule[] = [
  { waste: 0, exact: 0.004, level: true, left: false },
  { waste: 0.02, exact: 0.004, level: true, left: false },
  { waste: 0.06, exact: 0.002, level: false, left: false },
  { waste: 0.15, exact: 0.004, level: true, left: false },
  { waste: ANY, exact: -1, level: false, left: true },
];

/** Annealing begins by accepting layouts longer by about this share, and ends near none. */
const WARM = 0.006;
const COLD = 0.000_05;
/** Layouts in a lane's first cycle of annealing; cycles get longer as the search goes on. */
const CYCLE = 4000;
const LONGEST_CYCLE = 60_000;
/** How often a cycle tries to fit all into a shorter length, and how much shorter. */
const FIT_SHARE = 0.7;
const FIT_STEP = 0.002;
/** How many of the steps on sheets take a few of them apart instead of building all: most, while one fewer may be possible. */
const EXCHANGE_SHARE = 0.95;
const EXCHANGE_SHARE_AT_LEAST = 0.6;

/** What another engine of the same problem may go on from: the order of its best layout, and the way to build it. */
export interface Idea {
  readonly sequence: Sequence;
  /** Which of the search's ways. */
  readonly way: number;
}

interface Lane {
  readonly way: Way;
  current: Sequence;
  currentCost: number;
  best: Sequence;
  bestCost: number;
  cycles: number;
  /** The sequence that left least area out of the film being tried, and how much film. */
  fitting: Sequence;
  fittingCost: number;
  fittingFilm: number;
}

/**
 * What a cycle of annealing makes small: the film, or the area that does not fit into less film, a given shorter length or one
 * sheet fewer.
 */
type Aim =
  | { readonly kind: 'film' }
  | { readonly kind: 'fit'; readonly film: number; readonly limits: Limits };

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
  private readonly starts: readonly Sequence[];
  private readonly lanes: Lane[];
  private lane: Lane;
  private leftInCycle = 0;
  private cycleLength = CYCLE;
  private aim: Aim = { kind: 'film' };
  private exchange: Exchange | null = null;
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
    const empty: Sequence = { piece: [], count: [], turned: [] };
    const ways = decodersOf(strip).flatMap((decoder) => rules.map((rule) => ({ decoder, rule })));
    this.lanes = ways.map((way) => ({
      way,
      current: empty,
      currentCost: ANY,
      best: empty,
      bestCost: ANY,
      cycles: 0,
      fitting: empty,
      fittingCost: ANY,
      fittingFilm: ANY,
    }));
    this.lane = this.lanes[0] as Lane;
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
      const cost = this.costOf(sequence, lane.way);
      if (cost < lane.bestCost) {
        lane.bestCost = cost;
        lane.best = sequence;
      }
      return this.keepIfBetter(cost);
    }
    if (this.random() < this.exchangeShare()) return this.exchangeSheets();
    if (this.leftInCycle === 0) this.nextCycle();
    return this.anneal();
  }

  private exchangeShare(): number {
    const { best, strip } = this;
    if (strip.bins.kind !== 'sheets' || !isEmpty(strip) || !best?.complete || best.tops.length < 2) return 0;
    return best.tops.length > this.least() ? EXCHANGE_SHARE : EXCHANGE_SHARE_AT_LEAST;
  }

  private exchangeSheets(): boolean {
    const { best, strip, limits, random } = this;
    if (best && (!this.exchange || this.exchange.aim >= best.tops.length)) {
      const ways = this.lanes.map(({ way }) => way);
      this.exchange = new Exchange(strip, best, { ways, limits, random });
    }
    const layout = this.exchange?.step();
    if (!layout || (best && layout.cost >= best.cost)) return false;
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
    // A cycle that is under way goes on with its own aim.
    const { aim } = this;
    this.aim = { kind: 'film' };
    const cost = this.costOf(sequence, lane.way);
    this.aim = aim;
    if (cost < lane.bestCost) {
      lane.best = sequence;
      lane.bestCost = cost;
    }
    return this.keepIfBetter(cost);
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
    const { decoder, rule } = this.bestLane().way;
    const build = decoder.decode(sequence, rule, this.limits);
    return keep(build, costOf(build, this.strip));
  }

  private costOf(sequence: Sequence, { decoder, rule }: Way): number {
    const { aim, limits, strip } = this;
    if (aim.kind === 'fit') {
      this.latest = decoder.decode(sequence, rule, aim.limits);
      return this.latest.unplacedArea / strip.width;
    }
    this.latest = decoder.decode(sequence, rule, limits);
    return costOf(this.latest, strip);
  }

  /** The film of a build that was to fit into less; none while it leaves copies out. */
  private filmIfFitted(leftOut: number): number {
    return leftOut === 0 && this.latest ? costOf(this.latest, this.strip) : ANY;
  }

  private latest: Build | null = null;

  /** Keeps the latest build if its film, in all bins, is the least so far. */
  private keepIfBetter(cost: number): boolean {
    if (this.latest === null || (this.best !== null && cost >= this.best.cost)) return false;
    this.best = keep(this.latest, cost);
    return true;
  }

  private anneal(): boolean {
    const { lane, random, aim } = this;
    const done = 1 - this.leftInCycle / this.cycleLength;
    this.leftInCycle -= 1;
    const candidate = copySequence(lane.current);
    disturb(candidate, random, this.turnable);
    const cost = this.costOf(candidate, lane.way);
    const film = aim.kind === 'film' ? cost : this.filmIfFitted(cost);
    const warmth = (this.best?.cost ?? cost) * WARM * (COLD / WARM) ** done;
    if (cost <= lane.currentCost || random() < Math.exp((lane.currentCost - cost) / warmth)) {
      lane.current = candidate;
      lane.currentCost = cost;
      if (aim.kind === 'fit') {
        if (cost < lane.fittingCost) {
          lane.fitting = candidate;
          lane.fittingCost = cost;
        }
        // It fits: the next cycle tries less film.
        if (cost === 0) {
          this.leftInCycle = 0;
          if (film < lane.bestCost) {
            lane.best = candidate;
            lane.bestCost = film;
          }
        }
      } else if (cost < lane.bestCost) {
        lane.best = candidate;
        lane.bestCost = cost;
      }
    }
    return this.keepIfBetter(film);
  }

  /** Every lane has a cycle first; from then on the better lanes are chosen more often. */
  private nextCycle(): void {
    const byCost = [...this.lanes].sort((a, b) => a.bestCost - b.bestCost);
    let chosen = byCost.find((lane) => lane.cycles === 0);
    const isFirst = chosen !== undefined;
    for (const lane of byCost) {
      chosen ??= this.random() < 0.45 ? lane : undefined;
    }
    const lane = chosen ?? (byCost[0] as Lane);
    this.lane = lane;
    this.aim = isFirst ? { kind: 'film' } : this.nextAim();
    if (this.aim.kind === 'fit') {
      if (lane.fittingFilm !== this.aim.film) {
        lane.fitting = lane.best;
        lane.fittingFilm = this.aim.film;
        lane.fittingCost = this.costOf(lane.best, lane.way);
      }
      lane.current = lane.fitting;
      lane.currentCost = lane.fittingCost;
    } else {
      lane.current = lane.best;
      lane.currentCost = lane.bestCost;
    }
    this.cycleLength = Math.min(LONGEST_CYCLE, CYCLE * 2 ** lane.cycles);
    this.leftInCycle = this.cycleLength;
    lane.cycles += 1;
  }

  /** Whether to make the film less as before, or to try to fit into less of it. */
  private nextAim(): Aim {
    const { best, strip, unit, limits } = this;
    const { kind } = strip.bins;
    if (kind === 'spans' || !best?.complete || this.random() > FIT_SHARE) return { kind: 'film' };
    if (kind === 'sheets') {
      const film = best.tops.length - 1;
      return film >= this.least()
        ? { kind: 'fit', film, limits: { ...limits, most: film } }
        : { kind: 'film' };
    }
    const length = best.tops[0] as number;
    const step = Math.max(unit, Math.round((length * FIT_STEP) / unit) * unit);
    const film = Math.max(this.least(), length - step);
    return film < length
      ? { kind: 'fit', film, limits: { ...limits, first: film, other: film } }
      : { kind: 'film' };
  }

  private readonly unit: number;
  private readonly turnable: boolean;
}

function decodersOf(strip: Strip): Decoder[] {
  const isBare = isEmpty(strip);
  if (!isBare && strip.cutting === 'free') return [new AroundSkylineDecoder(strip)];
  const decoders = {
    free: () => [new SkylineDecoder(strip)],
    straight: () => [new GuillotineDecoder(strip), new StagedDecoder(strip)],
    staged: () => [new StagedDecoder(strip)],
  }[strip.cutting]();
  if (!isBare) return decoders.map((decoder) => new AroundStraightDecoder(strip, decoder));
  return strip.together.kind === 'apart'
    ? decoders.map((decoder) => new ApartDecoder(strip, decoder))
    : decoders;
}

/** All lengths of a layout are multiples of it. */
function unitOf({ across, along, turns, count }: Strip): number {
  let unit = 0;
  const divide = (length: number) => {
    let [a, b] = [unit, length];
    while (b > 0) [a, b] = [b, a % b];
    unit = a;
  };
  for (const piece of count.keys()) {
    divide(along[piece] as number);
    if (turns[piece] === 1) divide(across[piece] as number);
  }
  return Math.max(1, unit);
}
