import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AlphaRaster } from '../../src/artwork/alpha';
import { alphaBuilder } from '../../src/artwork/alpha';
import { contours, outlineLength, signedArea, simplify } from '../../src/artwork/contour';
import { paint, shape, smoothEdge } from './pixels';

function rasterOf(n: number, ink: Parameters<typeof paint>[2]): AlphaRaster {
  const { raster, add } = alphaBuilder(n, n, 1, 3);
  add(paint(n, n, ink), 0, n);
  return raster;
}

/** How far the edge of a disc is. */
const edgeOf = (n: number, share: number) => (x: number, y: number) =>
  Math.hypot(x - n / 2, y - n / 2) - share * n;
const hardEdge = (edge: (x: number, y: number) => number) => shape((x, y) => edge(x, y) < 0);

describe('contours', () => {
  it('of a smoothed disc have its area within a thousandth, from 100 pixels on', () => {
    for (const n of [100, 200, 400]) {
      const [line, ...others] = contours(rasterOf(n, smoothEdge(edgeOf(n, 0.4))), 128);
      if (!line) throw new Error('no line');
      expect(others).toEqual([]);
      expect(Math.abs(signedArea(line) / (Math.PI * (0.4 * n) ** 2) - 1)).toBeLessThan(1e-3);
    }
  });

  it('of a hole run the other way', () => {
    const ring = contours(
      rasterOf(
        60,
        shape((x, y) => edgeOf(60, 0.4)(x, y) < 0 && edgeOf(60, 0.2)(x, y) >= 0),
      ),
      128,
    );
    expect(ring.map((line) => Math.sign(signedArea(line))).sort()).toEqual([-1, 1]);
  });

  it('close, and hold exactly the pixels that are ink, whatever the raster', () => {
    const bits = fc.array(fc.boolean(), { minLength: 64, maxLength: 64 });
    fc.assert(
      fc.property(bits, (inked) => {
        const raster = rasterOf(
          8,
          shape((x, y) => inked[Math.floor(y) * 8 + Math.floor(x)] ?? false),
        );
        const lines = contours(raster, 128);
        const held = Array.from(raster.alpha, (_, at) => {
          const [x, y] = [at % raster.width, Math.floor(at / raster.width)];
          return lines.filter((line) => holds(line, x, y)).length % 2 === 1;
        });
        expect(held).toEqual(Array.from(raster.alpha, (alpha) => alpha >= 128));
      }),
    );
  });
});

/** The segments of a closed line, from the last point to the first one first. */
function* segmentsOf(line: readonly number[]): Generator<[number, number, number, number]> {
  for (let at = 0, before = line.length - 2; at < line.length; before = at, at += 2) {
    yield [line[before], line[before + 1], line[at], line[at + 1]] as [number, number, number, number];
  }
}

/** Even-odd: how often a ray to the right crosses the line. */
function holds(line: readonly number[], x: number, y: number): boolean {
  let inside = false;
  for (const [ax, ay, bx, by] of segmentsOf(line)) {
    // The ray runs a hair above the centres, where no point of a line lies.
    const ray = y + 1e-7;
    if (ay > ray !== by > ray && x < ax + ((ray - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  }
  return inside;
}

describe('the outline length', () => {
  const length = (n: number, ink: Parameters<typeof paint>[2]) =>
    outlineLength(contours(rasterOf(n, ink), 128), { x: 100 / n, y: 100 / n });

  it.each([
    ['smoothed', smoothEdge],
    ['hard', hardEdge],
  ])('of a %s disc comes to 2 pi r as pixels get finer', (_, ink) => {
    const errors = [50, 100, 200, 400, 800].map((n) =>
      Math.abs(length(n, ink(edgeOf(n, 0.4))) / (80 * Math.PI) - 1),
    );
    expect(errors[1]).toBeLessThan(0.015);
    expect(errors[4]).toBeLessThan(0.003);
    // Sides grow with the root of the radius in pixels, so the error falls with the pixel's size.
    expect((errors[4] as number) / (errors[0] as number)).toBeLessThan(0.25);
  });

  it('of a square turned by any angle is its sides, holes added', () => {
    for (const angle of [0, 0.2, 0.5, Math.PI / 4]) {
      const turned = (side: number) => (x: number, y: number) => {
        const [dx, dy] = [x - 200, y - 200];
        const u = dx * Math.cos(angle) + dy * Math.sin(angle);
        const v = dy * Math.cos(angle) - dx * Math.sin(angle);
        return Math.max(Math.abs(u), Math.abs(v)) < side / 2;
      };
      const measured = length(
        400,
        shape((x, y) => turned(240)(x, y) && !turned(80)(x, y)),
      );
      expect(Math.abs(measured / 320 - 1)).toBeLessThan(0.01);
    }
  });
});

describe('simplifying', () => {
  it('leaves out no point further from the line than the tolerance', () => {
    const points = fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 })), {
      minLength: 5,
      maxLength: 60,
    });
    fc.assert(
      fc.property(points, fc.constantFrom(0.5, 2, 5), (line, tolerance) => {
        const flat = line.flat();
        const fewer = simplify(flat, tolerance);
        for (const [x, y] of line) expect(distanceTo(fewer, x, y)).toBeLessThanOrEqual(tolerance + 1e-9);
      }),
    );
  });
});

function distanceTo(line: readonly number[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [ax, ay, bx, by] of segmentsOf(line)) {
    const squared = (bx - ax) ** 2 + (by - ay) ** 2;
    const along =
      squared === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / squared));
    least = Math.min(least, Math.hypot(ax + along * (bx - ax) - x, ay + along * (by - ay) - y));
  }
  return least;
}
