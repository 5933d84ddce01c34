import { sum } from '../units';
import { type Layout, layoutOf } from './layout';
import { Overlap, type Spot, type Stretch } from './overlap';
import { Settling } from './settle';
import type { Shape } from './shape';
import type { Stock } from './stock';

/**
 * By which share the film is made shorter: at first and at most so much of what one copy takes on average, or of the film; by how much
 * more after it went well, and less after it was too much; at least so much of the first.
 */
const SHARES = { copy: 0.4, film: 0.01, more: 1.3, less: 0.5, least: 1 / 64 };
/** Rounds with hardly less overlap, after which copies go back to where they overlapped least. */
const PATIENCE = 50;
/**
 * How often they do before a try is given up; and tries, each from where copies overlapped least in an earlier one with some of them swapped, after
 * which a film is held to be too short. Once for so many copies, since among many a swap scatters more than it mends, and film lost
 * elsewhere is soon tried; at most so often.
 */
const RETURNS = { copies: 300, most: 3 };
const TRIES = { copies: 200, most: 3 };
const SWAPS = 1;
/** A round has less overlap than before if it has at most so much of it. */
const LESS = 0.98;

const oftenFor = ({ copies, most }: typeof TRIES, laid: number): number =>
  Math.max(1, Math.min(most, Math.round(copies / laid)));

/** Where copies lay, and how much they overlapped there. */
interface Tried {
  readonly total: number;
  readonly spots: readonly Spot[];
}

/** Rows between two bins, counted through all of them: so many that copies of one never meet those of another. */
const apart = ({ all }: Stock): number => Math.max(...all.map(({ rows }) => rows)) + 1;

/**
 * Makes a layout shorter: takes some film away, lets the copies that no longer fit overlap, and moves them one by one to where they
 * overlap least, pairs that stay in each other's way weighing more and more, until none overlap (guided local search; J. Egeblad,
 * B. K. Nielsen and A. Odgaard, Fast neighborhood search for two- and three-dimensional nesting problems, European Journal of Operational
 * Research 183(3), 1249-1266, 2007). A film that proves too short is given up for one that is less so.
 */
export class Squeeze {
  readonly stock: Stock;
  readonly random: () => number;
  /** The shortest layout so far. */
  private kept: Layout;
  private readonly mostReturns: number;
  private readonly tries: number;
  private readonly most: number;
  private readonly smallest: number;
  private share: number;
  stretches: readonly Stretch[] = [];
  private overlap: Overlap;
  private waiting: number[] = [];
  private settling: Settling;
  /** Where copies overlapped least in this try, and in those before it on the same film, the best first. */
  private least: Tried | null = null;
  private tried: Tried[] = [];
  private mark = Number.POSITIVE_INFINITY;
  private calm = 0;
  private returns = 0;
  private spent = false;

  constructor(stock: Stock, layout: Layout, random: () => number) {
    this.stock = stock;
    this.random = random;
    this.kept = layout;
    const copies = layout.bins.reduce((all, laid) => all + laid.length, 0);
    this.mostReturns = oftenFor(RETURNS, copies);
    this.tries = oftenFor(TRIES, copies);
    this.most = Math.min(SHARES.film, SHARES.copy / copies);
    this.smallest = this.most * SHARES.least;
    this.share = this.most;
    this.overlap = this.laying(this.shorten());
    this.settling = new Settling(this.overlap, this);
  }

  /** Whether even the least film was too much to take away. */
  get isSpent(): boolean {
    return this.spent || this.stretches.length === 0;
  }

  /** Moves one copy. @returns a shorter layout, where this has come to be one */
  step(): Layout | null {
    if (this.isSpent) return null;
    const copy = this.next();
    if (copy === null) return this.end();
    if (this.overlap.costOf(copy) > 0) this.settling.settle(copy);
    return null;
  }

