import type { Shape } from './shape';
import type { Stock } from './stock';

/** How many times as much a pair weighs for overlapping, as little as can be and most of all; where it does not overlap; and at most. */
const MORE = { least: 1.2, deepest: 2 };
const LESS = 0.95;
const MOST = 1e60;

/** What an overlap counts by the size of a shape: more for large ones, which are harder to find room for. */
const sizeOf = ({ area, width, length }: Shape): number => Math.max(area, 0.1 * width * length, 1) ** 0.25;

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
 * the rows they lie in, or along to clear it altogether (after the directional depth of S. Umetani et al., Solving the irregular strip packing
 * problem via guided local search for overlap minimization, International Transactions in Operational Research 16(6), 661-683, 2009), times
 * the sizes of both, and weighed by the pair.
 */
export class Overlap {
  readonly shape: Int32Array;
  readonly x: Int32Array;
  readonly row: Int32Array;
  /** By pair, in both orders, times their sizes; 0 for those that do not overlap. */
  private readonly depth: Float64Array;
  private readonly weight: Float64Array;
  /** Pairs that overlap, or weigh more than others; the first copy of each the one with the higher number. */
  private pairs: number[] = [];
  private readonly isListed: Uint8Array;
  private readonly stock: Stock;
  /** By shape. */
  private readonly size: Float64Array;
  /** Copies in the order of their rows. */
  private readonly order: Int32Array;
  /** How wide each shape is, how many rows it has, and how many the tallest. */
  private readonly wide: Int32Array;
  private readonly tall: Int32Array;
  private readonly tallest: number;
  /** What may be in a copy's way in a row: where it may not lie, and what that weighs. */
  private near = {
    from: new Float64Array(64),
    to: new Float64Array(64),
    along: new Float64Array(64),
    weight: new Float64Array(64),
  };
  private lists: readonly Float64Array[] = Object.values(this.near);
  private ends = new Float64Array(128);
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
    this.isListed = new Uint8Array(this.count ** 2);
    this.order = Int32Array.from(all.keys()).sort(
      (a, b) => (this.row[a] as number) - (this.row[b] as number),
    );
    this.wide = Int32Array.from(stock.all, ({ width }) => width);
    this.tall = Int32Array.from(stock.all, ({ rows }) => rows);
    this.tallest = Math.max(...this.tall);
    this.size = Float64Array.from(stock.all, sizeOf);
    for (let copy = 0; copy < this.length; copy += 1) this.measure(copy);
  }

  /** How deep two copies are in each other, times their sizes. */
  private between(a: number, b: number): number {
    const [still, moving] = [this.shape[a] as number, this.shape[b] as number];
    const apart = (this.row[b] as number) - (this.row[a] as number);
    if (apart >= (this.tall[still] as number) || -apart >= (this.tall[moving] as number)) return 0;
    const across = (this.x[b] as number) - (this.x[a] as number);
    if (across >= (this.wide[still] as number) || -across >= (this.wide[moving] as number)) return 0;
    const clear = this.stock.clear(still, moving);
    const step = apart + clear.before;
    const along = Math.min(step + 1, clear.starts.length - 1 - step) * this.stock.height;
    let deepest = 0;
    for (let at = clear.starts[step] as number; at < (clear.starts[step + 1] as number); at += 1) {
      const from = clear.from[at] as number;
      const to = clear.to[at] as number;
      if (from < across && across < to)
        deepest = Math.max(deepest, Math.min(across - from, to - across, along));
    }
    return deepest * (this.size[still] as number) * (this.size[moving] as number);
  }

  /** Measures a copy that has moved against all others. */
  private measure(copy: number): void {
    for (let other = 0; other < this.count; other += 1) {
      if (other === copy) continue;
      const depth = this.between(other, copy);
      this.depth[copy * this.count + other] = depth;
      this.depth[other * this.count + copy] = depth;
      if (depth > 0) this.list(Math.max(copy, other) * this.count + Math.min(copy, other));
    }
  }

  private list(pair: number): void {
    if (this.isListed[pair] === 1) return;
    this.isListed[pair] = 1;
    this.pairs.push(pair);
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
    for (const pair of this.pairs) sum += this.depth[pair] as number;
    return sum;
  }

  /** The copies that overlap others and may be moved, by their numbers. */
  overlapping(): number[] {
    const isOver = new Uint8Array(this.count);
    for (const pair of this.pairs) {
      if (this.depth[pair] === 0) continue;
      isOver[pair % this.count] = 1;
      isOver[Math.floor(pair / this.count)] = 1;
    }
    return Array.from({ length: this.length }, (_, copy) => copy).filter((copy) => isOver[copy] === 1);
  }

  /**
   * Makes the pairs that overlap weigh times as much, the deepest most; the others a little less, as what once was in the way may not be any
   * more.
   */
  weigh(): void {
    const { count, depth, weight } = this;
    let deepest = 0;
    for (const pair of this.pairs) deepest = Math.max(deepest, depth[pair] as number);
    this.pairs = this.pairs.filter((pair) => {
      const own = depth[pair] as number;
      const times = own > 0 ? MORE.least + (MORE.deepest - MORE.least) * (own / deepest) : LESS;
      const next = Math.min(MOST, Math.max(1, (weight[pair] as number) * times));
      weight[pair] = next;
      weight[(pair % count) * count + Math.floor(pair / count)] = next;
      const stays = own > 0 || next > 1;
      if (!stays) this.isListed[pair] = 0;
      return stays;
    });
  }

  /** Brings all copies back to where they lay; what pairs weigh stays. */
  place(spots: readonly Spot[]): void {
    for (const [copy, { shape, x, row }] of spots.entries()) {
      this.shape[copy] = shape;
      this.x[copy] = x;
      this.row[copy] = row;
    }
    this.order.sort((a, b) => (this.row[a] as number) - (this.row[b] as number));
    for (let copy = 0; copy < this.length; copy += 1) this.measure(copy);
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
    const { stock, order, tall, size, row: begins } = this;
    const end = row + (tall[shape] as number);
    const large = size[shape] as number;
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
      const last = starts[step + 1] as number;
      const origin = this.x[other] as number;
      for (let each = starts[step] as number; each < last; each += 1) {
        if (count === near.from.length) near = this.widen();
        near.from[count] = (from[each] as number) + origin;
        near.to[count] = (to[each] as number) + origin;
        near.along[count] = Math.min(step + 1, starts.length - 1 - step) * stock.height;
        near.weight[count] =
          (this.weight[copy * this.count + other] as number) * large * (size[own] as number);
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
    this.lists = Object.values(this.near);
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
   * Looks for the best place across for a copy as a shape in a row, if it costs less than a limit: where the depths are
   * least, which is at an end of the film or of where it may not lie for another.
   * @returns what it costs there, and where in {@link found}; the limit where none costs less
   */
  acrossIn(copy: number, shape: number, row: number, limit: number): number {
    const { left, right, all } = this.stock;
    const most = right - (all[shape] as Shape).width;
    const count = this.gather(copy, shape, row);
    const ends = this.endsOf(count);
    let cost = this.costAt(left, count, limit);
    if (cost < limit) this.found = left;
    for (let at = -1; at < 2 * count && cost > 0; at += 1) {
      const x = at < 0 ? most : (ends[at] as number);
      if (x < left || x > most) continue;
      const own = this.costAt(x, count, cost);
      if (own >= cost) continue;
      this.found = x;
      cost = own;
    }
    return cost;
  }

  /** Both ends of all that was gathered, which changes its order while places are looked at. */
  private endsOf(count: number): Float64Array {
    const { from, to } = this.near;
    if (this.ends.length < 2 * count) this.ends = new Float64Array(2 * from.length);
    const { ends } = this;
    for (let at = 0; at < count; at += 1) {
      ends[2 * at] = to[at] as number;
      ends[2 * at + 1] = from[at] as number;
    }
    return ends;
  }

  /** Where the last place across was that was looked for. */
  found = 0;

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
      if (cost < limit) continue;
      this.sooner(at);
      return limit;
    }
    return cost;
  }

  /** What made a place too dear is looked at sooner from then on: most other places are so too by what lies there. */
  private sooner(at: number): void {
    const to = at >> 1;
    for (const values of this.lists) {
      const own = values[at] as number;
      values[at] = values[to] as number;
      values[to] = own;
    }
  }
}
