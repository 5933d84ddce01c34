import { describe, expect, it } from 'vitest';
import { type AlphaRaster, alphaBuilder } from '../../src/artwork/alpha';
import { type Contour, signedArea } from '../../src/artwork/contour';
import { growOutline, outlineOf as outlineOfShares } from '../../src/artwork/outline';
import { printing } from '../../src/artwork/printing';
import { fromMm, type Micrometres } from '../../src/units';

/** A shape in millimetres by the distance to its edge, negative within it. */
type Shape = (x: number, y: number) => number;

const outlineOf = (raster: AlphaRaster, printed: Parameters<typeof outlineOfShares>[1]) =>
  outlineOfShares(printing(raster), printed);

const INCH = 25.4;
/** How far from the edge of a shape a line may be drawn, in millimetres. */
const TRUE_WITHIN = 0.1;

const discAt =
  (cx: number, cy: number, r: number): Shape =>
  (x, y) =>
    Math.sqrt((x - cx) ** 2 + (y - cy) ** 2) - r;

/** Distance to a box, by its nearest side or corner. */
function boxAt(cx: number, cy: number, width: number, height: number, turn = 0): Shape {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return (x, y) => {
    const [u, v] = [x - cx, y - cy];
    const dx = Math.abs(u * cos + v * sin) - width / 2;
    const dy = Math.abs(v * cos - u * sin) - height / 2;
    return Math.sqrt(Math.max(dx, 0) ** 2 + Math.max(dy, 0) ** 2) + Math.min(0, Math.max(dx, dy));
  };
}

const without =
  (outer: Shape, inner: Shape): Shape =>
  (x, y) =>
    Math.max(outer(x, y), -inner(x, y));

/** An image of a shape: edges smoothed over a pixel, or hard. */
function rasterOf(
  width: number,
  height: number,
  ppi: number,
  shape: Shape,
  edge: 'hard' | 'smooth',
): { raster: AlphaRaster; printed: { width: Micrometres; height: Micrometres } } {
  const [across, down] = [Math.round((width * ppi) / INCH), Math.round((height * ppi) / INCH)];
  const pixel = INCH / ppi;
  const { raster, add } = alphaBuilder(across, down, 1, 3);
  const row = new Uint8ClampedArray(4 * across);
  for (let y = 0; y < down; y += 1) {
    for (let x = 0; x < across; x += 1) {
      const inside = 0.5 - shape((x + 0.5) * pixel, (y + 0.5) * pixel) / pixel;
      row[4 * x + 3] = 255 * (edge === 'hard' ? Number(inside > 0.5) : Math.min(1, Math.max(0, inside)));
    }
    add(row, y, 1);
  }
  return { raster, printed: { width: fromMm(across * pixel), height: fromMm(down * pixel) } };
}

/** Points along a line, its corners and middles, in millimetres. */
function* along(line: Contour): Generator<[number, number]> {
  for (let at = 0, before = line.length - 2; at < line.length; before = at, at += 2) {
    const [ax, ay] = [(line[before] as number) / 1000, (line[before + 1] as number) / 1000];
    const [bx, by] = [(line[at] as number) / 1000, (line[at + 1] as number) / 1000];
    yield [bx, by];
    yield [(ax + bx) / 2, (ay + by) / 2];
  }
}

/** How far lines lie from a distance around a shape at most. */
function furthest(lines: readonly Contour[], shape: Shape, by: number): number {
  let most = 0;
  for (const line of lines)
    for (const [x, y] of along(line)) most = Math.max(most, Math.abs(shape(x, y) - by));
  return most;
}

const areaOf = (lines: readonly Contour[]) => lines.reduce((sum, line) => sum + signedArea(line), 0) / 1e6;

const disc = discAt(21, 21, 20);
const ring = without(discAt(21, 21, 20), discAt(21, 21, 9));
const strip = boxAt(100, 6, 196, 8);
const framed = without(boxAt(31, 21, 56, 34, 0.1), boxAt(31, 21, 30, 20, 0.4));

