import { type Layout, layoutOf } from './layout';
import { Overlap, type Spot, type Stretch } from './overlap';
import { settle } from './settle';
import type { Shape } from './shape';
import type { Stock } from './stock';

/** By which share the film is made shorter: at first and at most, by how much more after it went well and less after it was too much, at least. */
const SHARES = { first: 0.01, more: 1.3, less: 0.5, least: 0.001 };
/** Rounds without less overlap after which a try is given up. */
const PATIENCE = 30;
/** Tries, each from where copies overlapped least with some of them swapped, after which a film is held to be too short. */
const TRIES = 2;
const SWAPS = 1;
/** A round has less overlap than before if it has at most so much of it. */
const LESS = 0.98;

/** Rows between two bins, counted through all of them: so many that copies of one never meet those of another. */
const apart = ({ all }: Stock): number => Math.max(...all.map(({ rows }) => rows)) + 1;

/**
 * Makes a layout shorter: takes some film away, lets the copies that no longer fit overlap, and moves them one by one to where they
 * overlap least, pairs that stay in each other's way weighing more and more, until none overlap (guided local search; J. Egeblad,
 * B. K. Nielsen and A. Odgaard, Fast neighborhood search for two- and three-dimensional nesting problems, European Journal of Operational
 * Research 183(3), 1249-1266, 2007). A film that proves too short is given up for one that is less so.
 */
export class Squeeze {
  private readonly stock: Stock;
  private readonly random: () => number;
  /** The shortest layout so far. */
  private kept: Layout;
  private share = SHARES.first;
  private stretches: readonly Stretch[] = [];
  private overlap: Overlap;
  private waiting: number[] = [];
  private least: { readonly total: number; readonly spots: readonly Spot[] } | null = null;
  private calm = 0;
  private tries = 0;
  private spent = false;

  constructor(stock: Stock, layout: Layout, random: () => number) {
    this.stock = stock;
    this.random = random;
    this.kept = layout;
    this.overlap = this.laying(this.shorten());
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
    if (this.overlap.costOf(copy) > 0)
      settle(this.overlap, copy, { stock: this.stock, stretches: this.stretches, random: this.random });
    return null;
  }

  /** The next copy that overlaps; `null` if the round was the last. */
  private next(): number | null {
    const found = this.waiting.pop();
    if (found !== undefined) return found;
    const { overlap } = this;
    const total = overlap.total();
    if (total === 0) return null;
    if (!this.least || total <= LESS * this.least.total) {
      this.least = { total, spots: overlap.spots() };
      this.calm = 0;
    } else if (++this.calm > PATIENCE) return null;
    overlap.weigh();
    for (let copy = 0; copy < overlap.length; copy += 1) {
      if (overlap.costOf(copy) === 0) continue;
      const at = Math.floor(this.random() * (this.waiting.length + 1));
      this.waiting.push(this.waiting[at] ?? copy);
      this.waiting[at] = copy;
    }
    return this.waiting.pop() ?? null;
  }

  /** Keeps what no longer overlaps; tries the film once more, or gives it up; begins anew with a shorter one. */
  private end(): Layout | null {
    const isDone = this.overlap.total() === 0;
    if (isDone) this.kept = this.layout();
    else if (this.least && ++this.tries < TRIES) {
      this.begin(this.swapped(this.least.spots));
      return null;
    }
    this.spent = !isDone && this.share === SHARES.least;
    this.share = isDone
      ? Math.min(SHARES.first, this.share * SHARES.more)
      : Math.max(SHARES.least, this.share * SHARES.less);
    this.tries = 0;
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
    this.waiting = [];
    this.least = null;
    this.calm = 0;
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

  /** The copies as they lie, bin by bin, the one that reaches least at the end. */
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
      const { stretches, lost } = this.shorter();
      const spots = this.spread(stretches, lost);
      this.stretches = spots ? stretches : [];
      if (spots || this.share === SHARES.least) return spots ?? [];
      this.share = Math.max(SHARES.least, this.share * SHARES.less);
    }
  }

  /** Where copies may lie on a film that is shorter by the share: some of the last bin is gone, or all of it where that is less. */
  private shorter(): { readonly stretches: readonly Stretch[]; readonly lost: number } {
    const { stock, kept } = this;
    const { bins: film, growth, height } = stock;
    const taken = Math.ceil(this.share * kept.reach.reduce((sum, each) => sum + each, 0));
    const last = kept.bins.length - 1;
    const rest = (kept.reach[last] as number) - taken;
    // A sheet that something stays on is not lost, and film is not made shorter than what stays on it.
    if (last < stock.still.length && (film.kind === 'sheet' || rest < stock.reached - 2 * growth))
      return { stretches: [], lost: -1 };
    const lost = film.kind === 'sheet' || (last > 0 && rest <= 0) ? last : -1;
    const stretches: Stretch[] = [];
    let from = 0;
    for (const bin of kept.bins.keys()) {
      if (bin === lost) continue;
      const whole = bin === 0 ? film.first : film.other;
      const reach = (bin === last ? rest : whole) + 2 * growth;
      stretches.push({ from, reach });
      from += Math.ceil(reach / height) + apart(stock);
    }
    return { stretches, lost };
  }

  /** The kept copies on another film, those without a place there anywhere on it; `null` if one is too long for all of it. */
  private spread(stretches: readonly Stretch[], lost: number): Spot[] | null {
    const { stock, random } = this;
    const { all, height, left, right } = stock;
    const below = (bound: number) => Math.floor(random() * bound);
    const spots: Spot[] = [];
    for (const [bin, laid] of this.kept.bins.entries()) {
      const own = bin === lost ? undefined : stretches[bin];
      for (const { shape, x, row } of laid) {
        const { length, width } = all[shape] as Shape;
        if (own && length <= own.reach) {
          const most = Math.floor((own.reach - length) / height);
          spots.push({ shape, x, row: own.from + Math.min(row, most) });
          continue;
        }
        const wide = stretches.filter(({ reach }) => length <= reach);
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
