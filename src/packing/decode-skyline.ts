import { type Build, type Decoder, emptyBuild, type Limits, type Rule } from './build';
import { countUpTo, NONE, type Orientations, orientationsOf } from './orientations';
import type { Sequence } from './sequence';
import { type Segment, Skyline } from './skyline';
import type { Strip } from './strip';
import { Waiting } from './waiting';

/**
 * Builds layouts from sequences: always on the lowest segment of the skyline, the leftmost of them, with
 * the copy that scores best there, the first in the sequence among equals; where none fits, the segment
 * is raised to its lower neighbour.
 *
 * After L. Wei, W.-C. Oon, W. Zhu and A. Lim, A skyline heuristic for the 2D rectangular packing and strip
 * packing problems, European Journal of Operational Research 215(2), 337-346, 2011, and S. C. H. Leung,
 * D. Zhang and K. M. Sim, A two-stage intelligent search algorithm for the two-dimensional strip packing
 * problem, European Journal of Operational Research 215(1), 57-69, 2011. Their scores for exact fits are
 * banded here by the strip left beside a copy, since sizes in micrometres hardly ever fit exactly.
 */
export class SkylineDecoder implements Decoder {
  private readonly build: Build;
  private readonly strip: Strip;
  private readonly orientations: Orientations;
  private readonly waiting: Waiting;
  private readonly skyline: Skyline;
  // The rule of the present build, its shares in micrometres, and the length of the bin that is being filled: fields, since
  // handing lengths over at every copy costs a sixth of the speed.
  private rule: Rule = { waste: 0, exact: 0, level: false, left: false };
  private waste = 0;
  private exact = 0;
  private length = 0;

  constructor(strip: Strip) {
    this.strip = strip;
    this.build = emptyBuild(strip);
    this.orientations = orientationsOf(strip);
    this.waiting = new Waiting(strip, this.orientations);
    this.skyline = new Skyline(strip.count.reduce((sum, count) => sum + count, 0));
  }

  decode(sequence: Sequence, rule: Rule, limits: Limits): Build {
    const { build, waiting, strip } = this;
    this.rule = rule;
    this.waste = rule.waste * strip.width;
    this.exact = rule.exact * strip.width;
    waiting.load(sequence);
    build.length = 0;
    build.bins = 0;
    let used = 0;
    while (waiting.copies > 0 && build.bins < Math.min(limits.most, build.tops.length)) {
      const bin = build.bins;
      const before = build.length;
      build.tops[bin] = 0;
      this.fillBin(Math.min(bin === 0 ? limits.first : limits.other, limits.total - used));
      const isEmpty = build.length === before;
      if (isEmpty && bin > 0) break;
      build.bins += 1;
      used += (build.tops[bin] as number) + strip.bins.between;
      if (isEmpty && limits.first >= limits.other) break;
    }
    build.unplacedArea = waiting.area();
    return build;
  }

  /** Fills the next bin, of some length, as long as copies find a place. */
  private fillBin(length: number): void {
    const { skyline, waiting } = this;
    skyline.reset(this.strip.width);
    this.length = length;
    while (waiting.copies > 0) {
      const segment = skyline.lowest();
      const entry = segment.room < waiting.narrowest ? NONE : this.choose(segment);
      if (entry !== NONE) this.place(entry, segment);
      else if (!skyline.raise(segment.at)) break;
    }
  }

  /**
   * The orientation of the copy that does best on a segment; `NONE` if none fits. Best is one that fills it, then one that leaves
   * a strip of use, then one that ends level with a neighbour.
   */
  private choose(segment: Segment): number {
    if (this.exact >= 0) {
      const filling = this.filling(segment);
      if (filling !== NONE) return filling;
    }
    let level = NONE;
    if (this.rule.level) {
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
    const { level } = this.rule;
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
      const isLevel = level && (length === leftWall || length === rightWall);
      // Those that end level come before all others.
      const order = isLevel ? run : run + runs;
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

  /** The first in the sequence that leaves a strip of use, or else the first that fits. */
  private first({ y, room }: Segment): number {
    const most = this.length - y;
    const { waiting } = this;
    const { widths, lengths, other } = this.orientations;
    const { wish, next, runs } = waiting;
    const besideNarrowest = room - waiting.narrowest;
    const wide = room - this.waste;
    let fits = NONE;
    for (let run = next[runs] as number; run < runs; run = next[run] as number) {
      const entry = wish[run] as number;
      const width = widths[entry] as number;
      const length = lengths[entry] as number;
      if (width <= room && length <= most) {
        if (width <= besideNarrowest || width >= wide) return entry;
        if (fits === NONE) fits = entry;
      }
      if (length <= room && width <= most) {
        const turned = other[entry] as number;
        if (turned === NONE) continue;
        if (length <= besideNarrowest || length >= wide) return turned;
        if (fits === NONE) fits = turned;
      }
    }
    return fits;
  }

  /** Places a copy, level with a neighbour if it can be, otherwise at the taller one. */
  private place(entry: number, { at, x, y, room, leftWall, rightWall }: Segment): void {
    const { build, waiting, skyline } = this;
    const { pieces, turned, widths, lengths } = this.orientations;
    const piece = pieces[entry] as number;
    const width = widths[entry] as number;
    const length = lengths[entry] as number;
    const far = y + length;
    const atLeft = this.rule.left || length === leftWall || (length !== rightWall && leftWall >= rightWall);
    const index = build.length;
    build.piece[index] = piece;
    build.turned[index] = turned[entry] as number;
    build.bin[index] = build.bins;
    build.x[index] = atLeft ? x : x + room - width;
    build.y[index] = y;
    build.length += 1;
    if (far > (build.tops[build.bins] as number)) build.tops[build.bins] = far;
    skyline.cover(at, width, far, atLeft);
    waiting.take(piece);
  }
}
