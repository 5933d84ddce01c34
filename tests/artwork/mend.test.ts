import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { trimBox } from '../../src/artwork';
import { mended } from '../../src/artwork/mend';
import { fromMm } from '../../src/units';
import { paint, RED, shape } from './pixels';

/** 300 ppi, in micrometres a pixel. */
const PITCH = { x: 25_400 / 300, y: 25_400 / 300 };
const LARGEST = fromMm(0.75);
const N = 300;

type Ink = Parameters<typeof paint>[2];

function mend(ink: Ink, how: Parameters<typeof mended>[1], size = N) {
  const rgba = paint(size, size, ink) as Uint8ClampedArray<ArrayBuffer>;
  const before = rgba.slice();
  const box = trimBox(rgba, size, size) ?? expect.fail('blank');
  const after = mended({ rgba, width: size, height: size }, how, box, PITCH);
  return { before, after, box, left: trimBox(after.rgba, after.width, after.height) };
}

const FAINT = [90, 90, 90, 40] as const;
const design = (x: number, y: number) => Math.hypot(x - 190, y - 190) < 90;

describe('taking off what lies by itself', () => {
  const strays = { kind: 'take-off', largest: LARGEST, reach: 'strays' } as const;
  const everywhere = { ...strays, reach: 'everywhere' } as const;
  /** A faint pixel in a corner, a speck within reach of the design, and one in a hole of it. */
  const dirty: Ink = (x, y) => {
    if (x < 1 && y < 1) return FAINT;
    const speck = Math.hypot(x - 190, y - 95) < 2.5 || Math.hypot(x - 190, y - 190) < 3;
    return speck || (design(x, y) && Math.hypot(x - 190, y - 190) > 12) ? RED : [0, 0, 0, 0];
  };

  it('clears strays and leaves all else to the byte', () => {
    const { before, after, left } = mend(dirty, strays);
    expect(left).toEqual({ x: 100, y: 93, width: 180, height: 187 });
    expect(Array.from(after.rgba.subarray(0, 4))).toEqual([0, 0, 0, 0]);
    before.fill(0, 0, 4);
    expect(Buffer.from(after.rgba).equals(Buffer.from(before))).toBe(true);
  });

  it('clears specks anywhere if it is asked to, and nothing larger', () => {
    const { after, left } = mend(dirty, everywhere);
    expect(left).toEqual({ x: 100, y: 100, width: 180, height: 180 });
    const clean = paint(
      N,
      N,
      shape((x, y) => design(x, y) && Math.hypot(x - 190, y - 190) > 12),
    );
    expect(Buffer.from(after.rgba).equals(Buffer.from(clean))).toBe(true);
  });

  it('takes off as many parts as there are, whatever their shapes, and a second time none', () => {
    const cell = fc.constantFrom(0, 0, 0, 7, 8, 255);
    fc.assert(
      fc.property(fc.array(cell, { minLength: 400, maxLength: 400 }), (alphas) => {
        const n = 20;
        const dot = (x: number, y: number) => alphas[Math.floor(y) * n + Math.floor(x)] ?? 0;
        const how = { ...everywhere, largest: fromMm(3 * 0.0847) };
        const once = mend((x, y) => [1, 2, 3, dot(x, y)], how, n).after;
        // What is left is what a flood from each pixel, kept apart from how it was found, says is larger than three pixels.
        expect(Array.from(once.rgba, (_, at) => (at % 4 === 3 ? (once.rgba[at] ?? 0) >= 8 : false))).toEqual(
          largerThan(3, alphas, n).flatMap((is) => [false, false, false, is]),
        );
      }),
      { numRuns: 100 },
    );
  });
});

/** Which of `n` x `n` pixels belong to a part that is longer than so many on a side. */
function largerThan(most: number, alphas: readonly number[], n: number): boolean[] {
  const inked = (x: number, y: number) => x >= 0 && y >= 0 && x < n && y < n && (alphas[y * n + x] ?? 0) >= 8;
  return alphas.map((_, at) => {
    const seen = new Set<number>();
    const visit = (x: number, y: number): void => {
      if (!inked(x, y) || seen.has(y * n + x)) return;
      seen.add(y * n + x);
      for (const dy of [-1, 0, 1]) for (const dx of [-1, 0, 1]) visit(x + dx, y + dy);
    };
    visit(at % n, Math.floor(at / n));
    const xs = [...seen].map((each) => each % n);
    const ys = [...seen].map((each) => Math.floor(each / n));
    const side = (values: number[]) => Math.max(...values) - Math.min(...values) + 1;
    return seen.size > 0 && Math.max(side(xs), side(ys)) > most;
  });
}
