import { describe, expect, it } from 'vitest';
import { tintOf, tints } from '../../app/parts/tints';
import { TINTS } from '../../src/model';

/** Relative luminance of an sRGB colour (WCAG 2.2, glossary). */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

const contrast = (a: string, b: string): number => {
  const [light, dark] = [luminance(a), luminance(b)].toSorted((x, y) => y - x) as [number, number];
  return (light + 0.05) / (dark + 0.05);
};

describe('the tints of orders', () => {
  it('measures contrast as WCAG 2.2 does: black on white is 21', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  });

  it.each(tints)('%s carries white text (4.5, WCAG 2.2 contrast minimum)', (tint) => {
    expect(contrast(tint, '#ffffff')).toBeGreaterThanOrEqual(4.5);
  });

  it('are as many as the book hands out, all different', () => {
    expect(new Set(Array.from({ length: TINTS }, (_, tint) => tintOf(tint))).size).toBe(TINTS);
  });
});
