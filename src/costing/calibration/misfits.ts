import { leastSquares } from './nnls';
import { type Columns, dot, forward, norm, triangle } from './qr';
import { studentT } from './student';

/** How often the last row is named where all belong together. */
const BY_MISTAKE = 0.05;

/** So many lines through as few rows as make one are tried. */
const TRIES = 250;

/** Every so-manieth, so that no more are left. */
function thinned<Item>(items: readonly Item[], most: number): Item[] {
  const step = Math.ceil(items.length / most);
  return items.filter((_, index) => index % step === 0);
}

/** Choices of so many rows: all of them, or as many as are tried, spread evenly. */
function choices(rows: number, of: number): number[][] {
  let all: number[][] = [[]];
  for (let depth = 0; depth < of; depth += 1) {
    const longer = all.flatMap((chosen) => {
      const from = (chosen.at(-1) ?? -1) + 1;
      return Array.from({ length: rows - from }, (_, step) => [...chosen, from + step]);
    });
    all = thinned(longer, depth === of - 1 ? TRIES : 4 * TRIES);
  }
  return all;
}

const pick = (values: readonly number[], rows: readonly number[]): number[] =>
  rows.map((row) => values[row] ?? 0);

const pickRows = (columns: Columns, rows: readonly number[]): Columns =>
  columns.map((column) => pick(column, rows));

const leftBy = (columns: Columns, measured: readonly number[], line: readonly number[]): number[] =>
  measured.map(
    (value, row) => value - line.reduce((sum, each, at) => sum + each * (columns[at]?.[row] ?? 0), 0),
  );

/**
 * Rows in the order of how well they fit the line of which half of the rows are nearest: least median of squares, P. J. Rousseeuw,
 * Journal of the American Statistical Association 79, 871-880, 1984, over lines through as few rows as make one.
 */
function byFit(columns: Columns, measured: readonly number[]): number[] {
  const half = measured.length >> 1;
  let best: { middle: number; distances: number[] } | null = null;
  for (const rows of choices(measured.length, columns.length)) {
    const line = leastSquares(pickRows(columns, rows), pick(measured, rows));
    if (!line) continue;
    const distances = leftBy(columns, measured, line).map(Math.abs);
    const middle = [...distances].sort((a, b) => a - b)[half] ?? 0;
    if (!best || middle < best.middle) best = { middle, distances };
  }
  const { distances } = best ?? { distances: [...measured] };
  return [...measured.keys()].sort((a, b) => (distances[a] ?? 0) - (distances[b] ?? 0));
}

/**
 * Rows that do not fit what most of the others tell, however far they pull a line of least squares: A. S. Hadi and J. S. Simonoff,
 * Journal of the American Statistical Association 88, 1264-1272, 1993. From the half that fits best, the row that fits next best is
 * taken in, until one is further off than chance allows. Of 20 rows or more that all belong together some are named by mistake in
 * about one case of twenty, of fewer in one of eight.
 * @param columns as for {@link fitRates}
 * @returns their indices
 */
export function misfits(columns: Columns, measured: readonly number[]): number[] {
  const [rows, terms] = [measured.length, columns.length];
  let within = byFit(columns, measured).slice(0, Math.max(terms + 2, (rows + terms + 1) >> 1));
  while (within.length < rows) {
    const own = pickRows(columns, within);
    const values = pick(measured, within);
    const line = leastSquares(own, values);
    if (!line) return [];
    const freedom = within.length - terms;
    const scatter = norm(leftBy(own, values, line)) / Math.sqrt(freedom);
    const { r } = triangle(own, values);
    const taken = new Set(within);
    const off = leftBy(columns, measured, line).map((left, row) => {
      const root = forward(
        r,
        columns.map((column) => column[row] ?? 0),
      );
      const pull = dot(root, root);
      return (
        Math.abs(left) / (scatter * Math.sqrt(Math.max(0, taken.has(row) ? 1 - pull : 1 + pull)) || 1e-300)
      );
    });
    const order = [...off.keys()].sort((a, b) => (off[a] ?? 0) - (off[b] ?? 0));
    const next = within.length + 1;
    const limit = studentT(1 - BY_MISTAKE / next, freedom);
    if ((off[order[next - 1] ?? 0] ?? 0) >= limit) {
      return [...off.keys()].filter((row) => (off[row] ?? 0) >= limit);
    }
    within = order.slice(0, next);
  }
  return [];
}
