import type { Mend } from '../model';
import { differenceAt, type Rgb, rgbOf } from './colour';
import type { EdgeLines } from './edge';
import { unmixRim } from './rim';
import { LEAST_ALPHA } from './trim';

/** What is taken out of an image: a ground from its edge inwards, or a colour wherever it is. */
type KnockOut = Extract<Mend, { kind: 'knock-out' }>;

/** Channels of a ground differ by no more than this from their median; compression of JPEG stays within it. */
const ALIKE = 12;
/** So much of the edge must be alike: a design may touch it here and there. */
const MOST_OF_EDGE = 0.9;
const OPAQUE = 250;

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/**
 * The colour of a ground that was surely meant to be transparent: the image's edge is opaque all around and of one colour.
 */
export function solidGround(lines: EdgeLines): Rgb | null {
  const edge = Object.values(lines).flat();
  const channels: [number[], number[], number[]] = [[], [], []];
  for (let at = 0; at < edge.length; at += 4) {
    if ((edge[at + 3] as number) < OPAQUE) return null;
    for (const [index, channel] of channels.entries()) channel.push(edge[at + index] as number);
  }
  const colour = channels.map(median) as [number, number, number];
  const count = edge.length / 4;
  let alike = 0;
  for (let at = 0; at < edge.length; at += 4) if (differenceAt(edge, at / 4, colour) <= ALIKE) alike += 1;
  return count > 0 && alike / count >= MOST_OF_EDGE ? colour : null;
}

/** Smoothing reaches two pixels, washed out colours of JPEG a little further. */
const RIM = 3;

/**
 * Makes a colour transparent. Pixels beside what was taken out are mixtures of the colour and of the design, as smoothing left
 * them: they get the design's colour with its share as alpha, so that no rim of the old ground is printed.
 * @param rgba four bytes a pixel, straight alpha; changed in place
 * @returns how many pixels were taken out
 */
export function knockOut(
  rgba: Uint8ClampedArray,
  width: number,
  height: number,
  { colour: written, tolerance, reach }: Omit<KnockOut, 'kind'>,
): number {
  const colour = rgbOf(written);
  const out = new Uint8Array(width * height);
  const near = (pixel: number) =>
    (rgba[4 * pixel + 3] as number) < LEAST_ALPHA || differenceAt(rgba, pixel, colour) <= tolerance;
  if (reach === 'everywhere') for (let at = 0; at < out.length; at += 1) out[at] = near(at) ? 1 : 0;
  else floodFromEdge(out, width, height, near);
  let count = 0;
  for (let at = 0; at < out.length; at += 1) {
    if (out[at] === 0) continue;
    if ((rgba[4 * at + 3] as number) >= LEAST_ALPHA) count += 1;
    rgba.fill(0, 4 * at, 4 * at + 4);
  }
  unmixRim({ rgba, width, height }, out, colour, RIM);
  return count;
}

/** Marks all pixels that are near the colour and hang together with the edge, across and down. */
function floodFromEdge(
  out: Uint8Array,
  width: number,
  height: number,
  near: (pixel: number) => boolean,
): void {
  const waiting: number[] = [];
  const visit = (at: number) => {
    if (out[at] === 0 && near(at)) {
      out[at] = 1;
      waiting.push(at);
    }
  };
  for (let x = 0; x < width; x += 1) {
    visit(x);
    visit((height - 1) * width + x);
  }
  for (let y = 0; y < height; y += 1) {
    visit(y * width);
    visit(y * width + width - 1);
  }
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    const x = at % width;
    if (x > 0) visit(at - 1);
    if (x < width - 1) visit(at + 1);
    if (at >= width) visit(at - width);
    if (at < out.length - width) visit(at + width);
  }
}
