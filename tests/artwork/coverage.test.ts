import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addInk, coverageOf, noInk } from '../../src/artwork/coverage';
import { fromMm } from '../../src/units';
import { CLEAR, paint, shape, smoothEdge } from './pixels';

const SIDE = 100;
const printed = { width: fromMm(SIDE), height: fromMm(SIDE) };

/** White on a 100 mm square, looked at in n x n pixels. */
function white(n: number, ink: Parameters<typeof paint>[2]): number {
  const sums = noInk();
  addInk(sums, paint(n, n, ink));
  return coverageOf(sums, { width: n, height: n }, printed).white;
}

/** The root of the mean of squared errors over shifts by parts of a pixel, as a share of the true area. */
function spread(
  n: number,
  area: number,
  inside: (x: number, y: number, dx: number, dy: number) => boolean,
): number {
  let sum = 0;
  const shifts = [0, 0.21, 0.43, 0.64, 0.87];
  for (const dx of shifts) {
    for (const dy of shifts) {
      const measured = white(
        n,
        shape((x, y) => inside(x, y, dx, dy)),
      );
      sum += (measured / area - 1) ** 2;
    }
  }
  return Math.sqrt(sum / shifts.length ** 2);
}

const resolutions = [50, 100, 200, 400];

/** The power of the pixel's size that an error falls with: the slope of the least squares line through the logarithms. */
function rate(errors: readonly number[]): number {
  const xs = resolutions.map((n) => Math.log(1 / n));
  const ys = errors.map(Math.log);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [mx, my] = [mean(xs), mean(ys)];
  const over = xs.reduce((sum, x, index) => sum + (x - mx) * ((ys[index] as number) - my), 0);
  return over / xs.reduce((sum, x) => sum + (x - mx) ** 2, 0);
}

describe('white coverage', () => {
  // D. G. Kendall, "On the number of lattice points inside a random oval", 1948: the mean square error of counting
  // centres in an oval of radius r pixels is of order r, so the error as a share of the area falls as h^(3/2).
  it('of a disc of hard pixels errs by h to the power of 3/2', () => {
    const errors = resolutions.map((n) => {
      const r = 0.42 * n;
      return spread(
        n,
        Math.PI * (0.42 * SIDE) ** 2,
        (x, y, dx, dy) => Math.hypot(x - n / 2 - dx, y - n / 2 - dy) < r,
      );
    });
    expect(rate(errors)).toBeGreaterThan(1.25);
    expect(rate(errors)).toBeLessThan(1.75);
    expect(errors.at(-1)).toBeLessThan(3e-4);
  });

  it('of an annulus of hard pixels does too', () => {
    const area = Math.PI * ((0.42 * SIDE) ** 2 - (0.27 * SIDE) ** 2);
    const errors = resolutions.map((n) =>
      spread(n, area, (x, y, dx, dy) => {
        const r = Math.hypot(x - n / 2 - dx, y - n / 2 - dy);
        return r < 0.42 * n && r > 0.27 * n;
      }),
    );
    expect(rate(errors)).toBeGreaterThan(1.25);
    expect(rate(errors)).toBeLessThan(1.75);
  });

  it('of a smoothed disc is right to two parts in ten thousand from 100 pixels on', () => {
    for (const n of [100, 200]) {
      const measured = white(
        n,
        smoothEdge((x, y) => Math.hypot(x - n / 2, y - n / 2) - 0.42 * n),
      );
      expect(Math.abs(measured / (Math.PI * 42 ** 2) - 1)).toBeLessThan(2e-4);
    }
  });

  it('of a checker is exactly half', () => {
    for (const n of [20, 100, 200]) {
      const cell = n / 10;
      expect(
        white(
          n,
          shape((x, y) => (Math.floor(x / cell) + Math.floor(y / cell)) % 2 === 0),
        ),
      ).toBeCloseTo(5000, 6);
    }
  });

  // The midpoint rule is exact for a straight ramp, and errs by h^2 / 12 for a squared one; alpha's steps of 1/255 add
  // at most half a step, and far less on the mean.
  it('of a ramp is exact but for the steps of alpha, of a squared one errs by no more than h squared', () => {
    for (const n of [50, 250, 500]) {
      const ramp = white(n, (x) => [0, 0, 0, Math.round((255 * x) / n)]);
      expect(Math.abs(ramp / 5000 - 1)).toBeLessThan(1e-3);
      const squared = white(n, (x) => [0, 0, 0, Math.round(255 * (x / n) ** 2)]);
      expect(Math.abs(squared / (10_000 / 3) - 1)).toBeLessThan(0.25 / n ** 2 + 2e-3);
    }
  });
});

describe('colour coverage', () => {
  const of = (colour: readonly [number, number, number, number]) => {
    const sums = noInk();
    addInk(
      sums,
      paint(10, 10, () => colour),
    );
    return coverageOf(sums, { width: 10, height: 10 }, printed).colour;
  };

  it('is none on white, all of it on black and on full tones, half on a middle grey', () => {
    expect(of([255, 255, 255, 255])).toBe(0);
    expect(of([0, 0, 0, 255])).toBeCloseTo(10_000, 6);
    expect(of([255, 0, 0, 255])).toBeCloseTo(10_000, 6);
    expect(of([128, 128, 128, 255])).toBeCloseTo((10_000 * 127) / 255, 6);
    expect(of(CLEAR)).toBe(0);
  });

  it('counts what bears ink from an alpha of 8 on', () => {
    const sums = noInk();
    addInk(
      sums,
      paint(2, 1, (x) => [0, 0, 0, x < 1 ? 7 : 8]),
    );
    expect(sums.bearing).toBe(1);
  });
});

describe('sums of ink', () => {
  const ink = fc.constantFrom<readonly [number, number, number, number]>(
    [0, 0, 0, 0],
    [10, 30, 40, 255],
    [41, 40, 0, 128],
    [200, 120, 90, 7],
    [255, 255, 255, 9],
  );
  const runs = fc.array(fc.tuple(ink, fc.integer({ min: 1, max: 9 })), { maxLength: 20 });

  it('are those of each pixel by itself, whatever runs of equal ones there are', () => {
    fc.assert(
      fc.property(runs, (parts) => {
        const pixels = parts.flatMap(([pixel, count]) => Array.from({ length: count }, () => pixel));
        const sums = noInk();
        addInk(sums, Uint8ClampedArray.from(pixels.flat()));
        const sum = (of: (pixel: readonly [number, number, number, number]) => number) =>
          pixels.reduce((total, pixel) => total + of(pixel), 0);
        expect(sums.bearing).toBe(sum(([, , , alpha]) => (alpha >= 8 ? 1 : 0)));
        expect(sums.white).toBeCloseTo(
          sum(([, , , alpha]) => alpha / 255),
          9,
        );
        expect(sums.colour).toBeCloseTo(
          sum(([r, g, b, alpha]) => (alpha / 255) * (1 - Math.min(r, g, b) / 255)),
          9,
        );
        expect(sums.black).toBe(sum(([r, g, b, alpha]) => (alpha >= 128 && Math.max(r, g, b) <= 40 ? 1 : 0)));
      }),
    );
  });
});
