import { describe, expect, it } from 'vitest';
import { isCheckerboard } from '../../src/artwork/checkerboard';
import { edgeTaker } from '../../src/artwork/edge';
import { asJpeg } from './jpeg-loss';
import { paint } from './pixels';

const N = 200;

function told(rgba: Uint8ClampedArray): boolean {
  const edge = edgeTaker({ width: N, height: N });
  for (let top = 0; top < N; top += 50) edge.add(rgba.subarray(4 * N * top, 4 * N * (top + 50)), top, 50);
  return isCheckerboard(edge.lines);
}

/** Squares of two greys from somewhere on, with a red bar over part of two edges. */
const board = (side: number, light: number, dark: number, from = 3) =>
  paint(N, N, (x, y) => {
    if (x < 30 && y > 80) return [200, 30, 20, 255];
    const grey = (Math.floor((x + from) / side) + Math.floor((y + from) / side)) % 2 === 0 ? light : dark;
    return [grey, grey, grey, 255];
  });

describe('a checkerboard', () => {
  it.each([
    [8, 255, 204],
    [10, 255, 239],
    [16, 102, 153],
    [12.5, 255, 191],
  ])('of squares of %f pixels is told, as JPEG leaves it too', (side, light, dark) => {
    expect(told(board(side, light, dark))).toBe(true);
    expect(told(asJpeg(board(side, light, dark), N, N, 75))).toBe(true);
  });

  it.each([
    ['a plain ground', () => [250, 250, 250, 255]],
    ['stripes', (x: number) => (Math.floor(x / 10) % 2 === 0 ? [255, 255, 255, 255] : [204, 204, 204, 255])],
    ['a ramp', (x: number) => [x, x, x, 255]],
    [
      'a flag of black and white',
      (x: number, y: number) => {
        const value = (Math.floor(x / 20) + Math.floor(y / 20)) % 2 === 0 ? 255 : 0;
        return [value, value, value, 255];
      },
    ],
    [
      'checks in colour',
      (x: number, y: number) =>
        (Math.floor(x / 20) + Math.floor(y / 20)) % 2 === 0 ? [255, 255, 255, 255] : [200, 150, 220, 255],
    ],
    [
      'a clear edge',
      (x: number, y: number) =>
        (Math.floor(x / 10) + Math.floor(y / 10)) % 2 === 0 ? [255, 255, 255, 0] : [204, 204, 204, 0],
    ],
  ] as const)('is not %s', (_, ink) => {
    expect(
      told(paint(N, N, (x, y) => ink(x, y) as unknown as readonly [number, number, number, number])),
    ).toBe(false);
  });
});
