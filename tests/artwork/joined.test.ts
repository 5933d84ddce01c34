import { area, difference, FillRule, type Paths64 } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joined } from '../../src/artwork/joined';

const box = (x: number, y: number, width: number, height: number) => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];
const areaOf = (paths: Paths64) => paths.reduce((sum, path) => sum + area(path), 0);

/** Boxes that do not touch: one at most in each field of a grid. */
const anyIslands = fc
  .array(
    fc.record({
      field: fc.nat(24),
      x: fc.integer({ min: 5, max: 40 }),
      y: fc.integer({ min: 5, max: 40 }),
      width: fc.integer({ min: 10, max: 50 }),
      height: fc.integer({ min: 10, max: 50 }),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((all) =>
    [...new Map(all.map((each) => [each.field, each])).values()].map(({ field, x, y, width, height }) =>
      box(1000 * (field % 5) + 10 * x, 1000 * Math.floor(field / 5) + 10 * y, 10 * width, 10 * height),
    ),
  );

describe('islands that are made one piece', () => {
  it('hang together, hold all that they were, and have no holes', () => {
    fc.assert(
      fc.property(anyIslands, (islands) => {
        const one = joined(islands, 60);
        expect(one).toHaveLength(1);
        expect(areaOf(one)).toBeGreaterThan(0);
        expect(areaOf(difference(islands, one, FillRule.NonZero))).toBe(0);
      }),
    );
  });

  it('are tied by the shortest ways: those of a row one by one', () => {
    // Two gaps of 200, and bars 50 wide that may stand out beyond a corner by half of that.
    const row = [box(1400, 0, 500, 300), box(0, 0, 500, 300), box(700, 0, 500, 300)];
    const bars = areaOf(joined(row, 50)) - areaOf(row);
    expect(bars).toBeGreaterThanOrEqual(2 * 200 * 50);
    expect(bars).toBeLessThanOrEqual(2 * 300 * 50);
  });

  it('stay as they are where there is one, or none', () => {
    expect(joined([box(0, 0, 10, 10)], 5)).toEqual([box(0, 0, 10, 10)]);
    expect(joined([], 5)).toEqual([]);
  });
});