  /** The next copy that overlaps; `null` if the round was the last. */
  private next(): number | null {
    const found = this.waiting.pop();
    if (found !== undefined) return found;
    const { overlap } = this;
    const total = overlap.total();
    if (total === 0 || !this.goesOn(total)) return null;
    overlap.weigh();
    for (const copy of overlap.overlapping()) {
      const at = Math.floor(this.random() * (this.waiting.length + 1));
      this.waiting.push(this.waiting[at] ?? copy);
      this.waiting[at] = copy;
    }
    return this.waiting.pop() ?? null;
  }

  /** Remembers where copies overlap least, and brings them back there when they have not for long. @returns whether that is of any use */
  private goesOn(total: number): boolean {
    if (!this.least || total < this.least.total) {
      this.least = { total, spots: this.overlap.spots() };
      if (total <= LESS * this.mark) {
        this.mark = total;
        this.calm = 0;
      }
    }
    this.calm += 1;
    if (this.calm <= PATIENCE) return true;
    this.returns += 1;
    if (this.returns > this.mostReturns) return false;
    this.calm = 0;
    this.overlap.place(this.least.spots);
    return true;
  }

  /** Keeps what no longer overlaps; tries the film once more, or gives it up; begins anew with a shorter one. */
  private end(): Layout | null {
    const isDone = this.overlap.total() === 0;
    if (isDone) this.kept = this.layout();
    else if (this.least) {
      this.tried.push(this.least);
      this.tried.sort((a, b) => a.total - b.total);
      if (this.tried.length < this.tries) {
        // Those with less overlap are drawn more often.
        const drawn = Math.floor(this.random() ** 2 * this.tried.length);
        this.begin(this.swapped((this.tried[drawn] as Tried).spots));
        return null;
      }
    }
    this.spent = !isDone && this.share === this.smallest;
    this.share = isDone
      ? Math.min(this.most, this.share * SHARES.more)
      : Math.max(this.smallest, this.share * SHARES.less);
    this.tried = [];
    this.begin(this.shorten());
    return isDone ? this.kept : null;
  }

  /** Copies where they may overlap, around what stays where it is. */
  private laying(spots: readonly Spot[]): Overlap {
    const still = this.stretches.flatMap(({ from }, bin) =>
      (this.stock.still[bin] ?? []).map((laid) => ({ ...laid, row: laid.row + from })),
    );
    return new Overlap(this.stock, spots, still);
  }

  private begin(spots: readonly Spot[]): void {
    this.overlap = this.laying(spots);
    this.settling = new Settling(this.overlap, this);
    this.waiting = [];
    this.least = null;
    this.mark = Number.POSITIVE_INFINITY;
    this.calm = 0;
    this.returns = 0;
  }

  /** The same places with some of the larger copies swapped, as far as each fits where the other was. */
  private swapped(spots: readonly Spot[]): Spot[] {
    const { all, left, right, height } = this.stock;
    const next = [...spots];
    const larger = [...spots.keys()]
      .sort((a, b) => (all[spots[b]?.shape ?? 0] as Shape).area - (all[spots[a]?.shape ?? 0] as Shape).area)
      .slice(0, Math.ceil(spots.length / 2));
    const draw = () => larger[Math.floor(this.random() * larger.length)] as number;
    for (let swap = 0; swap < SWAPS; swap += 1) {
      const [one, other] = [draw(), draw()];
      const [a, b] = [next[one] as Spot, next[other] as Spot];
      const at = ({ shape }: Spot, { x, row }: Spot): Spot => {
        const { width, length } = all[shape] as Shape;
        const stretch = this.stretches.findLast(({ from }) => from <= row) as Stretch;
        const most = Math.max(0, Math.floor((stretch.reach - length) / height));
        return {
          shape,
          x: Math.max(left, Math.min(x, right - width)),
          row: Math.min(row, stretch.from + most),
        };
      };
      if (!this.fits(a, b) || !this.fits(b, a)) continue;
      next[one] = at(a, b);
      next[other] = at(b, a);
    }
    return next;
  }

