import { leastSquares, nnls } from './nnls';
import { type Columns, conditionOf, dot, forward, norm, triangle } from './qr';
import { studentT } from './student';

/** Beyond it columns can hardly be told apart: D. A. Belsley, E. Kuh and R. E. Welsch, Regression Diagnostics, Wiley 1980, chapter 3. */
export const MOST_CONDITION = 30;

/** A coefficient, and the interval in which the true one lies with a probability of 95%. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What rows of drivers tell about a measure. */
export interface Fit {
  /** One a column. */
  readonly estimates: readonly Estimate[];
  /** Measured less told, one a row. */
  readonly residuals: readonly number[];
  /** How much a row pulls the line to itself, between 0 and 1; they sum to the number of columns. */
  readonly leverage: readonly number[];
  /** Standard deviation of one measure about the line. */
  readonly scatter: number;
  /** Rows less columns. */
  readonly freedom: number;
}

/** How well columns can be told apart: the condition number of the columns scaled to length 1. */
export const conditionOfScaled = (columns: Columns): number =>
  conditionOf(
    columns.map((column) => {
      const length = norm(column) || 1;
      return column.map((value) => value / length);
    }),
  );

/**
 * Coefficients that are not negative, by least squares, with 95% intervals by Student's t.
 *
 * The intervals are those of least squares without bounds, cut off at 0. Cutting off what cannot be true takes nothing from their
 * 95%. The covariance of the columns that came out positive alone would be narrower, and hold the true value in as few as 86 of 100
 * cases where a coefficient lies near 0, since which columns they are depends on chance too.
 *
 * @param columns what drives the measure, one column a coefficient, none negative
 * @param measured as long as each column
 * @returns `null` where there are no more rows than columns, or a column is a sum of others
 */
export function fitRates(columns: Columns, measured: readonly number[]): Fit | null {
  const freedom = measured.length - columns.length;
  const unbounded = freedom > 0 ? leastSquares(columns, measured) : null;
  if (!unbounded) return null;
  const x = nnls(columns, measured);
  const left = (of: readonly number[]) =>
    measured.map(
      (value, row) => value - of.reduce((sum, each, at) => sum + each * (columns[at]?.[row] ?? 0), 0),
    );
  const scatter = norm(left(unbounded)) / Math.sqrt(freedom);
  const { r } = triangle(columns, measured);
  const reach = studentT(0.95, freedom) * scatter;
  const estimates = x.map((value, at): Estimate => {
    const root = forward(
      r,
      columns.map((_, other) => (other === at ? 1 : 0)),
    );
    const half = reach * norm(root);
    const middle = unbounded[at] ?? 0;
    // Where a bound holds, the bounded value may lie outside of what the data alone allow: the interval takes it in.
    return {
      value,
      low: Math.min(value, Math.max(0, middle - half)),
      high: Math.max(value, middle + half),
    };
  });
  const leverage = measured.map((_, row) => {
    const root = forward(
      r,
      columns.map((column) => column[row] ?? 0),
    );
    return dot(root, root);
  });
  return { estimates, residuals: left(x), leverage, scatter, freedom };
}
