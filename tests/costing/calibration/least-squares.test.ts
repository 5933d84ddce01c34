import fc from 'fast-check';
import { fcnnlsVector } from 'ml-fcnnls';
import { Matrix, QrDecomposition, SingularValueDecomposition } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { leastSquares, nnls } from '../../../src/costing/calibration/nnls';
import { conditionOf, dot } from '../../../src/costing/calibration/qr';
import { references } from './strd';

/** A problem of so many rows, its columns and right-hand side of any sign. */
const problem = (terms: number) =>
  fc.integer({ min: terms + 1, max: terms + 8 }).chain((rows) => {
    const column = fc.array(fc.integer({ min: -100, max: 100 }), { minLength: rows, maxLength: rows });
    return fc.record({
      columns: fc.array(column, { minLength: terms, maxLength: terms }),
      right: column,
    });
  });

const anyProblem = fc.integer({ min: 1, max: 5 }).chain(problem);

const leftOf = (columns: readonly (readonly number[])[], right: readonly number[], x: readonly number[]) =>
  right.map((value, row) => value - x.reduce((sum, each, at) => sum + each * (columns[at]?.[row] ?? 0), 0));

const squares = (values: readonly number[]) => dot(values, values);

const asMatrix = (columns: readonly (readonly number[])[]) =>
  new Matrix(columns.map((column) => [...column])).transpose();

/** Columns that are told apart well enough for figures to be compared. */
const isSound = (columns: readonly (readonly number[])[]) => conditionOf(columns) < 1e4;

/** The least sum of squares over every choice of columns whose coefficients come out positive: by the reference's QR. */
function exhaustively(columns: readonly (readonly number[])[], right: readonly number[]): number {
  let least = squares(right);
  for (let choice = 1; choice < 2 ** columns.length; choice += 1) {
    const chosen = columns.filter((_, at) => ((choice >> at) & 1) === 1);
    if (!isSound(chosen)) continue;
    const x = new QrDecomposition(asMatrix(chosen)).solve(Matrix.columnVector([...right])).to1DArray();
    if (x.every((value) => value >= 0)) least = Math.min(least, squares(leftOf(chosen, right, x)));
  }
  return least;
}

describe('least squares', () => {
  it.each(references)(
    'gives the certified coefficients of $name (NIST StRD)',
    ({ columns, measured, certified }) => {
      const x = leastSquares(columns, measured) ?? [];
      certified.coefficients.forEach((value, at) => {
        expect(Math.abs((x[at] ?? 0) / value - 1)).toBeLessThan(1e-9);
      });
    },
  );

  it('gives the coefficients that Wampler1 and Wampler2 are made of (NIST StRD)', () => {
    // Polynomials of degree 5 over 0, 1, ... 20, all coefficients 1, or 1, 0.1, ... 0.00001: collinear to 1 in 10^6 and more.
    const x = Array.from({ length: 21 }, (_, row) => row);
    const columns = [0, 1, 2, 3, 4, 5].map((power) => x.map((value) => value ** power));
    for (const base of [1, 0.1]) {
      const made = columns.map((_, power) => base ** power);
      const measured = x.map((_, row) =>
        columns.reduce((sum, column, power) => sum + (made[power] ?? 0) * (column[row] ?? 0), 0),
      );
      const found = leastSquares(columns, measured) ?? [];
      for (const [power, value] of made.entries())
        expect(Math.abs((found[power] ?? 0) / value - 1)).toBeLessThan(1e-8);
    }
  });

  it('agrees with a reference library', () => {
    fc.assert(
      fc.property(anyProblem, ({ columns, right }) => {
        fc.pre(isSound(columns));
        const reference = new QrDecomposition(asMatrix(columns))
          .solve(Matrix.columnVector(right))
          .to1DArray();
        const own = leastSquares(columns, right) ?? [];
        for (const [at, value] of reference.entries()) expect(own[at]).toBeCloseTo(value, 8);
      }),
    );
  });

  it('says so when a column is a sum of others', () => {
    expect(
      leastSquares(
        [
          [1, 2, 3],
          [2, 0, 1],
          [3, 2, 4],
        ],
        [1, 2, 3],
      ),
    ).toBeNull();
    expect(leastSquares([[0, 0, 0]], [1, 2, 3])).toBeNull();
  });
});

describe('the condition number', () => {
  it('agrees with a reference library', () => {
    fc.assert(
      fc.property(anyProblem, ({ columns }) => {
        const reference = new SingularValueDecomposition(asMatrix(columns)).condition;
        fc.pre(reference < 1e8);
        expect(conditionOf(columns) / reference).toBeCloseTo(1, 6);
      }),
    );
  });

  it('is endless where a column is another one over', () => {
    expect(
      conditionOf([
        [1, 2, 3],
        [2, 4, 6],
      ]),
    ).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('non-negative least squares', () => {
  it('meets the conditions of an optimum: no negative coefficient, no gradient that would still help (Karush, Kuhn and Tucker)', () => {
    fc.assert(
      fc.property(anyProblem, ({ columns, right }) => {
        const x = nnls(columns, right);
        const left = leftOf(columns, right, x);
        columns.forEach((column, at) => {
          const gradient = dot(column, left) / (Math.sqrt(squares(column) * squares(right)) || 1);
          if (x[at] !== 0) {
            expect(x[at]).toBeGreaterThan(0);
            expect(Math.abs(gradient)).toBeLessThan(1e-9);
          } else {
            expect(gradient).toBeLessThan(1e-9);
          }
        });
      }),
      { numRuns: 1000 },
    );
  });

  it('finds what trying every choice of columns finds', () => {
    fc.assert(
      fc.property(anyProblem, ({ columns, right }) => {
        fc.pre(isSound(columns));
        const own = squares(leftOf(columns, right, nnls(columns, right)));
        const least = exhaustively(columns, right);
        expect(Math.abs(own - least)).toBeLessThanOrEqual(1e-8 * (1 + least));
      }),
    );
  });

  it('agrees with a reference library', () => {
    fc.assert(
      fc.property(anyProblem, ({ columns, right }) => {
        fc.pre(isSound(columns));
        const reference = fcnnlsVector(asMatrix(columns), right).K.to1DArray();
        const own = nnls(columns, right);
        for (const [at, value] of reference.entries()) expect(own[at]).toBeCloseTo(value, 7);
      }),
    );
  });

  it('does not mind what unit a column is in', () => {
    fc.assert(
      fc.property(anyProblem, fc.integer({ min: -9, max: 9 }), ({ columns, right }, power) => {
        fc.pre(isSound(columns));
        const [first = [], ...rest] = columns;
        const plain = nnls(columns, right);
        const other = nnls([first.map((value) => value * 10 ** power), ...rest], right);
        expect((other[0] ?? 0) * 10 ** power).toBeCloseTo(plain[0] ?? 0, 7);
      }),
    );
  });
});
