import { describe, expect, it } from 'vitest';
import { tintOf, tints } from '../../app/parts/tints';
import { TINTS } from '../../src/model';
import { contrast } from './contrast';

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
