import { decode, type Sequence } from './decode';
import type { Layout } from './layout';
import type { Stock } from './stock';

/** Copies that change their place in a sequence at once, at most, and how far some of them go. */
const CHANGES = 3;
const NEAR = 6;
/** How often copies are leant another way. */
const LEANT = 0.1;

/** Looks for a sequence whose layout is shorter: changes the best one a little, and keeps what is no worse (hill climbing). */
export class Sequences {
  private readonly stock: Stock;
  private readonly random: () => number;
  private waiting: readonly Sequence[];
  private best: { readonly sequence: Sequence; readonly layout: Layout } | null = null;
  private isCalm = false;

  /** @param first what is built before any other; one at least */
  constructor(stock: Stock, first: readonly Sequence[], random: () => number) {
    this.stock = stock;
    this.random = random;
    this.waiting = first;
  }

  /** Builds one more layout; `null`, once, behind one that was no better: it is time to try something else. */
  next(): Layout | null {
    const [given, ...others] = this.waiting;
    const sequence = given ?? this.varied();
    if (!sequence) return null;
    this.waiting = others;
    const layout = decode(this.stock, sequence);
    const least = this.best?.layout.cost ?? Number.POSITIVE_INFINITY;
    this.isCalm = layout.cost >= least;
    if (layout.cost <= least) this.best = { sequence, layout };
    return layout;
  }

  /** The best of those that it has built; `null` before the first. */
  get layout(): Layout | null {
    return this.best?.layout ?? null;
  }

  private varied(): Sequence | null {
    const { random } = this;
    const best = this.best?.sequence;
    if (!best || best.pieces.length < 2) return null;
    if (this.isCalm) {
      this.isCalm = false;
      return null;
    }
    const pieces = best.pieces.slice();
    const below = (bound: number) => Math.floor(random() * bound);
    for (let change = below(CHANGES); change >= 0; change -= 1) {
      const from = below(pieces.length);
      const away = random() < 0.5 ? below(pieces.length) : from - NEAR + below(2 * NEAR + 1);
      const to = Math.max(0, Math.min(pieces.length - 1, away));
      const piece = pieces[from] as number;
      if (random() < 0.5) pieces[from] = pieces[to] as number;
      else if (from < to) pieces.copyWithin(from, from + 1, to + 1);
      else pieces.copyWithin(to + 1, to, from);
      pieces[to] = piece;
    }
    return { pieces, leaning: random() < LEANT ? random() : best.leaning, turns: 'all' };
  }
}
