import { type AlphaRaster, alphaBuilder } from './alpha';
import { type MaskRuns, markSheet } from './mask-runs';
import type { Pixels } from './pixels';
import { LEAST_ALPHA } from './trim';

export interface SeeThrough {
  /** Share of the ink-bearing pixels that are see-through, those that only smooth an edge left out. */
  readonly share: number;
  readonly where: MaskRuns;
}

const OPAQUE = 248;
/** An edge is smoothed over this many pixels on each side at most. */
const EDGE = 2;
/** A byte times this is that byte four times. */
const ONES = 0x01010101;
/** Larger rasters are looked at on a lattice of about so many pixels. */
const LOOKED_AT = 4_000_000;

/** Whether an opaque and a clear pixel both lie within reach: then a see-through one merely smooths the edge between them. */
function smoothsEdge(alpha: Uint8Array, view: DataView, width: number, at: number): boolean {
  const own = alpha[at] as number;
  const four = Math.imul(own, ONES);
  let [opaque, clear] = [false, false];
  for (let row = at - EDGE * width; row <= at + EDGE * width; row += width) {
    // An even haze is passed over four pixels at a time.
    if (view.getInt32(row - EDGE) === four && alpha[row + EDGE] === own) continue;
    for (let other = row - EDGE; other <= row + EDGE; other += 1) {
      if ((alpha[other] as number) >= OPAQUE) opaque = true;
      else if ((alpha[other] as number) < LEAST_ALPHA) clear = true;
    }
    if (opaque && clear) return true;
  }
  return false;
}

/** Finds pixels that are neither clear nor opaque over an area: white shows through them as a fringe or haze. */
export function seeThrough(raster: AlphaRaster): SeeThrough {
  const { width, height, margin, alpha } = raster;
  const view = new DataView(alpha.buffer, alpha.byteOffset, alpha.length);
  const marks = markSheet(width - 2 * margin, height - 2 * margin);
  const step = Math.max(1, Math.round(Math.sqrt((width * height) / LOOKED_AT)));
  let [bearing, soft] = [0, 0];
  for (let y = margin; y < height - margin; y += step) {
    for (let x = margin; x < width - margin; x += step) {
      const own = alpha[y * width + x] as number;
      if (own < LEAST_ALPHA) continue;
      bearing += 1;
      if (own >= OPAQUE || smoothsEdge(alpha, view, width, y * width + x)) continue;
      soft += 1;
      marks.mark(x - margin, y - margin);
    }
  }
  return { share: bearing === 0 ? 0 : soft / bearing, where: marks.runs() };
}

/** An image as it was, and its pixels that are see-through, those left out that smooth an edge. */
export interface SoftPixels {
  /** 0 beyond the image. */
  alphaAt(x: number, y: number): number;
  /** @param visit told each, counted row by row, with its alpha */
  each(visit: (at: number, alpha: number) => void): void;
}

/** Finds what is see-through in an image that may be changed afterwards. */
export function softPixels({ rgba, width, height }: Pixels): SoftPixels {
  const { raster, add } = alphaBuilder(width, height, 1, EDGE);
  add(rgba, 0, height);
  const { alpha, width: wide } = raster;
  const view = new DataView(alpha.buffer, alpha.byteOffset, alpha.length);
  return {
    alphaAt: (x, y) =>
      x >= 0 && y >= 0 && x < width && y < height ? (alpha[(y + EDGE) * wide + x + EDGE] as number) : 0,
    each(visit) {
      for (let y = 0; y < height; y += 1) {
        for (let x = 0; x < width; x += 1) {
          const at = (y + EDGE) * wide + x + EDGE;
          const own = alpha[at] as number;
          if (own === 0 || own === 255 || smoothsEdge(alpha, view, wide, at)) continue;
          visit(y * width + x, own);
        }
      }
    },
  };
}
