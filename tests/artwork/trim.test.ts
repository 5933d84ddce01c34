import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effectivePpi, heightOf, LEAST_ALPHA, trimBox } from '../../src/artwork';
import { fromInches } from '../../src/units';

const blank = (width: number, height: number) => new Uint8ClampedArray(4 * width * height);

describe('the trimmed box', () => {
  it('is none where every pixel is fainter than 8 in 255', () => {
    const pixels = blank(5, 4).fill(LEAST_ALPHA - 1);
    expect(trimBox(pixels, 5, 4)).toBeNull();
  });

  it('holds every pixel that prints, and touches one on each side', () => {
    const points = fc.array(fc.tuple(fc.nat(19), fc.nat(12)), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(points, (inked) => {
        const pixels = blank(20, 13);
        for (const [x, y] of inked) pixels[4 * (y * 20 + x) + 3] = LEAST_ALPHA;
        const [xs, ys] = [inked.map(([x]) => x), inked.map(([, y]) => y)];
        const [x, y] = [Math.min(...xs), Math.min(...ys)];
        expect(trimBox(pixels, 20, 13)).toEqual({
          x,
          y,
          width: Math.max(...xs) - x + 1,
          height: Math.max(...ys) - y + 1,
        });
      }),
    );
  });
});

describe('the printed size', () => {
  it('gives the effective resolution on each axis', () => {
    const ppi = effectivePpi({ width: 900, height: 600 }, { width: fromInches(3), height: fromInches(4) });
    expect(ppi).toEqual({ x: 300, y: 150 });
  });

  it('keeps proportions at a width, also where pixels are not square', () => {
    const pixels = { width: 400, height: 200 };
    expect(heightOf(pixels, fromInches(4), null)).toBe(fromInches(2));
    expect(heightOf(pixels, fromInches(4), { x: 2000, y: 1000 })).toBe(fromInches(4));
  });
});
