import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layWhite } from '../../../src/artwork/white';
import { createWhitePlane } from '../../../src/output/print-image';
import { fromMm } from '../../../src/units';

const INCH = 25.4;

/** The plane of an image that comes in strips of some rows. */
function planeOf(pixels: Uint32Array, width: number, ppi: number, choke: number, rows: number): Uint8Array {
  const plane = createWhitePlane({ width, ppi }, fromMm(choke));
  const parts: Uint8Array[] = [];
  for (let from = 0; from < pixels.length; from += rows * width) {
    parts.push(plane.push(pixels.subarray(from, from + rows * width)));
  }
  parts.push(plane.end());
  return new Uint8Array(Buffer.concat(parts));
}

/** A shape by the distance to its edge in millimetres, negative within it, drawn with smoothed edges. */
function drawn(side: number, ppi: number, shape: (x: number, y: number) => number, opacity = 1): Uint32Array {
  const [n, pixel] = [Math.round((side * ppi) / INCH), INCH / ppi];
  return Uint32Array.from({ length: n * n }, (_, at) => {
    const share = 0.5 - shape(((at % n) + 0.5) * pixel, (Math.floor(at / n) + 0.5) * pixel) / pixel;
    const alpha = Math.round(255 * opacity * Math.min(1, Math.max(0, share)));
    return ((alpha << 24) | 0x3c1ec8) >>> 0;
  });
}

const areaOf = (plane: Uint8Array, ppi: number) =>
  plane.reduce((sum, value) => sum + value / 255, 0) * (INCH / ppi) ** 2;

describe('the plane of white', () => {
  it.each([
    [150, 0.2],
    [300, 0],
    [300, 0.1],
    [300, 0.2],
    [300, 0.5],
    [600, 0.2],
    [720, 0.15],
  ])('at %i ppi is what shapes are, less %f mm on every side', (ppi, choke) => {
    const side = 24;
    const n = Math.round((side * ppi) / INCH);
    const area = (shape: (x: number, y: number) => number) =>
      areaOf(planeOf(drawn(side, ppi, shape), n, ppi, choke, 100), ppi);
    // Closed forms; the edge of the white lies within 0.025 mm all round, half a pixel of 600 ppi and some.
    const disc = area((x, y) => Math.hypot(x - 12, y - 12) - 9);
    expect(Math.abs(disc - Math.PI * (9 - choke) ** 2)).toBeLessThan(2 * Math.PI * 9 * 0.025);
    const turned = (degrees: number) => (x: number, y: number) => {
      const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const [u, v] = [c * (x - 12) + s * (y - 12), c * (y - 12) - s * (x - 12)];
      return Math.max(Math.abs(u) - 7, Math.abs(v) - 5);
    };
    for (const degrees of [17, 45, 76]) {
      const left = (14 - 2 * choke) * (10 - 2 * choke);
      expect(Math.abs(area(turned(degrees)) - left)).toBeLessThan(48 * 0.025);
    }
    const ring = area((x, y) => Math.abs(Math.hypot(x - 12, y - 12) - 8) - 1);
    expect(Math.abs(ring - Math.PI * ((9 - choke) ** 2 - (7 + choke) ** 2))).toBeLessThan(
      2 * Math.PI * 16 * 0.025,
    );
  });

  it('is as dense as the ink is', () => {
    const half = planeOf(
      drawn(10, 300, (x, y) => Math.hypot(x - 5, y - 5) - 4, 0.5),
      118,
      300,
      0.2,
      50,
    );
    expect(half[59 * 118 + 59]).toBe(128);
    expect(Math.abs(areaOf(half, 300) - (Math.PI * 3.8 ** 2) / 2)).toBeLessThan(0.2);
  });

  it('is the same however high the strips are, and that of the preview', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 17 }),
        fc.constantFrom(0, 0.05, 0.2, 0.4),
        fc.infiniteStream(fc.constantFrom(0, 0, 90, 255, 255, 255, 255)),
        (width, height, rows, choke, alphas) => {
          const alpha = Uint8Array.from({ length: width * height }, () => alphas.next().value ?? 0);
          const pixels = Uint32Array.from(alpha, (value) => (value << 24) >>> 0);
          const whole = planeOf(pixels, width, 300, choke, height);
          expect(planeOf(pixels, width, 300, choke, rows)).toEqual(whole);
          const rgba = new Uint8ClampedArray(pixels.slice().buffer);
          layWhite({ rgba, width, height }, { x: 25_400 / 300, y: 25_400 / 300 }, fromMm(choke));
          expect(rgba.filter((_, at) => at % 4 === 3)).toEqual(Uint8ClampedArray.from(whole));
        },
      ),
      { numRuns: 60 },
    );
  });

  it('holds no more rows than the choke reaches', () => {
    const plane = createWhitePlane({ width: 500, ppi: 300 }, fromMm(0.2));
    const strip = new Uint32Array(500 * 40).fill(0xff000000);
    // 0.2 mm are 2.4 pixels.
    expect(plane.push(strip).length / 500).toBeGreaterThan(30);
    for (let count = 0; count < 5; count += 1) expect(plane.push(strip).length).toBe(strip.length);
  });
});
