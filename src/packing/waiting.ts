import { NONE, type Orientations } from './orientations';
import type { Sequence } from './sequence';
import type { Strip } from './strip';

/** The copies of a sequence that still wait for a place, in lists of runs that close over those used up. */
export class Waiting {
  /** How many copies, in all. */
  copies = 0;
  /** How many runs it had at first. */
  runs = 0;
  /** The orientation that each run would rather have. */
  wish = new Int32Array(64);
  /** The first run of each piece that has copies left, or `NONE`. */
  readonly firstOf: Int32Array;
  /** The least width of a copy, lying any way it may; infinite if none waits. */
  narrowest = Number.POSITIVE_INFINITY;
  private readonly strip: Strip;
  private readonly orientations: Orientations;
  /** Which of the orientations is the narrowest. */
  private narrow = 0;
  // Of each run the next and the one before that have copies left, in a ring closed by an index past the last run; the next
  // run of the same piece; and copies left.
  private following = new Int32Array(64);
  private before = new Int32Array(64);
  private nextSame = new Int32Array(64);
  private left = new Int32Array(64);

  constructor(strip: Strip, orientations: Orientations) {
    this.strip = strip;
    this.orientations = orientations;
    this.firstOf = new Int32Array(strip.count.length);
  }

  /** Begins anew with all copies of a sequence. */
  load({ piece, count, turned }: Sequence): void {
    const runs = piece.length;
    if (runs >= this.left.length) {
      this.following = new Int32Array(2 * runs);
      this.before = new Int32Array(2 * runs);
      this.nextSame = new Int32Array(2 * runs);
      this.left = new Int32Array(2 * runs);
      this.wish = new Int32Array(2 * runs);
    }
    const { following, before, nextSame, left, wish, firstOf } = this;
    const { quarter, asGiven } = this.orientations;
    this.runs = runs;
    let total = 0;
    firstOf.fill(NONE);
    following[runs] = 0;
    before[0] = runs;
    for (let run = runs - 1; run >= 0; run -= 1) {
      const own = piece[run] as number;
      const copies = count[run] as number;
      following[run] = run + 1;
      before[run + 1] = run;
      left[run] = copies;
      wish[run] = (turned[run] === 1 ? quarter : asGiven)[own] as number;
      nextSame[run] = firstOf[own] as number;
      firstOf[own] = run;
      total += copies;
    }
    this.copies = total;
    this.narrow = 0;
    this.findNarrowest();
  }

  /** The runs that have copies left: at the index past the last run the first of them, at each the next. */
  get next(): Int32Array {
    return this.following;
  }

  /** Whether more than one copy of a piece waits. */
  hasMore(piece: number): boolean {
    const run = this.firstOf[piece] as number;
    return run !== NONE && ((this.left[run] as number) > 1 || this.nextSame[run] !== NONE);
  }

  /** Takes out one copy of a piece, of its first run. */
  take(piece: number): void {
    const { following, before, left, firstOf } = this;
    const run = firstOf[piece] as number;
    this.copies -= 1;
    left[run] = (left[run] as number) - 1;
    if (left[run] !== 0) return;
    const next = following[run] as number;
    const previous = before[run] as number;
    following[previous] = next;
    before[next] = previous;
    firstOf[piece] = this.nextSame[run] as number;
    if (firstOf[piece] === NONE) this.findNarrowest();
  }

  /** Grown area of the copies. */
  area(): number {
    const { across, along } = this.strip;
    const runs = this.runs;
    let area = 0;
    for (let run = this.next[runs] as number; run < runs; run = this.next[run] as number) {
      const own = this.orientations.pieces[this.wish[run] as number] as number;
      area += (this.left[run] as number) * (across[own] as number) * (along[own] as number);
    }
    return area;
  }

  /** Once a piece is used up, it stays so: the search goes on from where it was. */
  private findNarrowest(): void {
    const { widths, pieces } = this.orientations;
    while (this.narrow < widths.length && this.firstOf[pieces[this.narrow] as number] === NONE)
      this.narrow += 1;
    this.narrowest = widths[this.narrow] ?? Number.POSITIVE_INFINITY;
  }
}
