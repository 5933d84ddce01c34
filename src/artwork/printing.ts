import type { AlphaRaster } from './alpha';
import { LEAST_ALPHA } from './trim';

/** Steps to one of each pair of neighbours that lie opposite one another. */
const opposite = (width: number) => [1, width - 1, width, width + 1];

/**
 * The share of a pixel: that of its strongest neighbour where it lies between stronger and much weaker ones, as on an edge, or
 * between stronger ones on both sides, as in a gap; whole where it is the beginning of something even.
 */
function shareAt(alpha: Uint8Array, at: number, width: number): number {
  const own = alpha[at] as number;
  let [most, least, isGap] = [own, own, false];
  for (const step of opposite(width)) {
    const [before, behind] = [alpha[at - step] as number, alpha[at + step] as number];
    most = Math.max(most, before, behind);
    least = Math.min(least, before, behind);
    if (Math.min(before, behind) >= 2 * own) isGap = true;
  }
  return isGap || 2 * least <= own ? own / most : 1;
}

/**
 * How much of each pixel prints, 255 of what prints whole: as much as it is fainter than the strongest pixel that touches it, since
 * that is how edges are smoothed. What is faint and even prints whole, a hairline of a quarter's opacity too; the shapes of what prints
 * are where a half and more does.
 */
export function printing(raster: AlphaRaster): AlphaRaster {
  const { width, height, alpha } = raster;
  const shares = new Uint8Array(alpha.length);
  const view = new DataView(alpha.buffer, alpha.byteOffset, alpha.length);
  for (let y = 1; y < height - 1; y += 1) {
    for (let at = y * width + 1, end = (y + 1) * width - 1; at < end; at += 1) {
      while (at + 4 <= end && view.getInt32(at) === 0) at += 4;
      const own = alpha[at] as number;
      if (at >= end || own < LEAST_ALPHA) continue;
      shares[at] = own === 255 ? 255 : Math.round(255 * shareAt(alpha, at, width));
    }
  }
  return { ...raster, alpha: shares };
}
