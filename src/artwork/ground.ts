import type { Mend } from '../model';
import { LEAST_ALPHA } from './trim';

/** Red, green and blue, 0 to 255. */
export type Rgb = readonly [number, number, number];

/** What is taken out of an image: a ground from its edge inwards, or a colour wherever it is. */
type KnockOut = Extract<Mend, { kind: 'knock-out' }>;

/** A colour written as `#rrggbb`. */
const rgbOf = (colour: string): Rgb => {
  const value = Number.parseInt(colour.slice(1), 16);
  return [value >> 16, (value >> 8) & 0xff, value & 0xff];
};

/** Channels of a ground differ by no more than this from their median; compression of JPEG stays within it. */
const ALIKE = 12;
/** So much of the edge must be alike: a design may touch it here and there. */
const MOST_OF_EDGE = 0.9;
const OPAQUE = 250;

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/**
 * The colour of a ground that was surely meant to be transparent: the image's edge is opaque all around and of one colour.
 * @param edge the pixels of the four edges, four bytes each
 */
export function solidGround(edge: Uint8ClampedArray | readonly number[]): Rgb | null {
  const channels: [number[], number[], number[]] = [[], [], []];
  for (let at = 0; at < edge.length; at += 4) {
    if ((edge[at + 3] as number) < OPAQUE) return null;
    for (const [index, channel] of channels.entries()) channel.push(edge[at + index] as number);
  }
  const colour = channels.map(median) as [number, number, number];
  const count = edge.length / 4;
  let alike = 0;
  for (let at = 0; at < edge.length; at += 4) if (differenceAt(edge, at, colour) <= ALIKE) alike += 1;
  return count > 0 && alike / count >= MOST_OF_EDGE ? colour : null;
}

/** The channel that differs most. */
const differenceAt = (rgba: { readonly [index: number]: number }, at: number, [r, g, b]: Rgb): number =>
  Math.max(
    Math.abs((rgba[at] as number) - r),
    Math.abs((rgba[at + 1] as number) - g),
    Math.abs((rgba[at + 2] as number) - b),
  );

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
    (rgba[4 * pixel + 3] as number) < LEAST_ALPHA || differenceAt(rgba, 4 * pixel, colour) <= tolerance;
  if (reach === 'everywhere') for (let at = 0; at < out.length; at += 1) out[at] = near(at) ? 1 : 0;
  else floodFromEdge(out, width, height, near);
  const rim = rimOf(rgba, out, width, height, colour);
  let count = 0;
  for (let at = 0; at < out.length; at += 1) {
    if (out[at] === 0) continue;
    if ((rgba[4 * at + 3] as number) >= LEAST_ALPHA) count += 1;
    rgba.fill(0, 4 * at, 4 * at + 4);
  }
  for (const { at, from, share } of rim) {
    for (let channel = 0; channel < 3; channel += 1) rgba[4 * at + channel] = from[channel] as number;
    rgba[4 * at + 3] = Math.round((rgba[4 * at + 3] as number) * share);
  }
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

/** Smoothing reaches so many pixels. */
const SMOOTHED = 2;
/** A pixel whose share is above this is the design itself. */
const WHOLE = 0.9;

/** Pixels beside what is taken out, the design's colour near each, and how much of it they hold. */
function rimOf(rgba: Uint8ClampedArray, out: Uint8Array, width: number, height: number, colour: Rgb) {
  const rim: { at: number; from: Rgb; share: number }[] = [];
  for (let at = 0; at < out.length; at += 1) {
    if (out[at] === 1) continue;
    const [x, y] = [at % width, Math.floor(at / width)];
    const beside =
      (x > 0 && out[at - 1] === 1) ||
      (x < width - 1 && out[at + 1] === 1) ||
      (y > 0 && out[at - width] === 1) ||
      (y < height - 1 && out[at + width] === 1);
    if (!beside) continue;
    let [most, strongest] = [differenceAt(rgba, 4 * at, colour), at];
    const own = most;
    for (let dy = -SMOOTHED; dy <= SMOOTHED; dy += 1) {
      for (let dx = -SMOOTHED; dx <= SMOOTHED; dx += 1) {
        if (x + dx < 0 || x + dx >= width || y + dy < 0 || y + dy >= height) continue;
        const other = at + dy * width + dx;
        if (out[other] === 1) continue;
        const difference = differenceAt(rgba, 4 * other, colour);
        if (difference > most) [most, strongest] = [difference, other];
      }
    }
    const share = most === 0 ? 1 : own / most;
    if (share > WHOLE) continue;
    const from = [rgba[4 * strongest], rgba[4 * strongest + 1], rgba[4 * strongest + 2]] as unknown as Rgb;
    rim.push({ at, from, share });
  }
  return rim;
}
