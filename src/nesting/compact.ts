import { sum } from '../units';
import type { Laid } from './laid';
import { type Layout, NO_ROOM } from './layout';
import type { Shape } from './shape';
import { type Axis, leastBehind } from './sides';
import { ROWS, type Stock } from './stock';

/** Where a copy lies in a bin: the corner of its grown box, in micrometres both ways. */
interface Lying {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
}

/** A layout whose copies lie anywhere, and not in rows. */
export interface Tight {
  readonly bins: readonly (readonly Lying[])[];
  /** Of each bin how far its copies reach, micrometres. */
  readonly reach: readonly number[];
  /** As that of a layout; of a roll its length alone, and what copies without room count for. */
  readonly cost: number;
}

/** How far a copy goes at once, micrometres: what is further away than that is in nobody's way. */
const FAR = 40_000;
/** How often copies go back along the film; in between they go across it, one way and the other. */
const ROUNDS = 4;

/** One bin, whose copies are pushed. */
class Bin {
  private readonly stock: Stock;
  private readonly shape: Int32Array;
  private readonly place: Readonly<Record<Axis, Float64Array>>;
  private readonly size: Readonly<Record<Axis, Float64Array>>;
  /** So many may move; what stays where it is comes behind them. */
  private readonly moving: number;
  private readonly longest: number;

  constructor(stock: Stock, moving: readonly Laid[], still: readonly Laid[]) {
    const all = [...moving, ...still];
    const shapes = all.map(({ shape }) => stock.all[shape] as Shape);
    this.stock = stock;
    this.moving = moving.length;
    this.shape = Int32Array.from(all, ({ shape }) => shape);
    this.place = {
      across: Float64Array.from(all, ({ x }) => x),
      along: Float64Array.from(all, ({ row }) => row * stock.height),
    };
    this.size = {
      across: Float64Array.from(shapes, ({ width }) => width),
      along: Float64Array.from(shapes, ({ length }) => length),
    };
    this.longest = Math.max(0, ...this.size.along);
  }

  /** By how much one copy keeps behind another on an axis, at the least; -Infinity where the other is not before it. */
  private least(axis: Axis, before: number, behind: number, apart: number, beside: number): number {
    const { stock, shape, size } = this;
    const [one, other] = [shape[before] as number, shape[behind] as number];
    if (stock.all[one]?.piece === ROWS || stock.all[other]?.piece === ROWS) {
      // Boxes keep out of rows where nothing may be printed.
      const whole = size[axis][before] as number;
      return apart < whole ? Number.NEGATIVE_INFINITY : whole;
    }
    return leastBehind(stock.sides(one)[axis].behind, stock.sides(other)[axis].before, beside, apart);
  }

  /** Tells of the pairs that lie near each other on an axis, and by how much the one behind keeps behind the other at the least. */
  private eachPair(axis: Axis, tell: (before: number, behind: number, least: number) => void): void {
    const { moving, place, size, longest } = this;
    const other = axis === 'along' ? 'across' : 'along';
    const [at, long, side, wide] = [place[axis], size[axis], place[other], size[other]];
    const order = Int32Array.from(at.keys()).sort(
      (a, b) => (place.along[a] as number) - (place.along[b] as number),
    );
    const reach = longest + (axis === 'along' ? FAR : 0);
    for (let first = 0; first < order.length; first += 1) {
      const a = order[first] as number;
      const from = side[a] as number;
      const to = from + (wide[a] as number);
      for (let next = first + 1; next < order.length; next += 1) {
        const b = order[next] as number;
        if ((place.along[b] as number) > (place.along[a] as number) + reach) break;
        const begins = side[b] as number;
        if (begins >= to || begins + (wide[b] as number) <= from || (a >= moving && b >= moving)) continue;
        for (let way = 0; way < 2; way += 1) {
          const before = way === 0 ? a : b;
          const behind = way === 0 ? b : a;
          const apart = (at[behind] as number) - (at[before] as number);
          if (apart > (long[before] as number) + FAR || apart + (long[behind] as number) < 0) continue;
          const beside = (side[behind] as number) - (side[before] as number);
          const least = this.least(axis, before, behind, apart, beside);
          if (least > Number.NEGATIVE_INFINITY) tell(before, behind, Math.min(apart, Math.ceil(least)));
        }
      }
    }
  }

  /**
   * Moves copies as far one way as others let them, the foremost first.
   * @param way -1 for back to where the axis begins
   * @param end of the axis, that their boxes keep within
   */
  push(axis: Axis, way: 1 | -1, end: number): void {
    const [at, long] = [this.place[axis], this.size[axis]];
    const stops: number[][] = Array.from(at, () => []);
    this.eachPair(axis, (before, behind, least) => {
      if (way < 0) stops[behind]?.push(before, least);
      else stops[before]?.push(behind, least);
    });
    const order = Array.from({ length: this.moving }, (_, copy) => copy).sort(
      (a, b) => way * ((at[b] as number) - (at[a] as number)),
    );
    for (const copy of order) {
      const own = at[copy] as number;
      let by = way < 0 ? own - end : end - (long[copy] as number) - own;
      by = Math.min(by, FAR);
      const near = stops[copy] as number[];
      for (let each = 0; each < near.length; each += 2) {
        by = Math.min(by, way * ((at[near[each] as number] as number) - own) - (near[each + 1] as number));
      }
      if (by > 0) at[copy] = own + way * by;
    }
  }

  lying(): Lying[] {
    const { shape, place } = this;
    return Array.from({ length: this.moving }, (_, copy) => ({
      shape: shape[copy] as number,
      x: place.across[copy] as number,
      y: place.along[copy] as number,
    }));
  }

  reach(): number {
    const ends = Array.from(
      { length: this.moving },
      (_, copy) => (this.place.along[copy] as number) + (this.size.along[copy] as number),
    );
    return Math.max(0, ...ends);
  }
}

/**
 * Makes a layout tighter: its copies go back along the film as far as those before let them, from wherever they lie in their rows, then to one
 * side or the other, and back again (compaction by what near pairs allow, Z. Li and V. Milenkovic, Compaction and separation algorithms for non-convex
 * polygons and their applications, European Journal of Operational Research 84(3), 539-561, 1995, from memory; an axis at a time, so that each copy needs
 * to look at those before it only). No copy leaves its bin, and none lies further along than it did.
 * @param rounds how often copies go back along the film; of once they are pushed together soon
 */
export function compacted(stock: Stock, layout: Layout, rounds = ROUNDS): Tight {
  const { growth, left, right, still } = stock;
  const bins = layout.bins.map((laid, at) => new Bin(stock, laid, still[at] ?? []));
  for (const bin of bins) {
    bin.push('along', -1, 0);
    for (let round = 1; round < rounds; round += 1) {
      if (round % 2 === 1) bin.push('across', -1, left);
      else bin.push('across', 1, right);
      bin.push('along', -1, 0);
    }
  }
  const reach = bins.map((bin, at) => Math.max(bin.reach(), at === 0 ? stock.reached : 0) - 2 * growth);
  const length = sum(reach) + stock.bins.between * (bins.length - 1);
  return {
    bins: bins.map((bin) => bin.lying()),
    reach,
    cost: stock.bins.kind === 'sheet' ? layout.cost : layout.left * NO_ROOM + length,
  };
}
