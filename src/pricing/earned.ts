import type { Aim } from '../model';

/** What of a price is earned: `(price - cost) / price`. `null` for a price of nothing. */
export const marginOf = (price: number, cost: number): number | null =>
  price > 0 ? (price - cost) / price : null;

/** What is put on the cost: `(price - cost) / cost`. `null` for what costs nothing. */
export const markupOf = (price: number, cost: number): number | null =>
  cost > 0 ? (price - cost) / cost : null;

/**
 * What a cost is multiplied by to earn what is aimed at: `1 / (1 - margin)` or `1 + markup`, so that a markup k is the margin
 * k / (1 + k) (common practice; as in any textbook of retail mathematics).
 */
export const factorOf = (aim: Aim): number => (aim.kind === 'margin' ? 1 / (1 - aim.share) : 1 + aim.share);

/** What of an aim is reached at a price. */
export const reached = (aim: Aim, price: number, cost: number): number | null =>
  aim.kind === 'margin' ? marginOf(price, cost) : markupOf(price, cost);
