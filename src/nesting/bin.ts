import type { Clearance } from './clearance';
import { FreeRows } from './free-rows';
import type { Laid } from './laid';
import type { Shape } from './shape';
import type { Stock } from './stock';

/** Rows that are looked through before what lies near is collected anew. */
const STRETCH = 24;

/** A bin being filled: each copy goes to the first row that has room for it, there as far left as may be. */
export class Bin {
  readonly laid: Laid[] = [];
  private readonly still: readonly Laid[];
  /** By shape: no row before this one has room for it, since nothing is taken out again. */
  private readonly least = new Map<number, number>();
  private near: { readonly clear: Clearance; readonly x: number; readonly row: number }[] = [];

  private readonly free: FreeRows;
  private readonly stock: Stock;
  private readonly reach: number;

  /**
   * @param reach how far grown boxes may reach, micrometres
   * @param still what lies there already
   */
  constructor(stock: Stock, reach: number, still: readonly Laid[]) {
    this.stock = stock;
    this.still = still;
    this.reach = reach;
    this.free = new FreeRows(stock.left, stock.right);
    for (const laid of still) this.free.take(stock.all[laid.shape] as Shape, laid);
  }

  /**
   * The first row where a shape has room, and how far across; `null` if it has none there.
   * @param past a row that is no longer of interest
   */
  find(number: number, past: number): { readonly x: number; readonly row: number } | null {
    const { right, height, all } = this.stock;
    const shape = all[number] as Shape;
    const last = Math.min(Math.floor((this.reach - shape.length) / height), past);
    let row = this.least.get(number) ?? 0;
    for (let gathered = -1; row <= last; row += 1) {
      if (this.free.isTooNarrow(shape, row)) continue;
      if (row > gathered) {
        gathered = Math.min(last, row + STRETCH - 1);
        this.gather(number, shape, row, gathered);
      }
      const x = this.clearAt(row, right - shape.width);
      if (x === null) continue;
      this.least.set(number, row);
      return { x, row };
    }
    this.least.set(number, row);
    return null;
  }

  lay(laid: Laid): void {
    this.laid.push(laid);
    this.free.take(this.stock.all[laid.shape] as Shape, laid);
  }

  /** Collects what may be in a shape's way at some rows. */
  private gather(number: number, { rows }: Shape, from: number, to: number): void {
    this.near = [];
    for (const lying of [this.still, this.laid]) {
      for (const { shape, x, row } of lying) {
        if (row - rows >= to || row + (this.stock.all[shape] as Shape).rows <= from) continue;
        this.near.push({ clear: this.stock.clear(shape, number), x, row });
      }
    }
  }

  /** The least x at a row that nothing is in the way of. */
  private clearAt(row: number, most: number): number | null {
    const { near } = this;
    let x = this.stock.left;
    for (let calm = 0, at = 0; calm < near.length; at = at + 1 < near.length ? at + 1 : 0) {
      const { clear, x: origin, row: start } = near[at] as (typeof near)[number];
      const { starts, from, to } = clear;
      const step = row - start + clear.before;
      calm += 1;
      if (step < 0 || step >= starts.length - 1) continue;
      for (let each = starts[step] as number; each < (starts[step + 1] as number); each += 1) {
        const end = (to[each] as number) + origin;
        if ((from[each] as number) + origin >= x || x >= end) continue;
        x = end;
        if (x > most) return null;
        // All are asked anew, this one's other intervals too.
        calm = 1;
        each = (starts[step] as number) - 1;
      }
    }
    return x <= most ? x : null;
  }
}
