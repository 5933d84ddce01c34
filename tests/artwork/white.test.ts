import { describe, expect, it } from 'vitest';
import { layWhite } from '../../src/artwork/white';
import { fromMm } from '../../src/units';
import { paint, RED, shape } from './pixels';

const N = 200;
/** 10 pixels on a millimetre. */
const PITCH = { x: 100, y: 100 };

function white(inside: (x: number, y: number) => boolean, choke: number) {
  const rgba = paint(N, N, shape(inside)) as Uint8ClampedArray<ArrayBuffer>;
  layWhite({ rgba, width: N, height: N }, PITCH, fromMm(choke));
  return rgba;
}

const areaOf = (rgba: Uint8ClampedArray) =>
  rgba.reduce((sum, value, at) => (at % 4 === 3 ? sum + value / 255 : sum), 0) / 100;
const alphaAt = (rgba: Uint8ClampedArray, x: number, y: number) => rgba[4 * (y * N + x) + 3];

describe('the white', () => {
  it.each([0, 0.2, 0.5, 1])('of a disc is one whose radius is less by the choke: %f mm', (choke) => {
    const rgba = white((x, y) => Math.hypot(x - 100, y - 100) < 80, choke);
    // Closed form, within three tenths of a pixel all round.
    expect(Math.abs(areaOf(rgba) - Math.PI * (8 - choke) ** 2)).toBeLessThan(2 * Math.PI * 8 * 0.03);
    expect(Array.from(rgba.subarray(4 * (100 * N + 100), 4 * (100 * N + 100) + 4))).toEqual([
      255, 255, 255, 255,
    ]);
  });

  it('is taken in along the edges of the image too, and around holes', () => {
    const rgba = white((x, y) => Math.hypot(x - 100, y - 100) > 20, 0.5);
    expect([alphaAt(rgba, 4, 100), alphaAt(rgba, 5, 100)]).toEqual([0, 255]);
    expect([alphaAt(rgba, 100, 124), alphaAt(rgba, 100, 127)]).toEqual([0, 255]);
  });

  it('is gone under strokes no wider than two chokes, and left under wider ones', () => {
    for (const [wide, left] of [
      [4, 0],
      [5, 255],
    ] as const) {
      const rgba = white((x) => x > 100 && x < 100 + wide, 0.2);
      expect(alphaAt(rgba, 102, 100)).toBe(left);
    }
  });

  it('is as dense as the colours are', () => {
    const rgba = paint(
      N,
      N,
      () => [...RED.slice(0, 3), 90] as unknown as typeof RED,
    ) as Uint8ClampedArray<ArrayBuffer>;
    layWhite({ rgba, width: N, height: N }, PITCH, fromMm(0.2));
    expect(alphaAt(rgba, 100, 100)).toBe(90);
  });
});
