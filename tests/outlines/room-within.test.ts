import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf, contains, type Room, roomWithin } from '../../src/outlines';

const ring = (...points: readonly (readonly [number, number])[]) => Float64Array.from(points.flat());

/** Points along the edges of a rectangle, a hair within it. */
const edgeOf = ({ x, y, width, length }: Room): [number, number][] =>
  Array.from({ length: 41 }, (_, at) => at / 40).flatMap((share) => {
    const [across, along] = [x + 1 + share * (width - 2), y + 1 + share * (length - 2)];
    return [
      [across, y + 1],
      [across, y + length - 1],
      [x + 1, along],
      [x + width - 1, along],
    ] as [number, number][];
  });

describe('the room for a name', () => {
  it('is all of a box', () => {
    const box = ring([0, 0], [90_000, 0], [90_000, 40_000], [0, 40_000]);
    expect(roomWithin([box], 90_000, 40_000).width).toBeGreaterThan(0.9 * 90_000);
    expect(roomWithin([box], 90_000, 40_000).length).toBeGreaterThan(0.9 * 40_000);
  });

  it('lies within any triangle, and takes a fifth of it at the least', () => {
    const side = fc.integer({ min: 20_000, max: 200_000 });
    fc.assert(
      fc.property(side, side, fc.double({ min: 0, max: 1, noNaN: true }), (width, length, top) => {
        const triangle = ring([0, length], [top * width, 0], [width, length]);
        const room = roomWithin([triangle], width, length);
        for (const [x, y] of edgeOf(room))
          expect(contains({ rings: [triangle], x: 0, y: 0 }, x, y)).toBe(true);
        // A third of the height is half of the width of the largest, which has half of the area; a name wants a wide one.
        expect(room.width * room.length).toBeGreaterThan(0.2 * Math.abs(areaOf([triangle])));
      }),
    );
  });

  it('keeps out of a hole', () => {
    const outer = ring([0, 0], [100_000, 0], [100_000, 100_000], [0, 100_000]);
    const hole = ring([10_000, 10_000], [10_000, 70_000], [90_000, 70_000], [90_000, 10_000]);
    const { y } = roomWithin([outer, hole], 100_000, 100_000);
    expect(y).toBeGreaterThanOrEqual(70_000);
  });

  it('is a point on what is too thin for any', () => {
    const sliver = ring([0, 0], [1, 0], [100_000, 99_999], [100_000, 100_000], [99_999, 100_000]);
    expect(roomWithin([sliver], 100_000, 100_000)).toEqual({ x: 0, y: 0, width: 0, length: 0 });
  });
});
