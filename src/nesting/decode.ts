import { Bin } from './bin';
import type { Laid } from './laid';
import { type Layout, layoutOf } from './layout';
import type { Shape } from './shape';
import type { Stock } from './stock';

/** What a layout is built by. */
export interface Sequence {
  /** Pieces, one entry a copy, in the order in which they are laid. */
  readonly pieces: Int32Array;
  /** Of the turns that a copy may lie in the one is taken whose start (0), middle (0.5) or end (1) lies first. */
  readonly leaning: number;
  /** Whether copies lie in any of their turns, or in the first that fits the film: a layout is built sooner so. */
  readonly turns: 'all' | 'first';
}

/**
 * Builds the layout of a sequence: each copy goes to the first bin, and there to the first row, that has room for it (bottom-left
 * fill; B. S. Baker, E. G. Coffman and R. L. Rivest, Orthogonal packings in two dimensions, SIAM Journal on Computing 9(4), 846-855, 1980,
 * here on rows of outlines).
 */
export function decode(stock: Stock, { pieces, leaning, turns }: Sequence): Layout {
  const { bins: film, height, growth, all, shapes } = stock;
  const bins: Bin[] = [];
  let left = 0;
  for (const piece of pieces) {
    for (let at = 0; ; at += 1) {
      if (at >= film.most) {
        left += 1;
        break;
      }
      const reach = (at === 0 ? film.first : film.other) + 2 * growth;
      const bin = bins[at] ?? new Bin(stock, reach, stock.still[at] ?? []);
      bins[at] = bin;
      let best: Laid | null = null;
      let key = Number.POSITIVE_INFINITY;
      const own = shapes[piece] as readonly number[];
      for (const shape of turns === 'all' ? own : own.slice(0, 1)) {
        const lies = leaning * (all[shape] as Shape).length;
        const found = bin.find(shape, Math.floor((key - lies) / height));
        if (!found || found.row * height + lies >= key) continue;
        key = found.row * height + lies;
        best = { shape, ...found };
      }
      if (best) {
        bin.lay(best);
        break;
      }
      // What does not fit a bin that is bare fits none behind it: all of these are alike.
      if (at > 0 && at >= stock.still.length && bin.laid.length === 0) {
        left += 1;
        break;
      }
    }
  }
  return layoutOf(
    stock,
    bins.map(({ laid }) => laid),
    left,
  );
}
