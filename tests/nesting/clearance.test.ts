import { area, FillRule, intersect, type Paths64 } from 'clipper2-ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Clearance, clearance, mirrored } from '../../src/nesting/clearance';
import { shapeOf } from '../../src/nesting/shape';
import type { Ring } from '../../src/outlines';
import { anyRings, box } from './outlines';

const HEIGHT = 1500;
const shape = (rings: readonly Ring[], gap = 0) => shapeOf(0, rings, 0, { gap, height: HEIGHT });

const allows = ({ before, starts, from, to }: Clearance, across: number, rows: number): boolean => {
  const step = rows + before;
  if (step < 0 || step >= starts.length - 1) return true;
  for (let at = starts[step] as number; at < (starts[step + 1] as number); at += 1) {
    if ((from[at] as number) < across && across < (to[at] as number)) return false;
  }
  return true;
};

const paths = (rings: readonly Ring[], across: number, along: number): Paths64 =>
  rings.map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, at) => ({
      x: (ring[2 * at] as number) + across,
      y: (ring[2 * at + 1] as number) + along,
    })),
  );
/** The area that two outlines share, by a library that shares no code with rows. */
const shared = (a: readonly Ring[], b: readonly Ring[], across: number, along: number): number =>
  intersect(paths(a, 0, 0), paths(b, across, along), FillRule.NonZero).reduce(
    (sum, path) => sum + area(path),
    0,
  );

const places = fc.tuple(fc.integer({ min: -130_000, max: 130_000 }), fc.integer({ min: -85, max: 85 }));

it('where a shape may lie, the outlines share nothing', () => {
  fc.assert(
    fc.property(anyRings, anyRings, fc.array(places, { minLength: 20, maxLength: 20 }), (a, b, all) => {
      const clear = clearance(shape(a), shape(b));
      for (const [across, rows] of all) {
        if (allows(clear, across, rows)) expect(shared(a, b, across, rows * HEIGHT)).toBeLessThan(1);
      }
    }),
  );
});

it('where it may not, the outlines grown by a row share something', () => {
  fc.assert(
    fc.property(anyRings, anyRings, fc.array(places, { minLength: 20, maxLength: 20 }), (a, b, all) => {
      const clear = clearance(shape(a), shape(b));
      for (const [across, rows] of all) {
        if (allows(clear, across, rows)) continue;
        const near = [-HEIGHT, 0, HEIGHT].some((more) => shared(a, b, across, rows * HEIGHT + more) > 0);
        expect(near).toBe(true);
      }
    }),
  );
});

it('boxes clear each other exactly, with the gap between them', () => {
  const [a, b] = [shape([box(30, 30)], 6000), shape([box(15, 45)], 6000)];
  const clear = clearance(a, b);
  // 6 mm, and what round corners are grown for.
  expect(allows(clear, 36_040, 0)).toBe(true);
  expect(allows(clear, 35_990, 0)).toBe(false);
  expect(allows(clear, -21_040, 3)).toBe(true);
  expect(allows(clear, 0, a.rows)).toBe(true);
  expect(allows(clear, 0, a.rows - 1)).toBe(false);
  expect(allows(clear, 0, -b.rows)).toBe(true);
});

it('of two the other way round it is the mirror', () => {
  fc.assert(
    fc.property(anyRings, anyRings, places, (a, b, [across, rows]) => {
      const clear = clearance(shape(a), shape(b));
      const other = mirrored(clear);
      expect(allows(other, -across, -rows)).toBe(allows(clear, across, rows));
      expect(allows(clearance(shape(b), shape(a)), -across, -rows)).toBe(allows(clear, across, rows));
    }),
  );
});
