import { MOST_COPIES_IN_ALL } from './cells';

/** A table that is longer, in signs, is not read at all. */
export const MOST_SIGNS = 8_000_000;
/** More rows would bring more copies than a table may, since each brings one at least. */
export const MOST_ROWS = MOST_COPIES_IN_ALL;
export const MOST_COLUMNS = 200;
/** The most signs of a cell: more is another text that a missing quote or separator has let in. */
export const LONGEST_CELL = 10_000;

/** What a table has too much of, and the row where that is. */
export type TableLimit =
  | { readonly code: 'too-long' | 'many-rows' }
  | { readonly code: 'many-columns' | 'long-cell'; readonly line: number };
