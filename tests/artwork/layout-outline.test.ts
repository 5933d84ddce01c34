import { area, difference, FillRule, type Paths64 } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Outline } from '../../src/artwork';
import { startCheck } from '../../src/artwork/check';
import { layoutOutline } from '../../src/artwork/layout-outline';
import { type ArtworkOutline, OUTLINE_STEPS } from '../../src/model';
import { fromMm } from '../../src/units';

const pixels = { width: 1200, height: 800 };
const printed = { width: fromMm(120), height: fromMm(80) };
const paths = (lines: readonly (readonly number[])[], scale: number): Paths64 =>
  lines.map((line) =>
    Array.from({ length: line.length / 2 }, (_, at) => ({
      x: Math.round((line[2 * at] as number) * scale),
      y: Math.round((line[2 * at + 1] as number) * scale),
    })),
  );

/** A wheel of so many rays of unlike lengths, that reaches the sides of its box. */
const wheel = (rays: readonly number[]): number[][] => {
  const points = rays.map((ray, at): [number, number] => {
    const turn = (2 * Math.PI * at) / rays.length;
    return [ray * Math.cos(turn), ray * Math.sin(turn)];
  });
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const sharesOf = (all: number[]) => {
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return all.map((value) => (value - least) / (most - least));
  };
  const [across, down] = [sharesOf(xs), sharesOf(ys)];
  return [points.flatMap((_, at) => [across[at] ?? 0, down[at] ?? 0])];
};
/** A line as a tracer of pixels has it: with corners on its way. */
const asTraced = (line: readonly number[]): number[] =>
  Array.from({ length: line.length / 2 }, (_, at) => at).flatMap((at) =>
    [0, 1 / 3, 2 / 3].flatMap((part) =>
      [0, 1].map((axis) => {
        const [from = 0, to = 0] = [line[2 * at + axis], line[(2 * at + 2 + axis) % line.length]];
        return from + part * (to - from);
      }),
    ),
  );
const anyWheel = fc
  .array(fc.double({ min: 0.3, max: 1, noNaN: true }), { minLength: 8, maxLength: 60 })
  .map(wheel);

const reach = (outline: ArtworkOutline) => {
  const [xs, ys] = [0, 1].map((axis) => outline.flatMap((line) => line.filter((_, at) => at % 2 === axis)));
  return [xs, ys].map((all) => [Math.min(...(all ?? [])), Math.max(...(all ?? []))]);
};

/** A ring of hard pixels, as its check outlines it. */
function checkedRing(): { outline: Outline; pixels: { width: number; height: number } } {
  const side = 200;
  const data = new Uint8ClampedArray(4 * side * side);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1) {
      const off = Math.hypot(x - 99.5, y - 99.5);
      if (off < 100 && off > 60) data.set([180, 60, 40, 255], 4 * (y * side + x));
    }
  const own = { width: side, height: side };
  const limits = { stroke: fromMm(0.5), opening: fromMm(0.8), choke: fromMm(0.2), white: fromMm(0) };
  const check = startCheck(own, { width: fromMm(50), height: fromMm(50) }, limits);
  check.add(data, 0, side);
  return { outline: check.finish(() => undefined).outline, pixels: own };
}

