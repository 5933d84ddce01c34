import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distanceField } from '../../src/artwork/distance';

const raster = fc
  .record({ width: fc.integer({ min: 1, max: 24 }), height: fc.integer({ min: 1, max: 18 }) })
  .chain(({ width, height }) =>
    fc.record({
      width: fc.constant(width),
      height: fc.constant(height),
      mask: fc
        .array(fc.boolean(), { minLength: width * height, maxLength: width * height })
        .map((bits) => Uint8Array.from(bits, Number)),
      target: fc.constantFrom<0 | 1>(0, 1),
      pitch: fc.record({ x: fc.constantFrom(1, 2, 0.7), y: fc.constantFrom(1, 1.5) }),
      reach: fc.double({ min: 0.5, max: 30, noNaN: true }),
    }),
  );

describe('the distance field', () => {
  it('is the least distance to any target, where that is within reach', () => {
    fc.assert(
      fc.property(raster, ({ width, height, mask, target, pitch, reach }) => {
        const field = distanceField(mask, width, height, target, pitch, reach);
        const far = new Uint8Array(mask.length);
        for (let y = 0; y < height; y += 1) field.markFar(y, far);
        for (let y = 0; y < height; y += 1) {
          for (let x = 0; x < width; x += 1) {
            let least = Number.POSITIVE_INFINITY;
            for (let at = 0; at < mask.length; at += 1) {
              if (mask[at] !== target) continue;
              const [dx, dy] = [(at % width) - x, Math.floor(at / width) - y];
              least = Math.min(least, Math.hypot(dx * pitch.x, dy * pitch.y));
            }
            if (Math.abs(least - reach) < 1e-9) continue;
            if (least < reach) expect(field.at(x, y)).toBeCloseTo(least, 9);
            else expect(field.at(x, y)).toBe(Number.POSITIVE_INFINITY);
            expect(far[y * width + x]).toBe(least < reach ? 0 : 1);
          }
        }
      }),
      { numRuns: 300 },
    );
  });
});
