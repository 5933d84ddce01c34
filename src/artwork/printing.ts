import type { AlphaRaster } from './alpha';
import { LEAST_ALPHA } from './trim';

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
      let most = own;
      for (let row = own === 255 ? alpha.length : at - width; row <= at + width; row += width) {
        most = Math.max(most, alpha[row - 1] as number, alpha[row] as number, alpha[row + 1] as number);
      }
      shares[at] = Math.round((255 * own) / most);
    }
  }
  return { ...raster, alpha: shares };
}
