import type { Shape } from './shape';
import type { Stock } from './stock';

/** What a pair weighs more for overlapping as little as can be, and its share where it does not overlap. */
const LEAST_MORE = 0.2;
const LESS = 0.95;

/** Where a copy lies, or may come to lie: its shape, how far across, and its row, counted through all bins. */
export interface Spot {
  readonly shape: number;
  readonly x: number;
  readonly row: number;
}

/** Rows of a bin, from its first up to where grown boxes may reach. */
export interface Stretch {
  readonly from: number;
  /** How far grown boxes may reach behind `from`, micrometres. */
  readonly reach: number;
}

/**
 * Copies on film, some of them over each other. How far two are in each other is told by how far one must go across to clear the other in
 * the rows they lie in, or along to clear it altogether, weighed by the pair (after the directional depth of S. Umetani et al., Solving the irregular strip packing problem via
 * guided local search for overlap minimization, International Transactions in Operational Research 16(6), 661-683, 2009).
 */
export class Overlap {
  readonly shape: Int32Array;
  readonly x: Int32Array;
  readonly row: Int32Array;
  /** By pair, in both orders, micrometres; 0 for those that do not overlap. */
  private readonly depth: Float64Array;
  private readonly weight: Float64Array;
  private readonly stock: Stock;
  /** Copies in the order of their rows. */
  private readonly order: Int32Array;
  /** Rows of each shape, and of the tallest. */
  private readonly tall: Int32Array;
  private readonly tallest: number;
  /** What may be in a copy's way in a row: where it may not lie, and what that weighs. */
  private near = {
    from: new Float64Array(64),
    to: new Float64Array(64),
    along: new Float64Array(64),
    weight: new Float64Array(64),
  };
  /** Copies that may be moved; what stays where it is comes behind them. */
  readonly length: number;
  /** All of them. */
  readonly count: number;

  /** @param still what stays where it is, its rows counted through all bins */
  constructor(stock: Stock, spots: readonly Spot[], still: readonly Spot[]) {
    const all = [...spots, ...still];
    this.stock = stock;
    this.length = spots.length;
    this.count = all.length;
    this.shape = Int32Array.from(all, ({ shape }) => shape);
    this.x = Int32Array.from(all, ({ x }) => x);
    this.row = Int32Array.from(all, ({ row }) => row);
    this.depth = new Float64Array(this.count ** 2);
    this.weight = new Float64Array(this.count ** 2).fill(1);
    this.order = Int32Array.from(all.keys()).sort(
      (a, b) => (this.row[a] as number) - (this.row[b] as number),
    );
    this.tall = Int32Array.from(stock.all, ({ rows }) => rows);
    this.tallest = Math.max(...this.tall);
    for (let copy = 0; copy < this.length; copy += 1) this.measure(copy);
  }

  /** How deep two copies are in each other. */
  private between(a: number, b: number): number {
    const clear = this.stock.clear(this.shape[a] as number, this.shape[b] as number);
    const step = (this.row[b] as number) - (this.row[a] as number) + clear.before;
    if (step < 0 || step >= clear.starts.length - 1) return 0;
    const across = (this.x[b] as number) - (this.x[a] as number);
    const along = Math.min(step + 1, clear.starts.length - 1 - step) * this.stock.height;
    let deepest = 0;
    for (let at = clear.starts[step] as number; at < (clear.starts[step + 1] as number); at += 1) {
      const from = clear.from[at] as number;
      const to = clear.to[at] as number;
      if (from < across && across < to)
        deepest = Math.max(deepest, Math.min(across - from, to - across, along));
    }
    return deepest;
  }

  /** Measures a copy that has moved against all others. */
  private measure(copy: number): void {
    for (let other = 0; other < this.count; other += 1) {
      if (other === copy) continue;
      const depth = this.between(other, copy);
      this.depth[copy * this.count + other] = depth;
      this.depth[other * this.count + copy] = depth;
    }
  }

  /** The weighed depths of a copy. */
  costOf(copy: number): number {
    let sum = 0;
    for (let at = copy * this.count; at < (copy + 1) * this.count; at += 1) {
      sum += (this.weight[at] as number) * (this.depth[at] as number);
    }
    return sum;
  }

  /** The depths of all pairs, not weighed. */
  total(): number {
    let sum = 0;
    for (const depth of this.depth) sum += depth;
    return sum / 2;
  }