describe.each(['hard', 'smooth'] as const)('the outline of a shape with %s edges', (edge) => {
  it.each([150, 300, 600])(
    'lies within 0.1 mm of a disc, a ring, a long strip and a turned frame with a turned hole, at %i ppi',
    (ppi) => {
      for (const [shape, width, height, lines] of [
        [disc, 42, 42, 1],
        [ring, 42, 42, 2],
        [strip, 200, 12, 1],
        [framed, 62, 42, 2],
      ] as const) {
        const { raster, printed } = rasterOf(width, height, ppi, shape, edge);
        const outline = growOutline(outlineOf(raster, printed), printed, fromMm(0));
        expect(outline).toHaveLength(lines);
        expect(furthest(outline, shape, 0)).toBeLessThan(TRUE_WITHIN);
      }
    },
  );

  it.each([0.5, 2.5])('grown by %f mm lies within 0.1 mm of that distance, holes grown inwards', (by) => {
    // Around convex corners, and around holes without corners, the distance is the closed form's own.
    for (const [shape, width, height, lines] of [
      [disc, 42, 42, 1],
      [ring, 42, 42, 2],
      [strip, 200, 12, 1],
    ] as const) {
      const { raster, printed } = rasterOf(width, height, 300, shape, edge);
      const outline = growOutline(outlineOf(raster, printed), printed, fromMm(by));
      expect(outline).toHaveLength(lines);
      expect(furthest(outline, shape, by)).toBeLessThan(TRUE_WITHIN);
    }
  });

  it('has the areas of closed forms: pi r², and by the formula of Steiner for what is grown', () => {
    const { raster, printed } = rasterOf(42, 42, 300, ring, edge);
    const outline = outlineOf(raster, printed);
    expect(areaOf(growOutline(outline, printed, fromMm(0)))).toBeCloseTo(Math.PI * (400 - 81), -1);
    expect(areaOf(growOutline(outline, printed, fromMm(2.5)))).toBeCloseTo(
      Math.PI * (22.5 ** 2 - 6.5 ** 2),
      -1,
    );
    const box = rasterOf(200, 12, 300, strip, edge);
    const grown = areaOf(growOutline(outlineOf(box.raster, box.printed), box.printed, fromMm(2.5)));
    // J. Steiner, 1840: A + P d + pi d² for convex bodies.
    expect(grown / (196 * 8 + 2 * 204 * 2.5 + Math.PI * 2.5 ** 2)).toBeCloseTo(1, 2);
  });
});

describe('an outline', () => {
  it('closes holes that are narrower than twice what it is grown by', () => {
    const { raster, printed } = rasterOf(42, 42, 300, without(discAt(21, 21, 20), discAt(21, 21, 2)), 'hard');
    const outline = outlineOf(raster, printed);
    expect(outline).toHaveLength(2);
    expect(growOutline(outline, printed, fromMm(2.5))).toHaveLength(1);
  });

  it('holds what is faint and lies by itself, and goes through a haze where it ends', () => {
    const alphaAt = (x: number, y: number) =>
      Math.hypot(x - 10, y - 10) < 6 ? 255 : Math.hypot(x - 30, y - 10) < 5 ? 40 : 0;
    const { raster, add } = alphaBuilder(400, 200, 1, 3);
    for (let y = 0; y < 200; y += 1) {
      const row = new Uint8ClampedArray(1600);
      for (let x = 0; x < 400; x += 1) row[4 * x + 3] = alphaAt((x + 0.5) / 10, (y + 0.5) / 10);
      add(row, y, 1);
    }
    const printed = { width: fromMm(40), height: fromMm(20) };
    const lines = growOutline(outlineOf(raster, printed), printed, fromMm(0));
    const both: Shape = (x, y) => Math.min(discAt(10, 10, 6)(x, y), discAt(30, 10, 5)(x, y));
    expect(lines).toHaveLength(2);
    expect(furthest(lines, both, 0)).toBeLessThan(TRUE_WITHIN);
  });

  it('of a fine screen of dots is kept in few points, and all of it still lies inside', () => {
    const dots: Shape = (x, y) => Math.sqrt(((x % 0.6) - 0.3) ** 2 + ((y % 0.6) - 0.3) ** 2) - 0.2;
    const { raster, printed } = rasterOf(120, 120, 300, dots, 'smooth');
    const outline = outlineOf(raster, printed);
    expect(outline.reduce((sum, line) => sum + line.length / 2, 0)).toBeLessThan(40_000);
    const [around, ...others] = growOutline(outline, printed, fromMm(2.5));
    expect(others).toEqual([]);
    // Dots end 0.1 mm before the edge of the sheet.
    expect(furthest([around as Contour], boxAt(60, 60, 119.8, 119.8), 2.5)).toBeLessThan(0.5);
  });
});
