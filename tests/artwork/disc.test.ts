import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BitMask, bitMask, isIn, outOf } from '../../src/artwork/bit-mask';
import { discOf, grow, stepsOf } from '../../src/artwork/disc';

function maskOf(width: number, height: number, bits: readonly boolean[]): BitMask {
  const mask = bitMask(width, height);
  bits.forEach((bit, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    if (bit) (mask.words[y * mask.span + (x >> 5)] as number) |= 1 << (x & 31);
  });
  return mask;
}

/** Widths on both sides of one and of two words. */
const raster = fc
  .record({
    width: fc.oneof(fc.integer({ min: 1, max: 24 }), fc.constantFrom(31, 32, 33, 64, 65)),
    height: fc.integer({ min: 1, max: 14 }),
    often: fc.constantFrom(2, 9, 60),
  })
  .chain(({ width, height, often }) =>
    fc.record({
      width: fc.constant(width),
      height: fc.constant(height),
      bits: fc.array(
        fc.nat(often).map((value) => value === 0),
        { minLength: width * height, maxLength: width * height },
      ),
    }),
  );
/** Ink that fills words to the brim, some of it from a word's own edge on, with bare rows about it and holes in it. */
const solid = fc
  .record({
    width: fc.constantFrom(96, 110, 128, 150),
    height: fc.integer({ min: 3, max: 8 }),
    left: fc.constantFrom(0, 7, 32),
    right: fc.constantFrom(0, 22, 32),
    bare: fc.nat(2),
    holes: fc.array(fc.nat(150 * 8 - 1), { maxLength: 3 }),
  })
  .map(({ width, height, left, right, bare, holes }) => ({
    width,
    height,
    bits: Array.from({ length: width * height }, (_, at) => {
      const [x, y] = [at % width, Math.floor(at / width)];
      return x >= left && x < width - right && y >= bare && !holes.includes(at);
    }),
  }));
const pitches = fc.record({ x: fc.constantFrom(1, 2, 0.7), y: fc.constantFrom(1, 1.5) });
const radii = fc.double({ min: 0.1, max: 40, noNaN: true });

describe('a mask grown by a disc', () => {
  it('holds the pixels whose distance to any of the mask is less than the radius', () => {
    fc.assert(
      fc.property(
        fc.oneof({ weight: 3, arbitrary: raster }, solid),
        pitches,
        radii,
        ({ width, height, bits }, pitch, radius) => {
          const grown = grow(maskOf(width, height, bits), discOf(radius, pitch));
          const ones = bits.flatMap((bit, at) =>
            bit ? [[at % width, Math.floor(at / width)] as const] : [],
          );
          const wrong = bits.filter((_, at) => {
            const [x, y] = [at % width, Math.floor(at / width)];
            let least = Number.POSITIVE_INFINITY;
            for (const [ownX, ownY] of ones)
              least = Math.min(least, ((ownX - x) * pitch.x) ** 2 + ((ownY - y) * pitch.y) ** 2);
            const far = Math.sqrt(least) - radius;
            // A distance that is the radius itself is rounded to either side.
            return Math.abs(far) > 1e-9 && isIn(grown, x, y) !== far < 0;
          });
          expect(wrong).toEqual([]);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('keeps the bits beyond its width clear, as the pixels out of a mask do', () => {
    fc.assert(
      fc.property(raster, pitches, radii, ({ width, height, bits }, pitch, radius) => {
        const mask = maskOf(width, height, bits);
        for (const made of [outOf(mask), grow(mask, discOf(radius, pitch)), grow(outOf(mask), [2, 1])]) {
          for (let y = 0; y < height; y += 1) {
            for (let x = width; x < 32 * made.span; x += 1) expect(isIn(made, x, y)).toBe(false);
          }
        }
      }),
      { numRuns: 50 },
    );
  });
});

describe('the pixels out of a mask', () => {
  it('are those that are not in it', () => {
    fc.assert(
      fc.property(raster, ({ width, height, bits }) => {
        const out = outOf(maskOf(width, height, bits));
        bits.forEach((bit, at) => {
          expect(isIn(out, at % width, Math.floor(at / width))).toBe(!bit);
        });
      }),
      { numRuns: 50 },
    );
  });
});

describe('the steps of a disc', () => {
  it('are its pixels, each once, the nearest first, with their distances', () => {
    fc.assert(
      fc.property(pitches, fc.double({ min: 0.1, max: 12, noNaN: true }), (pitch, radius) => {
        const steps = stepsOf(discOf(radius, pitch), pitch);
        expect(new Set(steps.map(({ x, y }) => `${x} ${y}`)).size).toBe(steps.length);
        steps.forEach(({ x, y, distance }, index) => {
          expect(distance).toBeCloseTo(Math.hypot(x * pitch.x, y * pitch.y), 9);
          expect(distance).toBeLessThan(radius);
          expect(distance).toBeGreaterThanOrEqual(steps[index - 1]?.distance ?? 0);
        });
        const reach = Math.ceil(radius / 0.7);
        let within = 0;
        for (let y = -reach; y <= reach; y += 1) {
          for (let x = -reach; x <= reach; x += 1) {
            if (Math.hypot(x * pitch.x, y * pitch.y) < radius) within += 1;
          }
        }
        expect(steps.length).toBe(within);
      }),
      { numRuns: 100 },
    );
  });
});
