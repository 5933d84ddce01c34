import { area, EndType, FillRule, inflatePaths, intersect, JoinType, type Paths64 } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areNearer, areNearerOnce, type Ring } from '../../src/outlines';
import { anyRings, box, disc } from '../nesting/outlines';

const paths = (rings: readonly Ring[], x: number, y: number): Paths64 =>
  rings.map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, at) => ({
      x: Math.round((ring[2 * at] as number) + x),
      y: Math.round((ring[2 * at + 1] as number) + y),
    })),
  );

/** By clipper2: whether one outline, grown by a distance, shares film with another. */
function share(a: Paths64, b: Paths64, distance: number): boolean {
  const grown = inflatePaths(a, distance, JoinType.Round, EndType.Polygon, 2, 0.5);
  return Math.abs(intersect(grown, b, FillRule.NonZero).reduce((sum, path) => sum + area(path), 0)) > 0;
}

describe('how near two outlines come', () => {
  // Plane geometry.
  it.each([
    ['boxes side by side', [box(10, 10)], [box(10, 10)], 15, 0, 5],
    ['boxes corner to corner', [box(10, 10)], [box(10, 10)], 13, 14, 5],
    ['a small box within the ink of a large one', [box(50, 50)], [box(5, 5)], 20, 20, 0],
  ])('%s', (_, a, b, x, y, apart) => {
    const near = (by: number) =>
      areNearer({ rings: a, x: 0, y: 0 }, { rings: b, x: x * 1000, y: y * 1000 }, by * 1000);
    expect(near(apart + 0.01)).toBe(true);
    if (apart > 0) expect(near(apart - 0.01)).toBe(false);
  });

  it('one may lie in the hole of another', () => {
    const frame = [box(60, 60), Float64Array.from([10, 10, 10, 50, 50, 50, 50, 10], (value) => value * 1000)];
    const badge = { rings: [disc(10)], x: 20_000, y: 20_000 };
    expect(areNearer({ rings: frame, x: 0, y: 0 }, badge, 9_000)).toBe(false);
    expect(areNearer({ rings: frame, x: 0, y: 0 }, badge, 11_000)).toBe(true);
  });

  it('is as clipper2 finds it, whatever the outlines, where they lie and how far apart', () => {
    const offset = fc.integer({ min: -130_000, max: 130_000 });
    const told = { near: 0, far: 0 };
    fc.assert(
      fc.property(anyRings, anyRings, offset, offset, fc.constantFrom(2000, 6000), (a, b, x, y, distance) => {
        const [one, other] = [paths(a, 0, 0), paths(b, x, y)];
        // Between the two nothing is certain: corners are rounded, and arcs are of chords.
        const [less, more] = [share(one, other, distance - 20), share(one, other, distance + 20)];
        if (less !== more) return;
        expect(areNearer({ rings: a, x: 0, y: 0 }, { rings: b, x, y }, distance)).toBe(less);
        told[less ? 'near' : 'far'] += 1;
      }),
      { numRuns: 300 },
    );
    expect(Math.min(told.near, told.far)).toBeGreaterThan(20);
  });

  it('is the same asked once more, by either of the two, wherever both lie', () => {
    const offset = fc.integer({ min: -130_000, max: 130_000 });
    const told = { near: 0, far: 0 };
    fc.assert(
      fc.property(anyRings, anyRings, offset, offset, offset, (rings, others, x, y, moved) => {
        const lying = (by: number) =>
          [
            { rings, x: by, y: by },
            { rings: others, x: x + by, y: y + by },
          ] as const;
        const [a, b] = lying(0);
        const near = areNearer(a, b, 5000);
        expect(areNearerOnce(a, b, 5000)).toBe(near);
        const [there, too] = lying(moved);
        expect(areNearerOnce(too, there, 5000)).toBe(near);
        expect(areNearerOnce(b, a, 5000)).toBe(near);
        // Another distance, or another lie, is another question.
        expect(areNearerOnce(a, b, 90_000)).toBe(areNearer(a, b, 90_000));
        const beside = { ...b, x: b.x - 40_000 };
        expect(areNearerOnce(a, beside, 5000)).toBe(areNearer(a, beside, 5000));
        told[near ? 'near' : 'far'] += 1;
      }),
    );
    expect(Math.min(told.near, told.far)).toBeGreaterThan(10);
  });
});
