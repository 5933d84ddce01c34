import { type Aim, FILM, nextAim } from './aim';
import { isTaken, warmthAt } from './annealing';
import type { Limits, Rule } from './build';
import { type Part, SkylineDecoder } from './decode-skyline';
import type { Lane } from './lane';
import { keep, type Layout } from './layout';
import { copySequence, disturb, placedOrder, type Sequence } from './sequence';
import type { Strip } from './strip';
import { type Trial, trialOf } from './trial';

/** With fewer copies in all the search comes to the end soon enough. */
const FEWEST = 33;
/** How many of the last copies a cycle moves, and of all at the most. */
const LEAST = 12;
const MOST = 300;
const MOST_SHARE = 0.8;
/** Layouts in a cycle. */
const CYCLE = 6000;
/** Cycles that a layout has before a newer one of its lane takes its place. */
const PATIENCE = 25;
/** How often the next cycle is on the best lane, of those that are left on the next. */
const BEST_LANE = 0.45;

/** The layout of a lane whose end is tried. */
interface Standing {
  /** What it took as the lane had it. */
  readonly from: number;
  layout: Layout;
  cycles: number;
}

/** A cycle of annealing over the copies behind a part that stays where it lies. */
interface Cycle {
  readonly standing: Standing;
  readonly rule: Rule;
  readonly part: Part;
  readonly aim: Aim;
  /** How warm it is, against one on all of the film. */
  readonly scale: number;
  current: Sequence;
  currentCost: number;
  /** Layouts that are left. */
  left: number;
}

/** The problem, and what the search knows of it. */
interface Ground {
  readonly strip: Strip;
  readonly count: Int32Array;
  readonly limits: Limits;
  readonly random: () => number;
  /** All lengths of a layout are multiples of it. */
  readonly unit: number;
  /** No layout takes less. */
  readonly least: () => number;
}

/**
 * Anneals over the last copies of the lanes' best layouts alone, for half of the time that is left once each lane has had a cycle: the end
 * of a layout takes what its beginning has left over, so that most of the film lost is lost there, and a few copies are laid out
 * many times as fast as all. On rolls with nothing on them.
 */
export class Ending {
  private readonly decoder: SkylineDecoder;
  private readonly ground: Ground;
  private readonly copies: number;
  private readonly turnable: boolean;
  private readonly standings = new Map<Lane, Standing>();
  private cycle: Cycle | null = null;
  /** Copies that the search is ahead by. */
  private ahead = 0;

  private constructor(decoder: SkylineDecoder, ground: Ground, copies: number) {
    this.decoder = decoder;
    this.ground = ground;
    this.copies = copies;
    this.turnable = ground.strip.turns.includes(1);
  }

  /** @returns `null` for a strip or copies that it is not for */
  static of(lanes: readonly Lane[], ground: Ground): Ending | null {
    const decoder = lanes[0]?.way.decoder;
    const copies = ground.count.reduce((sum, own) => sum + own, 0);
    const isFor = ground.strip.bins.kind !== 'sheets' && copies >= FEWEST;
    return isFor && decoder instanceof SkylineDecoder ? new Ending(decoder, ground, copies) : null;
  }

  /** Hears of a layout of all copies that the search builds. */
  wait(): void {
    this.ahead += this.copies;
  }

  /** Whether it is its turn. */
  isDue(lanes: readonly Lane[]): boolean {
    return this.ahead > 0 && lanes.every(({ cycles }) => cycles > 0);
  }

  /**
   * Builds one layout.
   * @returns it, if it takes less film than the one whose end is tried
   */
  step(lanes: readonly Lane[]): Layout | null {
    this.cycle ??= this.begin(lanes);
    const { cycle, turnable } = this;
    const { random } = this.ground;
    if (!cycle) return null;
    const warmth = cycle.scale * warmthAt(1 - cycle.left / CYCLE);
    cycle.left -= 1;
    if (cycle.left === 0) this.cycle = null;
    const candidate = copySequence(cycle.current);
    disturb(candidate, random, turnable);
    const { build, cost, film } = this.build(candidate, cycle);
    if (!isTaken(cost - cycle.currentCost, warmth, random)) return null;
    cycle.current = candidate;
    cycle.currentCost = cost;
    if (film >= cycle.standing.layout.cost) return null;
    // Where all fits, the next cycle tries less film.
    if (cycle.aim.kind === 'fit') this.cycle = null;
    cycle.standing.layout = keep(build, film);
    return cycle.standing.layout;
  }

  /** @returns `null` where copies are left out: there is no end to be tried */
  private begin(lanes: readonly Lane[]): Cycle | null {
    const { decoder, copies, ground } = this;
    const { strip, random, limits } = ground;
    const lane = this.chosen(lanes);
    const standing = this.standingOf(lane);
    const { layout } = standing;
    if (!layout.complete) {
      this.ahead = 0;
      return null;
    }
    const { rule } = lane.way;
    const aim = nextAim(strip, { ...ground, best: layout });
    const most = Math.min(MOST, MOST_SHARE * copies);
    const drawn = copies - Math.round(LEAST * (most / LEAST) ** random());
    const held = Math.max(1, Math.min(drawn, firstBeyond(layout, aim, strip)));
    const part = decoder.partOf(placedOrder(layout, 0, copies), held, rule, limits);
    const current = placedOrder(layout, held, copies);
    const scale = layout.cost * Math.sqrt(1 - held / copies);
    const cycle = { standing, rule, part, aim, scale, current, currentCost: 0, left: CYCLE };
    cycle.currentCost = this.build(current, cycle).cost;
    standing.cycles += 1;
    return cycle;
  }

  /** One of the lanes, a better one more often. */
  private chosen(lanes: readonly Lane[]): Lane {
    const cost = (lane: Lane) =>
      Math.min(lane.bestCost, this.standings.get(lane)?.layout.cost ?? lane.bestCost);
    const ranked = [...lanes].sort((a, b) => cost(a) - cost(b));
    return ranked.find(() => this.ground.random() < BEST_LANE) ?? (ranked[0] as Lane);
  }

  /** What a lane has come to, taken up anew when it has come further. */
  private standingOf(lane: Lane): Standing {
    const { best, bestCost } = lane;
    const standing = this.standings.get(lane);
    const isOld = !standing || bestCost < standing.layout.cost || standing.cycles >= PATIENCE;
    if (standing && !(isOld && bestCost < standing.from)) return standing;
    const { build, film } = lane.build(best, FILM);
    const next = { from: bestCost, layout: keep(build, film), cycles: 0 };
    this.standings.set(lane, next);
    return next;
  }

  private build(sequence: Sequence, { rule, part, aim }: Cycle): Trial {
    const { decoder, ground } = this;
    const limits = aim.kind === 'fit' ? aim.limits : ground.limits;
    const build = decoder.decode(sequence, rule, limits, part);
    this.ahead -= build.length - part.piece.length;
    return trialOf(build, aim, ground.strip);
  }
}

/** The first copy of a layout that reaches to where film is to be saved, on an uncut roll: it moves, too. */
function firstBeyond({ piece, turned, y, tops }: Layout, aim: Aim, { bins, across, along }: Strip): number {
  if (bins.kind !== 'strip') return piece.length;
  const film = aim.kind === 'fit' ? aim.film : (tops[0] as number) - 1;
  return piece.findIndex((own, copy) => {
    const length = (turned[copy] === 1 ? across : along)[own] as number;
    return (y[copy] as number) + length > film;
  });
}
