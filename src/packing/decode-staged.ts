import { type Build, type Decoder, emptyBuild, type Limits, type Rule } from './build';
import type { Sequence } from './sequence';
import type { Strip } from './strip';

/** A copy that opens a column or lies on one. */
interface Choice {
  readonly run: number;
  readonly turned: number;
  readonly w: number;
  readonly h: number;
}

/**
 * Builds layouts that edge-to-edge cuts separate, in stages: rows across the film, columns in a row, copies one behind
 * the other in a column. A row is as long as the copy that opens it; a column as wide.
 *
 * The stages are those of P. C. Gilmore and R. E. Gomory, Multistage cutting stock problems of two and more dimensions,
 * Operations Research 13(1), 94-120, 1965; rows are filled greedily, in the order of a sequence.
 */
export class StagedDecoder implements Decoder {
  private readonly build: Build;
  private readonly strip: Strip;
  private left: Int32Array;
  private order: readonly number[] = [];
  private head = 0;

  constructor(strip: Strip) {
    this.strip = strip;
    this.left = new Int32Array(64);
    this.build = emptyBuild(strip);
  }

  decode(sequence: Sequence, rule: Rule, limits: Limits): Build {
    const { strip, build } = this;
    const runs = sequence.piece.length;
    if (runs > this.left.length) this.left = new Int32Array(2 * runs);
    for (let run = 0; run < runs; run += 1) this.left[run] = sequence.count[run] as number;
    this.order = sequence.piece;
    this.head = 0;
    build.length = 0;
    build.bins = 0;
    // How much shorter than its row a column may be: the more, the fuller rows get and the more is trimmed off.
    const shortest = rule.waste === Number.POSITIVE_INFINITY ? 0 : Math.max(0, 1 - 4 * rule.waste - 0.08);
    let used = 0;
    for (let bin = 0; bin < Math.min(limits.most, build.tops.length); bin += 1) {
      const cap = Math.min(bin === 0 ? limits.first : limits.other, limits.total - used);
      const before = build.length;
      let top = 0;
      for (;;) {
        const first = this.choose(strip.width, cap - top, 0);
        if (!first) break;
        top += this.fillRow(bin, top, first, shortest);
      }
      if (build.length === before && (bin > 0 || limits.first >= limits.other)) break;
      build.tops[bin] = top;
      build.bins = bin + 1;
      used += top + strip.bins.between;
      this.passUsed(runs);
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

  private passUsed(runs: number): void {
    while (this.head < runs && this.left[this.head] === 0) this.head += 1;
  }

  /** The first copy in the sequence that fits, lying the longer way along the film if both ways do. */
  private choose(room: number, most: number, least: number): Choice | null {
    const { across, along, turns } = this.strip;
    const runs = this.order.length;
    this.passUsed(runs);
    for (let run = this.head; run < runs; run += 1) {
      if (this.left[run] === 0) continue;
      const piece = this.order[run] as number;
      const [w, h] = [across[piece] as number, along[piece] as number];
      const lies = w <= room && h <= most && h >= least;
      const turned = turns[piece] === 1 && h <= room && w <= most && w >= least;
      if (turned && (!lies || w > h)) return { run, turned: 1, w: h, h: w };
      if (lies) return { run, turned: 0, w, h };
    }
    return null;
  }

  /** Fills a row; the copy that opens it makes it as long as it is. */
  private fillRow(bin: number, y: number, first: Choice, shortest: number): number {
    const { width } = this.strip;
    const long = first.h;
    let x = 0;
    for (let next: Choice | null = first; next; next = this.choose(width - x, long, long * shortest)) {
      x += this.fillColumn(bin, x, y, next, long);
    }
    // What is left beside the columns takes whatever fits, however short.
    for (let next = this.choose(width - x, long, 0); next; next = this.choose(width - x, long, 0)) {
      x += this.fillColumn(bin, x, y, next, long);
    }
    return long;
  }

  /** Fills a column behind the copy that opens it; each further copy is no wider. */
  private fillColumn(bin: number, x: number, y: number, first: Choice, long: number): number {
    let at = y;
    for (let next: Choice | null = first; next; next = this.choose(first.w, y + long - at, 0)) {
      const { build } = this;
      const index = build.length;
      build.piece[index] = this.order[next.run] as number;
      build.turned[index] = next.turned;
      build.bin[index] = bin;
      build.x[index] = x;
      build.y[index] = at;
      build.length += 1;
      this.left[next.run] = (this.left[next.run] as number) - 1;
      at += next.h;
    }
    return first.w;
  }
}
