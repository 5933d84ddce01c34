import type { Rule } from './build';
import { countUpTo, NONE, type Orientations } from './orientations';
import type { Segment } from './skyline';
import type { Waiting } from './waiting';

/** Which of the waiting copies is placed on a segment of the skyline, and how it lies. */
export class Choice {
  private readonly orientations: Orientations;
  private readonly waiting: Waiting;
  // The rule of the present build, its shares in micrometres, and the length of the bin that is being filled: fields, since
  // handing lengths over at every copy costs a sixth of the speed.
  private isLevel = false;
  private isPaired = false;
  private waste = 0;
  private exact = 0;
  private length = 0;

  constructor(orientations: Orientations, waiting: Waiting) {
    this.orientations = orientations;
    this.waiting = waiting;
  }

  /** Takes up the rule of the build that begins. */
  follow({ level, waste, exact, paired }: Rule, width: number): void {
    this.isLevel = level;
    this.isPaired = paired;
    this.waste = waste * width;
    this.exact = exact * width;
  }

  /** Begins on the next bin, of some length. */
  begin(length: number): void {
    this.length = length;
  }

  /**
   * The orientation of the copy that does best on a segment; `NONE` if none fits. Best is one that fills it, then one that leaves
   * a strip of use, then one that ends level with a neighbour.
   */
  best(segment: Segment): number {
    if (this.exact >= 0) {
      const filling = this.filling(segment);
      if (filling !== NONE) return filling;
    }
    let level = NONE;
    if (this.isLevel) {
      level = this.level(segment);
      if (level !== NONE && this.isThrifty(level, segment.room)) return level;
    }
    const first = this.first(segment);
    return level === NONE || (first !== NONE && this.isThrifty(first, segment.room)) ? first : level;
  }

  /** Whether another copy fits beside one, or so little is left that the rule lets it go. */
  private isThrifty(entry: number, room: number): boolean {
    const width = this.orientations.widths[entry] as number;
    return width <= room - this.waiting.narrowest || width >= room - this.waste;
  }

  /** Of copies that fill a segment, found by their width, one that ends level with a neighbour if the rule prefers those. */
  private filling({ room, y, leftWall, rightWall }: Segment): number {
    const most = this.length - y;
    const { firstOf, runs } = this.waiting;
    const { widths, pieces, lengths } = this.orientations;
    const { isLevel } = this;
    const narrowest = room - this.exact;
    let best = NONE;
    let least = 2 * runs;
    for (
      let entry = countUpTo(widths, room) - 1;
      entry >= 0 && (widths[entry] as number) >= narrowest;
      entry -= 1
    ) {
      const run = firstOf[pieces[entry] as number] as number;
      const length = lengths[entry] as number;
      if (run === NONE || length > most) continue;
      const ends = isLevel && (length === leftWall || length === rightWall);
      // Those that end level come before all others.
      const order = ends ? run : run + runs;
      if (order < least) {
        best = entry;
        least = order;
      }
    }
    return best;
  }

  /** Of copies that end level with a neighbour, found by their length, a thrifty one if there is. */
  private level({ y, room, leftWall, rightWall }: Segment): number {
    const most = this.length - y;
    const { firstOf, runs } = this.waiting;
    const { pieces, widths, sortedLengths, byLength } = this.orientations;
    const besideNarrowest = room - this.waiting.narrowest;
    const wide = room - this.waste;
    let best = NONE;
    let least = 2 * runs;
    for (let side = leftWall === rightWall ? 1 : 0; side < 2; side += 1) {
      const wall = side === 0 ? leftWall : rightWall;
      if (wall > most) continue;
      for (let at = countUpTo(sortedLengths, wall) - 1; at >= 0 && sortedLengths[at] === wall; at -= 1) {
        const entry = byLength[at] as number;
        const run = firstOf[pieces[entry] as number] as number;
        const width = widths[entry] as number;
        if (run === NONE || width > room) continue;
        // Those that are thrifty come before all others.
        const isThrifty = width <= besideNarrowest || width >= wide;
        const order = isThrifty ? run : run + runs;
        if (order < least) {
          best = entry;
          least = order;
        }
      }
    }
    return best;
  }

  /**
   * The first in the sequence that leaves a strip of use, or else the first that fits. Under a rule of pairs it is the first that leaves
   * none or one that another copy fills, if there is.
   */
  private first({ y, room }: Segment): number {
    const most = this.length - y;
    const { waiting, isPaired } = this;
    const { widths, lengths, other } = this.orientations;
    const { wish, next, runs } = waiting;
    const besideNarrowest = room - waiting.narrowest;
    const wide = room - this.waste;
    let thrifty = NONE;
    let fits = NONE;
    for (let run = next[runs] as number; run < runs; run = next[run] as number) {
      const entry = wish[run] as number;
      const width = widths[entry] as number;
      const length = lengths[entry] as number;
      if (width <= room && length <= most) {
        if (width <= besideNarrowest || width >= wide) {
          if (!isPaired || width >= wide || this.isFilledBeside(entry, room, most)) return entry;
          if (thrifty === NONE) thrifty = entry;
        } else if (fits === NONE) fits = entry;
      }
      if (length <= room && width <= most) {
        const turned = other[entry] as number;
        if (turned === NONE) continue;
        if (length <= besideNarrowest || length >= wide) {
          if (!isPaired || length >= wide || this.isFilledBeside(turned, room, most)) return turned;
          if (thrifty === NONE) thrifty = turned;
        } else if (fits === NONE) fits = turned;
      }
    }
    return thrifty === NONE ? fits : thrifty;
  }

  /** Whether another copy fills what one leaves of a segment. */
  private isFilledBeside(entry: number, room: number, most: number): boolean {
    const { widths, lengths, pieces } = this.orientations;
    const { waiting } = this;
    const { firstOf } = waiting;
    const own = pieces[entry];
    const left = room - (widths[entry] as number);
    const narrowest = left - this.exact;
    for (
      let beside = countUpTo(widths, left) - 1;
      beside >= 0 && (widths[beside] as number) >= narrowest;
      beside -= 1
    ) {
      const piece = pieces[beside] as number;
      if ((lengths[beside] as number) > most) continue;
      if (piece === own ? waiting.hasMore(piece) : firstOf[piece] !== NONE) return true;
    }
    return false;
  }
}