describe('the outline that copies are laid out by', () => {
  it('is found from what a check outlines, holes and all', () => {
    const { outline, pixels: own } = checkedRing();
    const found = layoutOutline(outline, { width: fromMm(50), height: fromMm(50) }, own);
    const covered = paths(found ?? [], 1).reduce((sum, path) => sum + area(path), 0) / OUTLINE_STEPS ** 2;
    // A ring in its box, by the closed form.
    const ring = (Math.PI / 4) * (1 - 0.6 ** 2);
    expect(covered).toBeGreaterThan(ring);
    expect(covered).toBeLessThan(ring + 0.1);
    expect(found).toHaveLength(2);
  });

  const square = (from: number, to: number) => [from, from, to, from, to, to, from, to];
  const hole = (from: number, to: number) => [from, from, from, to, to, to, to, from];
  it.each([
    ['bare and wide', [square(0, 1), hole(0.2, 0.8)], 1],
    ['with an island in it, which would fall out', [square(0, 1), hole(0.2, 0.8), square(0.4, 0.6)], 0],
    ['too small for any copy', [square(0, 1), hole(0.45, 0.5)], 0],
  ])('has a hole that is %s, or has none', (_, outline, holes) => {
    const found = layoutOutline(
      outline,
      { width: fromMm(100), height: fromMm(100) },
      { width: 1000, height: 1000 },
    );
    const areas = paths(found ?? [], 1).map((path) => area(path) / OUTLINE_STEPS ** 2);
    expect(areas.filter((each) => each > 0)).toEqual([1]);
    const bare = areas.filter((each) => each < 0);
    expect(bare).toHaveLength(holes);
    // Told 0.2% of the side and a pixel too small, so that no ink lies within.
    for (const each of bare) expect(-each).toBeCloseTo(0.594 ** 2, 2);
  });

  it('has no ink in its holes, and keeps them apart from what ties its islands', () => {
    const anyHole = fc.tuple(
      fc.double({ min: 0.15, max: 0.5, noNaN: true }),
      fc.array(fc.double({ min: 0.6, max: 1, noNaN: true }), { minLength: 8, maxLength: 40 }),
    );
    fc.assert(
      fc.property(anyHole, fc.boolean(), ([size, rays], hasIsland) => {
        const wide = hasIsland ? 0.8 : 1;
        const inner = wheel(rays)[0] ?? [];
        const bare = inner.map((value, at) => (at % 2 === 0 ? wide / 2 : 0.5) + size * (value - 0.5) * 0.9);
        const points = Array.from({ length: bare.length / 2 }, (_, at) => [
          bare[2 * at] ?? 0,
          bare[2 * at + 1] ?? 0,
        ]);
        const outline = [
          [0, 0, wide, 0, wide, 1, 0, 1],
          points.toReversed().flat(),
          ...(hasIsland ? [[0.9, 0, 1, 0, 1, 1, 0.9, 1]] : []),
        ];
        const found = layoutOutline(outline, printed, pixels) ?? expect.fail();
        const outside = difference(paths(outline, OUTLINE_STEPS), paths(found, 1), FillRule.NonZero);
        expect(Math.abs(outside.reduce((sum, path) => sum + area(path), 0))).toBeLessThan(OUTLINE_STEPS * 4);
        expect(paths(found, 1).filter((path) => area(path) > 0)).toHaveLength(1);
      }),
    );
  });

  it('holds all that prints, touches all sides of the box, and has few corners', () => {
    fc.assert(
      fc.property(anyWheel, (outline) => {
        const found = layoutOutline(outline, printed, pixels);
        if (!found) return;
        const outside = difference(paths(outline, OUTLINE_STEPS), paths(found, 1), FillRule.NonZero);
        // Corners are told in steps: half of one may be lost along a border.
        expect(Math.abs(outside.reduce((sum, path) => sum + area(path), 0))).toBeLessThan(OUTLINE_STEPS * 4);
        expect(reach(found)).toEqual([
          [0, OUTLINE_STEPS],
          [0, OUTLINE_STEPS],
        ]);
        expect(found.flat().length / 2).toBeLessThanOrEqual(120);
      }),
    );
  });

  it('is one piece, so that the letters of a name do not fall apart when they are cut', () => {
    const letters = Array.from({ length: 6 }, (_, at) =>
      [0.17, 0, 0.17, 1, 0, 1, 0, 0].map((value, axis) =>
        axis % 2 === 0 ? (at * 1) / 6 + value * (at === 5 ? 0.98 : 0.6) : value,
      ),
    );
    const found = layoutOutline(letters, printed, pixels);
    expect(found).toHaveLength(1);
    const outside = difference(paths(letters, OUTLINE_STEPS), paths(found ?? [], 1), FillRule.NonZero);
    expect(Math.abs(outside.reduce((sum, path) => sum + area(path), 0))).toBeLessThan(OUTLINE_STEPS * 4);
    // What ties them takes little: five bars between strokes 10 to 20 mm apart.
    const covered = paths(found ?? [], 1).reduce((sum, path) => sum + area(path), 0);
    const ink = Math.abs(paths(letters, OUTLINE_STEPS).reduce((sum, path) => sum + area(path), 0));
    expect(covered).toBeLessThan(1.15 * ink);
  });

  it('holds rules and dots that are thinner than it is told finely, beside lines of many corners', () => {
    const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
    const thin = fc.double({ min: 0.0005, max: 0.01, noNaN: true });
    const strip = (x: number, y: number, width: number, height: number) => [
      [x, y, x + width, y, x + width, y + height, x, y + height],
    ];
    const slanted = fc
      .tuple(share, share, thin)
      .map(([x, y, width]) => [[0.02, y * 0.9, 0.02 + width, y * 0.9, x * 0.9 + width, 0.95, x * 0.9, 0.95]]);
    const any = fc.oneof(
      fc.tuple(share, thin).map(([y, height]) => strip(0, y * 0.98, 1, height)),
      fc.tuple(share, thin).map(([x, width]) => strip(x * 0.98, 0, width, 1)),
      fc.tuple(share, share, thin).map(([x, y, side]) => strip(x * 0.98, y * 0.98, side, side)),
      slanted,
    );
    fc.assert(
      fc.property(anyWheel, fc.array(any, { minLength: 1, maxLength: 4 }), (round, thins) => {
        // The wheel lies in the middle: what is thin reaches the sides.
        const inner = round.map((line) => line.map((at) => 0.2 + 0.6 * at));
        const outline = [...inner, ...thins.flat().map(asTraced)];
        const found = layoutOutline(outline, printed, pixels);
        if (!found) return;
        for (const line of outline) {
          const outside = difference(paths([line], OUTLINE_STEPS), paths(found, 1), FillRule.NonZero);
          expect(Math.abs(outside.reduce((sum, path) => sum + area(path), 0))).toBeLessThan(
            OUTLINE_STEPS * 4,
          );
        }
      }),
    );
  });

  it.each([
    ['nothing prints', []],
    ['one pixel prints', [[0, 0, 1, 0, 1, 1, 0, 1]]],
    ['its line is a point', [[0.5, 0.5, 0.5, 0.5, 0.5, 0.5]]],
    ['its line crosses itself', [[0, 0, 1, 1, 1, 0, 0, 1]]],
    [
      'it has a hundred thousand corners',
      wheel(Array.from({ length: 100_000 }, (_, at) => (at % 2 === 0 ? 1 : 0.3))),
    ],
    [
      'it is a thousand specks',
      Array.from({ length: 1000 }, (_, at) => {
        const [x, y] = [(at % 40) / 40, Math.floor(at / 40) / 25];
        return [x, y, x + 0.01, y, x + 0.01, y + 0.01, x, y + 0.01];
      }),
    ],
  ])('is one that holds, or the box, where %s', (_, outline) => {
    const found = layoutOutline(outline, printed, pixels);
    expect(found === null || found.flat().length <= 240).toBe(true);
    if (found) expect(found.flat().every((step) => step >= 0 && step <= OUTLINE_STEPS)).toBe(true);
  });
});
