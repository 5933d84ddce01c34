import { describe, expect, it } from 'vitest';
import { tintOf } from '../../app/parts/tints';
import { contrast } from './contrast';

describe('the tints of orders', () => {
  it('measures contrast as WCAG 2.2 does: black on white is 21', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  });

  const many = Array.from({ length: 200 }, (_, tint) => tintOf(tint));

  it.each(many)('%s carries white text (4.5, WCAG 2.2 contrast minimum)', (tint) => {
    expect(contrast(tint, '#ffffff')).toBeGreaterThanOrEqual(4.5);
  });

  it('are all different, and those of the orders of one run far apart', () => {
    expect(new Set(many).size).toBe(many.length);
    const parts = (tint: string) => [1, 3, 5].map((at) => Number.parseInt(tint.slice(at, at + 2), 16));
    const run = many.slice(0, 24).map(parts);
    const apart = run.flatMap((one, at) =>
      run
        .slice(0, at)
        .map((other) => Math.hypot(...one.map((part, channel) => part - (other[channel] ?? 0)))),
    );
    expect(Math.min(...apart)).toBeGreaterThan(20);
  });
});
