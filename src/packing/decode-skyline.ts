import { type Build, type Decoder, emptyBuild, type Limits, type Rule } from './build';
import { Choice } from './choose-copy';
import { copied, type Layout } from './layout';
import { NONE, type Orientations, orientationsOf } from './orientations';
import type { Sequence } from './sequence';
import { type Segment, Skyline, type SkylineState } from './skyline';
import type { Strip } from './strip';
import { Waiting } from './waiting';

/** The first copies of a layout and the skyline that they leave, to build on. */
export interface Part extends Pick<Layout, 'piece' | 'bin' | 'x' | 'y' | 'turned' | 'tops'> {
  /** Of its last bin. */
  readonly skyline: SkylineState;
}

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
  private readonly choice: Choice;
  /** Copies lie at the left end of a segment, whatever its neighbours. */
  private left = false;

  constructor(strip: Strip) {
    this.strip = strip;
    this.build = emptyBuild(strip);
    this.orientations = orientationsOf(strip);
    this.waiting = new Waiting(strip, this.orientations);
    this.choice = new Choice(this.orientations, this.waiting);
    this.skyline = new Skyline(strip.count.reduce((sum, count) => sum + count, 0));
  }

  /** @param part of a layout to go on from: the sequence has the rest of its copies */
  decode(sequence: Sequence, rule: Rule, limits: Limits, part: Part | null = null): Build {
    return this.run(sequence, rule, limits, { part, copies: Number.POSITIVE_INFINITY });
  }

  /** The first copies of a layout, as a sequence of all its copies places them. */
  partOf(sequence: Sequence, copies: number, rule: Rule, limits: Limits): Part {
    const build = this.run(sequence, rule, limits, { part: null, copies });
    return { ...copied(build), skyline: this.skyline.state() };
  }

  /** Goes on from a part, or begins anew, and places no more than so many copies. */
  private run(
    sequence: Sequence,
    rule: Rule,
    limits: Limits,
    { part, copies }: { part: Part | null; copies: number },
  ): Build {
    const { build, waiting, strip } = this;
    this.left = rule.left;
    this.choice.follow(rule, strip.width);
    waiting.load(sequence);
    const until = Math.max(0, waiting.copies - copies);
    build.length = 0;
    build.bins = 0;
    let used = part ? this.restore(part) : 0;
    let isBegun = part !== null;
    while (waiting.copies > until && build.bins < Math.min(limits.most, build.tops.length)) {
      const bin = build.bins;
      const before = build.length;
      if (!isBegun) {
        build.tops[bin] = 0;
        this.skyline.reset(strip.width);
      }
      this.fillBin(Math.min(bin === 0 ? limits.first : limits.other, limits.total - used), until);
      const isEmpty = !isBegun && build.length === before;
      isBegun = false;
      if (isEmpty && bin > 0) break;
      build.bins += 1;
      used += (build.tops[bin] as number) + strip.bins.between;
      if (isEmpty && limits.first >= limits.other) break;
    }
    build.unplacedArea = waiting.area();
    return build;
  }

  /** @returns film of the bins that are closed */
  private restore({ piece, bin, x, y, turned, tops, skyline }: Part): number {
    const { build, strip } = this;
    build.piece.set(piece);
    build.bin.set(bin);
    build.x.set(x);
    build.y.set(y);
    build.turned.set(turned);
    build.tops.set(tops);
    build.length = piece.length;
    build.bins = tops.length - 1;
    this.skyline.restore(skyline);
    let used = 0;
    for (let closed = 0; closed < build.bins; closed += 1)
      used += (tops[closed] as number) + strip.bins.between;
    return used;
  }

  /** Fills a bin, of some length, as long as copies find a place and more than so many wait. */
  private fillBin(length: number, until: number): void {
    const { skyline, waiting, choice } = this;
    choice.begin(length);
    while (waiting.copies > until) {
      const segment = skyline.lowest(waiting.narrowest);
      if (!segment) break;
      const entry = choice.best(segment);
      if (entry !== NONE) this.place(entry, segment);
      else if (!skyline.raise(segment.at)) break;
    }
  }

  /** Places a copy, level with a neighbour if it can be, otherwise at the taller one. */
  private place(entry: number, { at, x, y, room, leftWall, rightWall }: Segment): void {
    const { build, waiting, skyline } = this;
    const { pieces, turned, widths, lengths } = this.orientations;
    const piece = pieces[entry] as number;
    const width = widths[entry] as number;
    const length = lengths[entry] as number;
    const far = y + length;
    const atLeft = this.left || length === leftWall || (length !== rightWall && leftWall >= rightWall);
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