  /** Whether a copy is short enough for the stretch that another lies in. */
  private fits({ shape }: Spot, { row }: Spot): boolean {
    const stretch = this.stretches.findLast(({ from }) => from <= row) as Stretch;
    return (this.stock.all[shape] as Shape).length <= stretch.reach;
  }

  /** The copies as they lie, bin by bin. */
  private layout(): Layout {
    const spots = this.overlap.spots();
    const laid = this.stretches.map(({ from }, at) => {
      const to = this.stretches[at + 1]?.from ?? Number.POSITIVE_INFINITY;
      return spots
        .filter(({ row }) => row >= from && row < to)
        .map((spot) => ({ ...spot, row: spot.row - from }));
    });
    return layoutOf(this.stock, laid);
  }

  /** Takes film away from the kept layout, less of it where a copy would no longer fit at all; nothing where that is so with the least. */
  private shorten(): Spot[] {
    for (;;) {
      const film = this.stretched(this.shorter());
      const spots = this.spread(film);
      this.stretches = spots ? film.filter((each) => each !== null) : [];
      if (spots || this.share === this.smallest) return spots ?? [];
      this.share = Math.max(this.smallest, this.share * SHARES.less);
    }
  }

  /** How far copies may reach in each bin of a film that is shorter by the share, 0 where it is lost; none where nothing may be taken away. */
  private shorter(): readonly number[] {
    const { stock, kept, random } = this;
    const { bins: film, still, reached, growth } = stock;
    const last = kept.bins.length - 1;
    // A sheet that something stays on is not lost.
    if (film.kind === 'sheet')
      return last < still.length ? [] : kept.bins.map((_, bin) => (bin < last ? film.other : 0));
    // Any span loses it, and may give some more to another, so that copies find other company.
    const reach = [...kept.reach];
    const taken = Math.ceil(this.share * sum(reach));
    const [from, to] = [Math.floor(random() * reach.length), Math.floor(random() * reach.length)];
    const [long, other] = [reach[from] as number, reach[to] as number];
    const more = Math.min((to === 0 ? film.first : film.other) - other, long - taken);
    const given = from === to ? 0 : random() ** 2 * Math.max(0, more);
    // Film is not made shorter than what stays on it, nor is all of it lost.
    const least = from < still.length ? reached - 2 * growth : 0;
    if (Math.max(0, long - taken - given) < least || (reach.length === 1 && long <= taken)) return [];
    reach[to] = other + given;
    reach[from] = Math.max(0, long - taken - given);
    return reach;
  }

  /** Bins in which copies may lie, one behind another. @param reach of each, 0 where there is none */
  private stretched(reach: readonly number[]): (Stretch | null)[] {
    let from = 0;
    return reach.map((each) => {
      if (each === 0) return null;
      const own = { from, reach: each + 2 * this.stock.growth };
      from += Math.ceil(own.reach / this.stock.height) + apart(this.stock);
      return own;
    });
  }

  /** The kept copies on another film, bin by bin, those without a place there anywhere on it; `null` if one is too long for all of it. */
  private spread(film: readonly (Stretch | null)[]): Spot[] | null {
    const { stock, random } = this;
    const { all, height, left, right } = stock;
    const below = (bound: number) => Math.floor(random() * bound);
    const spots: Spot[] = [];
    for (const [bin, laid] of this.kept.bins.entries()) {
      const own = film[bin];
      for (const { shape, x, row } of laid) {
        const { length, width } = all[shape] as Shape;
        if (own && length <= own.reach) {
          const most = Math.floor((own.reach - length) / height);
          spots.push({ shape, x, row: own.from + Math.min(row, most) });
          continue;
        }
        const wide = film.filter((each) => each !== null && length <= each.reach);
        const drawn = wide[below(wide.length)];
        if (!drawn) return null;
        const rooms = Math.floor((drawn.reach - length) / height) + 1;
        spots.push({
          shape,
          x: left + below(right - width - left + 1),
          row: drawn.from + below(rooms),
        });
      }
    }
    return spots;
  }
}
