import { backward, type Columns, norm, triangle } from './qr';

/** A column that the others tell but for this share of its length adds nothing but rounding. */
const NOTHING_NEW = 1e-10;

/** Coefficients, 0 of columns that were left out, and the share of the right-hand side's length that they leave. */
interface Solution {
  readonly x: readonly number[];
  readonly left: number;
}

/**
 * Solves by Householder reflections for some of the columns alone. Columns and right-hand side are scaled to length 1, so that one
 * tolerance does for litres and for metres.
 * @returns a function of the columns' numbers, in their order; `null` if one of them is a sum of the others
 */
function solver(columns: Columns, right: readonly number[]): (of: readonly number[]) => Solution | null {
  const lengths = columns.map((column) => norm(column) || 1);
  const length = norm(right) || 1;
  const scaled = columns.map((column, at) => column.map((value) => value / (lengths[at] ?? 1)));
  const target = right.map((value) => value / length);
  return (of) => {
    const { r, rotated, news } = triangle(
      of.map((at) => scaled[at] ?? []),
      target,
    );
    if (news.some((share) => share < NOTHING_NEW)) return null;
    const found = backward(r, rotated);
    const x = columns.map(() => 0);
    of.forEach((at, place) => {
      x[at] = ((found[place] ?? 0) * length) / (lengths[at] ?? 1);
    });
    return { x, left: norm(rotated.slice(of.length)) };
  };
}

/**
 * Least squares without bounds.
 * @param columns each as long as `right`, and no fewer rows than columns
 * @returns `null` if a column is a sum of others, within 1e-10 of its length
 */
export const leastSquares = (columns: Columns, right: readonly number[]): readonly number[] | null =>
  solver(columns, right)([...columns.keys()])?.x ?? null;

/**
 * min |A x - b| with x >= 0: of every choice of columns whose coefficients come out positive, the one that leaves least. C. L. Lawson
 * and R. J. Hanson, Solving Least Squares Problems, Prentice-Hall 1974, chapter 23, show that the optimum is one of them; a measure has
 * three drivers at most, thus eight choices. A column that takes off no more than 10 n eps, of n rows, stays at 0: it comes after all
 * choices without it.
 * @param columns each as long as `right`, and no fewer rows than columns
 * @returns exactly 0 where the bound holds
 */
export function nnls(columns: Columns, right: readonly number[]): readonly number[] {
  const solve = solver(columns, right);
  const rounding = 10 * right.length * Number.EPSILON;
  let best: Solution = { x: columns.map(() => 0), left: 1 };
  for (let choice = 1; choice < 2 ** columns.length; choice += 1) {
    const found = solve([...columns.keys()].filter((at) => (choice >> at) & 1));
    if (found?.x.every((value) => value >= 0) && found.left < best.left - rounding) best = found;
  }
  return best.x;
}
