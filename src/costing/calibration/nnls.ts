import { backward, type Columns, dot, norm, triangle } from './qr';

/** A column that the others tell but for this share of its length adds nothing but rounding. */
const NOTHING_NEW = 1e-10;

interface Solution {
  /** As many as there are columns; exactly 0 where the bound holds. */
  readonly x: readonly number[];
  /** Columns that are not held at 0, in their order. */
  readonly free: readonly number[];
}

/** The columns and the right-hand side at length 1, so that one tolerance does for litres and for metres. */
function scaled(columns: Columns, right: readonly number[]) {
  const lengths = columns.map((column) => norm(column) || 1);
  const length = norm(right) || 1;
  return {
    lengths,
    length,
    columns: columns.map((column, at) => column.map((value) => value / (lengths[at] ?? 1))),
    right: right.map((value) => value / length),
  };
}

/** Coefficients of these columns alone, without bounds; `null` if one of them is a sum of the others. */
function solve(columns: Columns, right: readonly number[], of: readonly number[]): number[] | null {
  const { r, rotated, news } = triangle(
    of.map((at) => columns[at] ?? []),
    right,
  );
  return news.some((share) => share < NOTHING_NEW) ? null : backward(r, rotated);
}

/**
 * Least squares without bounds, by Householder reflections of columns scaled to length 1.
 * @param columns each as long as `right`, and no fewer rows than columns
 * @returns `null` if a column is a sum of others, within 1e-10 of its length
 */
export function leastSquares(columns: Columns, right: readonly number[]): number[] | null {
  const of = scaled(columns, right);
  const x = solve(of.columns, of.right, [...columns.keys()]);
  return x?.map((value, at) => (value * of.length) / (of.lengths[at] ?? 1)) ?? null;
}

/**
 * min |A x - b| with x >= 0: C. L. Lawson and R. J. Hanson, Solving Least Squares Problems, Prentice-Hall 1974, chapter 23,
 * algorithm NNLS. Columns and right-hand side are scaled to length 1; a gradient below 10 n eps, of n rows, counts as 0.
 * @param columns each as long as `right`, and no fewer rows than columns
 */
export function nnls(columns: Columns, right: readonly number[]): Solution {
  const of = scaled(columns, right);
  const tolerance = 10 * right.length * Number.EPSILON;
  let x = columns.map(() => 0);
  let free: number[] = [];
  /** Columns that were tried from here and went the wrong way, which only rounding makes them do. */
  let refused = new Set<number>();
  for (;;) {
    const rest = of.right.map(
      (value, row) => value - free.reduce((sum, at) => sum + (of.columns[at]?.[row] ?? 0) * (x[at] ?? 0), 0),
    );
    const gradient = of.columns.map((column, at) =>
      free.includes(at) || refused.has(at) ? 0 : dot(column, rest),
    );
    const steepest = gradient.indexOf(Math.max(0, ...gradient));
    if (steepest < 0 || (gradient[steepest] ?? 0) <= tolerance) break;
    const wider = [...free, steepest].sort((a, b) => a - b);
    const first = solve(of.columns, of.right, wider);
    if (first === null || (first[wider.indexOf(steepest)] ?? 0) <= 0) {
      refused.add(steepest);
      continue;
    }
    refused = new Set();
    ({ x, free } = withinBounds(of, x, wider, first));
  }
  return { x: x.map((value, at) => (value * of.length) / (of.lengths[at] ?? 1)), free };
}

/** Goes towards the solution without bounds as far as they allow, drops what reaches 0, and goes on until all is positive. */
function withinBounds(
  of: { readonly columns: Columns; readonly right: readonly number[] },
  from: readonly number[],
  wider: readonly number[],
  first: readonly number[],
): { x: number[]; free: number[] } {
  let x = [...from];
  let free = [...wider];
  let wanted: readonly number[] = first;
  for (;;) {
    const aim = x.map((_, at) => (free.includes(at) ? (wanted[free.indexOf(at)] ?? 0) : 0));
    const blocking = free.filter((at) => (aim[at] ?? 0) <= 0);
    if (blocking.length === 0) return { x: aim, free };
    const share = (at: number) => (x[at] ?? 0) / ((x[at] ?? 0) - (aim[at] ?? 0));
    const nearest = blocking.reduce((best, at) => (share(at) < share(best) ? at : best));
    const step = share(nearest);
    x = x.map((value, at) => (at === nearest ? 0 : value + step * ((aim[at] ?? 0) - value)));
    free = free.filter((at) => at !== nearest && (x[at] ?? 0) > 0);
    x = x.map((value, at) => (free.includes(at) ? value : 0));
    // A part of columns that were told apart is told apart too.
    wanted = solve(of.columns, of.right, free) ?? [];
  }
}
