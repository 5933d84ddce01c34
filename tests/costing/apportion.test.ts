import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apportion, apportionLines } from '../../src/costing/apportion';
import { asMinor } from '../../src/units';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('whole units for parts', () => {
  // Hamilton's method on six states of 27,744, 25,178, 19,947, 14,614, 9,225 and 3,292 people for 36 seats, which get 10, 9, 7, 5,
  // 4 and 1: M. L. Balinski and H. P. Young, Fair Representation, 1982 (from memory).
  it.each([
    [
      36,
      [27_744, 25_178, 19_947, 14_614, 9_225, 3_292].map((people) => (36 * people) / 100_000),
      [10, 9, 7, 5, 4, 1],
    ],
    [100, [33.333_333, 33.333_333, 33.333_334], [33, 33, 34]],
    [10, [2.5, 2.5, 2.5, 2.5], [3, 3, 2, 2]],
    [3, [3], [3]],
    [1, [0, 0.4, 0.6], [0, 0, 1]],
    [0, [0, 0], [0, 0]],
    // Shares too small for a float: the units are not lost.
    [3, [0, 0], [2, 1]],
  ])('%d among %j', (total, exact, parts) => {
    expect(apportion(total, exact)).toEqual(parts);
  });

  it('sum to the total and are within one of what they are before rounding', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1 }), (exact) => {
        const total = Math.round(sum(exact));
        const parts = apportion(total, exact);
        expect(sum(parts)).toBe(total);
        parts.forEach((part, at) => {
          expect(Math.abs(part - (exact[at] ?? 0))).toBeLessThanOrEqual(1 + 1e-5);
          if (exact[at] === 0) expect(part).toBe(0);
        });
      }),
    );
  });

  it('sum by line, and rows stay near what they are before rounding', () => {
    const rows = fc.integer({ min: 1, max: 8 }).chain((lines) =>
      fc.array(
        fc.array(fc.double({ min: 0, max: 500, noNaN: true }), { minLength: lines, maxLength: lines }),
        {
          minLength: 1,
          maxLength: 30,
        },
      ),
    );
    fc.assert(
      fc.property(rows, (exact) => {
        const columns = (exact[0] ?? []).map((_, line) => sum(exact.map((row) => row[line] ?? 0)));
        const lines = apportion(Math.round(sum(columns)), columns);
        const cells = apportionLines(lines, exact);
        lines.forEach((units, line) => {
          expect(sum(cells.map((row) => row[line] ?? 0))).toBe(units);
        });
        cells.forEach((row, at) => {
          row.forEach((cell, line) => {
            expect(cell).toBeGreaterThanOrEqual(0);
            if (exact[at]?.[line] === 0) expect(cell).toBe(0);
          });
          expect(Math.abs(sum(row) - sum(exact[at] ?? []))).toBeLessThan(3);
        });
      }),
    );
  });

  it('gives what one line withheld in the next', () => {
    const half = [0.5, 0.5];
    expect(apportionLines([asMinor(1), asMinor(1)], [half, half])).toEqual([
      [1, 0],
      [0, 1],
    ]);
  });
});
