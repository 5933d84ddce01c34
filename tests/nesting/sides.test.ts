import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastBehind, sidesOf } from '../../src/nesting/sides';
import { areNearer } from '../../src/outlines';
import { anyRings, box, disc, reversed, ring } from './outlines';

const FAR = 1e6;

describe('how far one shape keeps behind another', () => {
  it.each([0, 5, -12, 25, -39])(
    'is by the circles of discs of 20 mm that lie %d mm beside each other: √(40² - d²)',
    (beside) => {
      const { along, across } = sidesOf([disc(20, 720)]);
      for (const { before, behind } of [along, across]) {
        const least = leastBehind(behind, before, beside * 1000, FAR) / 1000;
        expect(least).toBeCloseTo(Math.sqrt(40 ** 2 - beside ** 2), 1);
      }
    },
  );

  it('is nothing where they pass each other, and by the wall of a hole for what lies in one', () => {
    const frame = sidesOf([box(100, 100), reversed(ring([10, 10], [90, 10], [90, 90], [10, 90]))]);
    const inner = sidesOf([box(20, 20)]);
    expect(leastBehind(frame.along.behind, inner.along.before, 100_000, FAR)).toBe(Number.NEGATIVE_INFINITY);
    // It lies 40 mm behind the frame's front, whose inner side is 10 mm behind it.
    expect(leastBehind(frame.along.behind, inner.along.before, 40_000, 40_000)).toBe(10_000);
    expect(leastBehind(frame.along.behind, inner.along.before, 40_000, FAR)).toBe(100_000);
  });

  it('lets no two shapes into each other, and they touch where they are so far apart', () => {
    fc.assert(
      fc.property(anyRings, anyRings, fc.integer({ min: -90, max: 120 }), (one, other, beside) => {
        const x = beside * 1000;
        const least = leastBehind(sidesOf(one).along.behind, sidesOf(other).along.before, x, FAR);
        fc.pre(least > Number.NEGATIVE_INFINITY);
        const meet = (y: number) => areNearer({ rings: one, x: 0, y: 0 }, { rings: other, x, y }, 0);
        for (const further of [1, 300, 20_000]) expect(meet(least + further)).toBe(false);
        expect(areNearer({ rings: one, x: 0, y: 0 }, { rings: other, x, y: least }, 1)).toBe(true);
      }),
    );
  });
});
