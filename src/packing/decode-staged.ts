import type { Rule } from './build';
import { RowDecoder } from './decode-rows';

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
export class StagedDecoder extends RowDecoder {
  /** How much shorter than its row a column may be: the more, the fuller rows get and the more is trimmed off. */
  private shortest = 0;

  protected follow({ waste }: Rule): void {
    this.shortest = waste === Number.POSITIVE_INFINITY ? 0 : Math.max(0, 1 - 4 * waste - 0.08);
  }

  /** The copy that opens a row makes it as long as it is. */
  protected fillRow(y: number, most: number): number {
    const { width } = this.strip;
    const opens = this.choose(width, most, 0);
    if (!opens) return 0;
    const long = opens.h;
    let x = 0;
    for (let next: Choice | null = opens; next; next = this.choose(width - x, long, long * this.shortest)) {
      x += this.fillColumn(x, y, next, long);
    }
    // What is left beside the columns takes whatever fits, however short.
    for (let next = this.choose(width - x, long, 0); next; next = this.choose(width - x, long, 0)) {
      x += this.fillColumn(x, y, next, long);
    }
    return long;
  }

  /** The first copy in the sequence that fits, lying the longer way along the film if both ways do. */
  private choose(room: number, most: number, least: number): Choice | null {
    const { across, along, turns } = this.strip;
    const runs = this.order.length;
    for (let run = this.firstLeft(); run < runs; run += 1) {
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

  /** Fills a column behind the copy that opens it; each further copy is no wider. */
  private fillColumn(x: number, y: number, first: Choice, long: number): number {
    let at = y;
    for (let next: Choice | null = first; next; next = this.choose(first.w, y + long - at, 0)) {
      this.place(next.run, next.turned, x, at);
      at += next.h;
    }
    return first.w;
  }
}
