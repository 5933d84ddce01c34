import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf, turned } from '../../src/outlines';
import { anyRings, box, corner, disc, reversed, ring } from '../nesting/outlines';

describe('an outline', () => {
  // Closed forms of plane geometry.
  it.each([
    ['a box', [box(30, 20)], 600],
    ['a corner piece', [corner(30, 10)], 500],
    ['a regular polygon of 72 corners', [disc(20)], 36 * 20 ** 2 * Math.sin((2 * Math.PI) / 72)],
    ['a frame', [box(60, 60), reversed(ring([10, 10], [50, 10], [50, 50], [10, 50]))], 2000],
  ])('%s has its area', (_, rings, square) => {
    expect(areaOf(rings) / 1e6).toBeCloseTo(square, 1);
  });

  it('keeps its area when it is turned, and its box begins at the origin', () => {
    fc.assert(
      fc.property(anyRings, fc.integer({ min: -720, max: 720 }), (rings, degrees) => {
        const lying = turned(rings, degrees);
        expect(areaOf(lying.rings) / areaOf(rings)).toBeCloseTo(1, 6);
        const [xs, ys] = [0, 1].map((axis) =>
          lying.rings.flatMap((each) => [...each].filter((_, at) => at % 2 === axis)),
        );
        expect(Math.min(...(xs ?? []))).toBeCloseTo(0, 3);
        expect(Math.max(...(ys ?? []))).toBeCloseTo(lying.length, 3);
      }),
    );
  });

  it('turns counter-clockwise with x to the right and y up, quarters exactly', () => {
    const lying = turned([box(30, 20)], 90);
    expect([lying.width, lying.length]).toEqual([20_000, 30_000]);
    const [wedge] = turned([ring([0, 0], [30, 0], [0, 10])], 90).rings;
    // The right angle comes to lie at the right: (0, 0) goes to (10, 0).
    expect([...(wedge ?? [])]).toEqual([10_000, 0, 10_000, 30_000, 0, 0]);
  });
});
