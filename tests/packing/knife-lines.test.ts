import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knifeLines, type Rect } from '../../src/packing';
import { fromMm, um } from '../../src/units';

const rect = (y: number, length: number, x = 0): Rect => ({
  x: fromMm(x),
  y: fromMm(y),
  width: fromMm(50),
  length: fromMm(length),
});
const gap = fromMm(6);
const cutBlank = fromMm(0);

describe('knife lines', () => {
  it('are none where the roll is not cut: one span from end to end', () => {
    const lengthUsed = fromMm(500);
    expect(knifeLines([rect(10, 480)], { gap, cutBlank, spanMax: null, lengthUsed })).toEqual([
      { from: 0, to: lengthUsed },
    ]);
  });

  it('lie between rows, half a gap off both, on whole millimetres', () => {
    const spans = knifeLines([rect(10, 100), rect(120, 100)], {
      gap,
      cutBlank,
      spanMax: fromMm(130),
      lengthUsed: fromMm(230),
    });
    expect(spans).toEqual([
      { from: 0, to: fromMm(115) },
      { from: fromMm(115), to: fromMm(230) },
    ]);
  });

  it('leave the blank that a cut costs before the next copy', () => {
    const copies = [rect(10, 100), rect(131, 100)];
    const cutting = { gap, spanMax: fromMm(140), lengthUsed: fromMm(241) };
    expect(knifeLines(copies, { ...cutting, cutBlank: fromMm(18) })?.[0]?.to).toBe(fromMm(113));
    expect(knifeLines(copies, { ...cutting, cutBlank: fromMm(19) })).toBeNull();
  });

  it('are refused where a copy is longer than a span', () => {
    expect(
      knifeLines([rect(10, 300)], { gap, cutBlank, spanMax: fromMm(200), lengthUsed: fromMm(320) }),
    ).toBeNull();
  });

  it('are refused where copies overlap along the film so that none can pass', () => {
    const copies = [rect(10, 150), rect(90, 150, 60), rect(170, 150)];
    expect(knifeLines(copies, { gap, cutBlank, spanMax: fromMm(200), lengthUsed: fromMm(330) })).toBeNull();
  });

  it('never cut a copy, never leave a span too long, and follow one another without a hole', () => {
    const rows = fc.array(fc.tuple(fc.integer({ min: 5, max: 150 }), fc.integer({ min: 6, max: 60 })), {
      minLength: 1,
      maxLength: 20,
    });
    fc.assert(
      fc.property(rows, fc.integer({ min: 160, max: 400 }), (lengths, most) => {
        let y = 10;
        const copies = lengths.map(([length, blank]) => {
          const copy = rect(y, length);
          y += length + blank;
          return copy;
        });
        const last = copies.at(-1);
        const lengthUsed = um((last?.y ?? 0) + (last?.length ?? 0) + fromMm(10));
        const spanMax = fromMm(most);
        const spans = knifeLines(copies, { gap, cutBlank, spanMax, lengthUsed });
        if (!spans) return;
        expect(spans[0]?.from).toBe(0);
        expect(spans.at(-1)?.to).toBe(lengthUsed);
        for (const [index, { from, to }] of spans.entries()) {
          expect(to - from).toBeGreaterThan(0);
          expect(to - from).toBeLessThanOrEqual(spanMax);
          if (index > 0) expect(from).toBe(spans[index - 1]?.to);
        }
        for (const { to } of spans.slice(0, -1)) {
          for (const copy of copies) {
            expect(to <= copy.y - gap / 2 || to >= copy.y + copy.length + gap / 2).toBe(true);
          }
        }
      }),
    );
  });

  it('are as few as can be: no solution has fewer', () => {
    // Rows of 90 with 10 between: spans of 320 take three rows each.
    const copies = Array.from({ length: 9 }, (_, row) => rect(10 + row * 100, 90));
    expect(knifeLines(copies, { gap, cutBlank, spanMax: fromMm(320), lengthUsed: fromMm(920) })).toHaveLength(
      3,
    );
  });
});
