import { type Micrometres, toInches, um } from '../units';
import type { Density } from './png';

const MICROMETRES_PER_METRE = 1e6;

interface Pixels {
  readonly width: number;
  readonly height: number;
}

/** How large pixels are printed at a density. */
export const physicalSize = (
  pixels: Pixels,
  density: Density,
): { width: Micrometres; height: Micrometres } => ({
  width: um((pixels.width / density.x) * MICROMETRES_PER_METRE),
  height: um((pixels.height / density.y) * MICROMETRES_PER_METRE),
});

/** The height that keeps an image's proportions at a printed width. Pixels are square, unless a density says otherwise. */
export function heightOf(pixels: Pixels, width: Micrometres, density: Density | null): Micrometres {
  const ratio = density ? density.x / density.y : 1;
  return um((width * pixels.height * ratio) / pixels.width);
}

/** Pixels per printed inch on each axis. */
export const effectivePpi = (
  pixels: Pixels,
  printed: { readonly width: Micrometres; readonly height: Micrometres },
): { x: number; y: number } => ({
  x: pixels.width / toInches(printed.width),
  y: pixels.height / toInches(printed.height),
});

/**
 * The size at which what is left of an image prints as large as it did before.
 * @param before the box that was printed, and its size
 * @param after the box that is left of the same pixels
 */
export const sameScale = (
  before: Pixels,
  printed: { readonly width: Micrometres; readonly height: Micrometres },
  after: Pixels,
): { width: Micrometres; height: Micrometres } => ({
  width: um((printed.width * after.width) / before.width),
  height: um((printed.height * after.height) / before.height),
});
