import { type Build, type Decoder, emptyBuild, type Limits, type Rule } from './build';
import type { Sequence } from './sequence';
import type { Strip } from './strip';

/** How what a copy leaves of a part is cut in two: the shorter rest first, the longer one, or always beside or behind it. */
type Split = 'shorter' | 'longer' | 'beside' | 'behind';

/** A copy that is to lie in a part. */
interface Choice {
  readonly run: number;
  readonly turned: number;
  readonly w: number;
  readonly h: number;
}

/** The way of cutting that goes with a rule: each lane of the search has one of its own. */
function splitOf({ waste, level }: Rule): Split {
  if (waste === Number.POSITIVE_INFINITY) return 'behind';
  if (!level) return 'longer';
  return waste >= 0.1 ? 'beside' : 'shorter';
}

/**
 * Builds layouts that edge-to-edge cuts separate in any number of stages. The film is parted into rows, each as long as
 * the copy that opens it. A copy lies in the near corner of a part; a cut along one of its edges leaves two smaller parts,
 * which are filled the same way.
 *
 * The parts and the ways to split them are those of J. Jylänki, A thousand ways to pack the bin, 2010 (guillotine algorithms);
 * the copy for a part is the one that fits an edge of it best, the first in the sequence among the near equal.
 */
export class GuillotineDecoder implements Decoder {
  private readonly build: Build;
  private readonly strip: Strip;
  private left = new Int32Array(64);
  private order: readonly number[] = [];
  private prefers: readonly number[] = [];
  private head = 0;
  private bin = 0;
  private split: Split = 'shorter';
  /** What a copy may leave beside itself and count as filling the part. */
  private near = 0;

  constructor(strip: Strip) {
    this.strip = strip;
    this.build = emptyBuild(strip);
  }

  decode(sequence: Sequence, rule: Rule, limits: Limits): Build {
    const { strip, build } = this;
    const runs = sequence.piece.length;
    if (runs > this.left.length) this.left = new Int32Array(2 * runs);
    for (let run = 0; run < runs; run += 1) this.left[run] = sequence.count[run] as number;
    this.order = sequence.piece;
    this.prefers = sequence.turned;
    this.head = 0;
    this.split = splitOf(rule);
    this.near = Math.max(0, rule.exact) * strip.width;
    build.length = 0;
    build.bins = 0;
    let used = 0;
    for (let bin = 0; bin < Math.min(limits.most, build.tops.length); bin += 1) {
      const cap = Math.min(bin === 0 ? limits.first : limits.other, limits.total - used);
      const before = build.length;
      this.bin = bin;
      let top = 0;
      for (;;) {
        const opens = this.first(strip.width, cap - top);
        if (!opens) break;
        this.place(opens, 0, top);
        this.fill(opens.w, top, strip.width - opens.w, opens.h);
        top += opens.h;
      }
      if (build.length === before && (bin > 0 || limits.first >= limits.other)) break;
      build.tops[bin] = top;
      build.bins = bin + 1;
      used += top + strip.bins.between;
      this.passUsed();
      if (this.head === runs) break;
    }
    build.unplacedArea = 0;
    for (let run = this.head; run < runs; run += 1) {
      const piece = this.order[run] as number;
      build.unplacedArea +=
        (this.left[run] as number) * (strip.across[piece] as number) * (strip.along[piece] as number);
    }
    return build;
  }

  private passUsed(): void {
    while (this.head < this.order.length && this.left[this.head] === 0) this.head += 1;
  }

  /** How a run's copies may lie in a part, the way that it prefers first. */
  private *waysOf(run: number, room: number, most: number): Generator<Choice> {
    const { across, along, turns } = this.strip;
    const piece = this.order[run] as number;
    const [w, h] = [across[piece] as number, along[piece] as number];
    const preferred = turns[piece] === 1 ? (this.prefers[run] as number) : 0;
    for (const turned of turns[piece] === 1 ? [preferred, 1 - preferred] : [0]) {
      const way = turned === 0 ? { run, turned, w, h } : { run, turned, w: h, h: w };
      if (way.w <= room && way.h <= most) yield way;
    }
  }

  /** The first copy in the sequence that fits. */
  private first(room: number, most: number): Choice | null {
    this.passUsed();
    for (let run = this.head; run < this.order.length; run += 1) {
      if (this.left[run] === 0) continue;
      for (const way of this.waysOf(run, room, most)) return way;
    }
    return null;
  }

  /** The copy that leaves least beside or behind itself. */
  private best(room: number, most: number): Choice | null {
    this.passUsed();
    let best: Choice | null = null;
    let least = Number.POSITIVE_INFINITY;
    for (let run = this.head; run < this.order.length; run += 1) {
      if (this.left[run] === 0) continue;
      for (const way of this.waysOf(run, room, most)) {
        const rest = Math.min(room - way.w, most - way.h);
        if (rest < least - this.near) {
          best = way;
          least = rest;
        }
      }
      if (least <= this.near) break;
    }
    return best;
  }

  private place({ run, turned }: Choice, x: number, y: number): void {
    const { build } = this;
    const index = build.length;
    build.piece[index] = this.order[run] as number;
    build.turned[index] = turned;
    build.bin[index] = this.bin;
    build.x[index] = x;
    build.y[index] = y;
    build.length += 1;
    this.left[run] = (this.left[run] as number) - 1;
  }

  private fill(x: number, y: number, room: number, most: number): void {
    if (room <= 0 || most <= 0) return;
    const own = this.best(room, most);
    if (!own) return;
    this.place(own, x, y);
    const { w, h } = own;
    const beside = room - w;
    const behind = most - h;
    // A cut across leaves what lies beside the copy as long as the copy; a cut along, as long as the part.
    const cutsAcross =
      this.split === 'shorter'
        ? beside < behind
        : this.split === 'longer'
          ? beside >= behind
          : this.split === 'behind';
    if (cutsAcross) {
      this.fill(x + w, y, beside, h);
      this.fill(x, y + h, room, behind);
    } else {
      this.fill(x, y + h, w, behind);
      this.fill(x + w, y, beside, most);
    }
  }
}
