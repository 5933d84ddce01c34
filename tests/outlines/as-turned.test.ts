import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asTurned, boxRing, turnOf } from '../../src/outlines';
import { anyRings } from '../nesting/outlines';

/** Corners of rings, as points. */
const cornersOf = (rings: readonly Float64Array[]) =>
  rings.flatMap((ring) =>
    Array.from({ length: ring.length / 2 }, (_, at) => ({
      x: ring[2 * at] as number,
      y: ring[2 * at + 1] as number,
    })),
  );

/** The least and the most of corners on both axes. */
const boxOf = (corners: readonly { readonly x: number; readonly y: number }[]) => ({
  left: Math.min(...corners.map(({ x }) => x)),
  right: Math.max(...corners.map(({ x }) => x)),
  top: Math.min(...corners.map(({ y }) => y)),
  end: Math.max(...corners.map(({ y }) => y)),
});

const degrees = fc.oneof(
  fc.constantFrom(0, 90, 180, 270),
  fc.integer({ min: 0, max: 3599 }).map((tenths) => tenths / 10),
);

describe('a print that is turned', () => {
  it('takes the box of its outline, or of its turned rectangle, and its image lies where that does', () => {
    fc.assert(
      fc.property(anyRings, degrees, fc.boolean(), (rings, angle, isKnown) => {
        const { right: width, end: length } = boxOf(cornersOf(rings));
        const lying = asTurned({ width, length }, isKnown ? rings : null, angle);
        const { cos, sin } = turnOf(angle);
        // By the definition, about the corner of its image.
        const corners = cornersOf(isKnown ? rings : [boxRing({ width, length })]).map(({ x, y }) => ({
          x: lying.origin.x + x * cos - y * sin,
          y: lying.origin.y + x * sin + y * cos,
        }));
        const box = boxOf(corners);
        expect(box.left).toBeCloseTo(0, 3);
        expect(box.top).toBeCloseTo(0, 3);
        expect(lying.width - box.right).toBeGreaterThan(-1e-3);
        expect(lying.width - box.right).toBeLessThan(1);
        expect(lying.length - box.end).toBeGreaterThan(-1e-3);
        expect(lying.length - box.end).toBeLessThan(1);
        expect(lying.rings === null).toBe(!isKnown && angle % 90 === 0);
        cornersOf(lying.rings ?? []).forEach(({ x, y }, at) => {
          expect(x).toBeCloseTo(corners[at]?.x ?? Number.NaN, 2);
          expect(y).toBeCloseTo(corners[at]?.y ?? Number.NaN, 2);
        });
      }),
    );
  });

  it('is exactly as large as before where it is turned by quarters', () => {
    const size = { width: 101_327, length: 53_001 };
    expect([0, 90, 180, 270].map((angle) => asTurned(size, null, angle))).toEqual([
      { ...size, origin: { x: 0, y: 0 }, rings: null },
      { width: 53_001, length: 101_327, origin: { x: 53_001, y: 0 }, rings: null },
      { ...size, origin: { x: 101_327, y: 53_001 }, rings: null },
      { width: 53_001, length: 101_327, origin: { x: 0, y: 101_327 }, rings: null },
    ]);
  });
});
