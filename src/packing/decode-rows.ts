import { type Build, type Decoder, emptyBuild, type Limits, type Rule } from './build';
import type { Sequence } from './sequence';
import type { Strip } from './strip';

/**
 * Builds layouts row by row, each across the whole film, so that a straight cut parts every row from the next. How a row is
 * filled is left to its kind.
 */
export abstract class RowDecoder implements Decoder {
  protected readonly strip: Strip;
  /** The runs of the sequence: the piece of each, the way it would rather lie, and copies still to be placed. */
  protected order: readonly number[] = [];
  protected prefers: readonly number[] = [];
  protected left = new Int32Array(64);
  private readonly build: Build;
  private head = 0;
  private bin = 0;

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
    this.follow(rule);
    build.length = 0;
    build.bins = 0;
    let used = 0;
    for (let bin = 0; bin < Math.min(limits.most, build.tops.length); bin += 1) {
      const cap = Math.min(bin === 0 ? limits.first : limits.other, limits.total - used);
      const before = build.length;
      this.bin = bin;
      let top = 0;
      for (;;) {
        const long = this.fillRow(top, cap - top);
        if (long === 0) break;
        top += long;
      }
      if (build.length === before && (bin > 0 || limits.first >= limits.other)) break;
      build.tops[bin] = top;
      build.bins = bin + 1;
      used += top + strip.bins.between;
      if (this.firstLeft() === runs) break;
    }
    build.unplacedArea = 0;
    for (let run = this.firstLeft(); run < runs; run += 1) {
      const piece = this.order[run] as number;
      build.unplacedArea +=
        (this.left[run] as number) * (strip.across[piece] as number) * (strip.along[piece] as number);
    }
    return build;
  }

  /** Takes up the rule of the build that begins. */
  protected abstract follow(rule: Rule): void;

  /**
   * Fills a row that begins at `y` and may be `most` long.
   * @returns how long it is; 0 if no copy fits
   */
  protected abstract fillRow(y: number, most: number): number;

  /** The first run that has copies left; all before it are passed over from now on. */
  protected firstLeft(): number {
    while (this.head < this.order.length && this.left[this.head] === 0) this.head += 1;
    return this.head;
  }

  /** Places a copy of a run. */
  protected place(run: number, turned: number, x: number, y: number): void {
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
}
