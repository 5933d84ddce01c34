import type { Laid } from './laid';
import type { Shape } from './shape';
import type { Stock } from './stock';

/** Every copy in a bin of its own place. */
export interface Layout {
  readonly bins: readonly (readonly Laid[])[];
  /** Of each bin how far its copies reach, micrometres. */
  readonly reach: readonly number[];
  /** Copies that had no room. */
  readonly left: number;
  /** Smaller is better; micrometres of film, of sheets too, and more than any film for a copy that had no room. */
  readonly cost: number;
}

/** How much the mean end of all copies weighs against the film: of two layouts of one length it tells the one nearer to a shorter one. */
const MEAN = 0.01;

const ends = (laid: readonly Laid[], { all, height }: Stock): number[] =>
  laid.map(({ shape, row }) => row * height + (all[shape] as Shape).length);

/** Sheets that are full, and the share of one that the copies of the emptiest take of those that nothing stays on. */
function sheetCost(bins: Layout['bins'], { all, still, bins: { other }, right, left }: Stock): number {
  const sheet = (right - left) * other;
  const filled = bins
    .slice(still.length)
    .map((laid) => laid.reduce((sum, { shape }) => sum + (all[shape] as Shape).area, 0));
  return other * (bins.length - 1 + (filled.length > 0 ? Math.min(...filled) / sheet : 0));
}

/** Longer than any film, micrometres. */
export const NO_ROOM = 1e12;

/** A layout of what lies in each bin; bins without a copy are left out, but for those that something stays in. */
export function layoutOf(stock: Stock, laid: Layout['bins'], left = 0): Layout {
  const { growth, bins: film } = stock;
  const all = stock.still.map((_, bin) => laid[bin] ?? []).concat(laid.slice(stock.still.length));
  const last = all.findLastIndex((each) => each.length > 0);
  const filled = all.filter((each, bin) => each.length > 0 || (bin < stock.still.length && bin < last));
  const by = filled.map((each) => ends(each, stock));
  const reach = by.map((each, bin) => Math.max(0, ...each, bin === 0 ? stock.reached : 0) - 2 * growth);
  const missed = left * NO_ROOM;
  if (filled.length === 0) return { bins: filled, reach, left, cost: missed };
  if (film.kind === 'sheet') return { bins: filled, reach, left, cost: missed + sheetCost(filled, stock) };
  const every = by.flat();
  const length = reach.reduce((sum, each) => sum + each, film.between * (filled.length - 1));
  return {
    bins: filled,
    reach,
    left,
    cost: missed + length + (MEAN * every.reduce((sum, each) => sum + each, 0)) / every.length,
  };
}
