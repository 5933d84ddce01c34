import type { PixelSize } from './orientation';
import { cubic } from './resample';

/**
 * How an upright picture lies between quarter turns, in pixels of the box that it takes: where its left top corner comes to, and
 * how far a step across and a step down in it lead.
 */
export interface Slant {
  readonly box: PixelSize;
  readonly origin: { readonly x: number; readonly y: number };
  readonly across: { readonly x: number; readonly y: number };
  readonly down: { readonly x: number; readonly y: number };
}

/** Pixels that the kernel reaches over on either side. */
const REACH = 2;
const TAPS = 2 * REACH;

/** The weights of the pixels around a place along one side; @returns the first of them. */
function weigh(place: number, weights: Float64Array): number {
  const first = Math.ceil(place - REACH);
  for (let tap = 0; tap < TAPS; tap += 1) weights[tap] = cubic(first + tap - place);
  return first;
}

/**
 * The pixels of an upright picture turned to an angle between quarter turns, by the kernel that pictures are brought to their size by
 * ({@link cubic}), colours weighed by their alpha; beyond its edges there is nothing.
 */
export function slanted(
  pixels: Uint32Array<ArrayBuffer>,
  { width, height }: PixelSize,
  { box, origin, across, down }: Slant,
): Uint32Array<ArrayBuffer> {
  const from = new Uint8Array(pixels.buffer, pixels.byteOffset, pixels.byteLength);
  const turned = new Uint32Array(box.width * box.height);
  const to = new Uint8ClampedArray(turned.buffer);
  const whole = across.x * down.y - across.y * down.x;
  const [weightsAcross, weightsDown] = [new Float64Array(TAPS), new Float64Array(TAPS)];
  for (let y = 0; y < box.height; y += 1) {
    for (let x = 0; x < box.width; x += 1) {
      const [left, top] = [x + 0.5 - origin.x, y + 0.5 - origin.y];
      const column = (left * down.y - top * down.x) / whole - 0.5;
      const row = (top * across.x - left * across.y) / whole - 0.5;
      if (column <= -REACH || row <= -REACH || column >= width + 1 || row >= height + 1) continue;
      const firstColumn = weigh(column, weightsAcross);
      const firstRow = weigh(row, weightsDown);
      let [red, green, blue, alpha] = [0, 0, 0, 0];
      for (let tapDown = 0; tapDown < TAPS; tapDown += 1) {
        const sourceRow = firstRow + tapDown;
        if (sourceRow < 0 || sourceRow >= height) continue;
        for (let tapAcross = 0; tapAcross < TAPS; tapAcross += 1) {
          const sourceColumn = firstColumn + tapAcross;
          if (sourceColumn < 0 || sourceColumn >= width) continue;
          const at = 4 * (sourceRow * width + sourceColumn);
          const opaque = from[at + 3] as number;
          if (opaque === 0) continue;
          const weight = (weightsAcross[tapAcross] as number) * (weightsDown[tapDown] as number) * opaque;
          red += weight * (from[at] as number);
          green += weight * (from[at + 1] as number);
          blue += weight * (from[at + 2] as number);
          alpha += weight;
        }
      }
      if (alpha < 0.5) continue;
      const at = 4 * (y * box.width + x);
      to[at] = red / alpha;
      to[at + 1] = green / alpha;
      to[at + 2] = blue / alpha;
      to[at + 3] = alpha;
    }
  }
  return turned;
}