  /** Makes the pairs that overlap weigh more, the deepest most; the others a little less, as what once was in the way may not be any more. */
  weigh(): void {
    const deepest = this.depth.reduce((most, depth) => Math.max(most, depth), 0);
    if (deepest === 0) return;
    for (let at = 0; at < this.depth.length; at += 1) {
      const depth = this.depth[at] as number;
      const weight = this.weight[at] as number;
      this.weight[at] =
        depth > 0 ? weight + LEAST_MORE + (1 - LEAST_MORE) * (depth / deepest) : Math.max(1, weight * LESS);
    }
  }

  move(copy: number, { shape, x, row }: Spot): void {
    this.shape[copy] = shape;
    this.x[copy] = x;
    this.row[copy] = row;
    this.reorder(copy);
    this.measure(copy);
  }

  /** Brings a copy that has moved to its place in the order. */
  private reorder(copy: number): void {
    const { order, row } = this;
    const own = row[copy] as number;
    let at = order.indexOf(copy);
    for (; at > 0 && (row[order[at - 1] as number] as number) > own; at -= 1)
      order[at] = order[at - 1] as number;
    for (; at + 1 < order.length && (row[order[at + 1] as number] as number) < own; at += 1)
      order[at] = order[at + 1] as number;
    order[at] = copy;
  }

  /** Where in the order the copies begin that start in a row or behind it. */
  private firstFrom(start: number): number {
    let low = 0;
    let high = this.count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.row[this.order[middle] as number] as number) < start) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Collects what is in a copy's way as a shape in a row. @returns how much there is */
  private gather(copy: number, shape: number, row: number): number {
    const { stock, order, tall, row: begins } = this;
    const end = row + (tall[shape] as number);
    let near = this.near;
    let count = 0;
    for (let at = this.firstFrom(row - this.tallest + 1); at < this.count; at += 1) {
      const other = order[at] as number;
      const start = begins[other] as number;
      if (start >= end) break;
      const own = this.shape[other] as number;
      if (start + (tall[own] as number) <= row || other === copy) continue;
      const { starts, from, to, before } = stock.clear(own, shape);
      const step = row - start + before;
      const along = Math.min(step + 1, starts.length - 1 - step) * stock.height;
      const origin = this.x[other] as number;
      const weight = this.weight[copy * this.count + other] as number;
      const last = starts[step + 1] as number;
      for (let each = starts[step] as number; each < last; each += 1) {
        if (count === near.from.length) near = this.widen();
        near.from[count] = (from[each] as number) + origin;
        near.to[count] = (to[each] as number) + origin;
        near.along[count] = along;
        near.weight[count] = weight;
        count += 1;
      }
    }
    return count;
  }

  private widen(): typeof this.near {
    const twice = (values: Float64Array): Float64Array<ArrayBuffer> => {
      const wider = new Float64Array(2 * values.length);
      wider.set(values);
      return wider;
    };
    const { from, to, along, weight } = this.near;
    this.near = { from: twice(from), to: twice(to), along: twice(along), weight: twice(weight) };
    return this.near;
  }

  spots(): Spot[] {
    return Array.from({ length: this.length }, (_, copy) => ({
      shape: this.shape[copy] as number,
      x: this.x[copy] as number,
      row: this.row[copy] as number,
    }));
  }

  /**
   * The best place across for a copy as a shape in a row, if it costs less than a limit: where the depths are least, which is at an end of
   * the film or of where it may not lie for another.
   */
  acrossIn(copy: number, shape: number, row: number, limit: number): { x: number; cost: number } | null {
    const { left, right, all } = this.stock;
    const most = right - (all[shape] as Shape).width;
    const count = this.gather(copy, shape, row);
    const { from, to } = this.near;
    let [x, cost] = [left, this.costAt(left, count, limit)];
    const better = (at: number): void => {
      if (at < left || at > most) return;
      const own = this.costAt(at, count, cost);
      if (own >= cost) return;
      x = at;
      cost = own;
    };
    better(most);
    for (let at = 0; at < count && cost > 0; at += 1) {
      better(to[at] as number);
      better(from[at] as number);
    }
    return cost < limit ? { x, cost } : null;
  }

  /** What it costs to lie at a place across, of what was gathered; no more than a limit is told. */
  private costAt(x: number, count: number, limit: number): number {
    const { from, to, along, weight } = this.near;
    let cost = 0;
    for (let at = 0; at < count; at += 1) {
      const before = x - (from[at] as number);
      if (before <= 0) continue;
      const behind = (to[at] as number) - x;
      if (behind <= 0) continue;
      cost += (weight[at] as number) * Math.min(before, behind, along[at] as number);
      if (cost >= limit) return limit;
    }
    return cost;
  }
}
