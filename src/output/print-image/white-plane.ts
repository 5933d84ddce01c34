import type { AlphaRaster } from '../../artwork/alpha';
import { whiteOf, whiteReach } from '../../artwork/white';
import { fromInches, type Micrometres } from '../../units';

/** The white of an image that comes in strips: some rows behind them, since it depends on what lies below. */
interface WhitePlane {
  /** Takes whole rows, RGBA as one number a pixel. @returns rows of white that are known by now, a byte a pixel, 255 where it is full */
  push(pixels: Uint32Array): Uint8Array;
  /** @returns the rest of the rows */
  end(): Uint8Array;
}

/** The white under an image of so many pixels an inch, taken in by the choke; only rows that it reaches are held. */
export function createWhitePlane(
  { width, ppi }: { readonly width: number; readonly ppi: number },
  choke: Micrometres,
): WhitePlane {
  const pitch = { x: fromInches(1) / ppi, y: fromInches(1) / ppi };
  const reach = whiteReach(pitch, choke);
  const wide = width + 2 * reach;
  /** Rows of alpha with clear margins, of which the first `reach` are told already; above the image nothing is. */
  let held = new Uint8Array(wide * reach);

  const take = (rows: number, fill: (alpha: Uint8Array, from: number) => void): Uint8Array => {
    const alpha = new Uint8Array(held.length + wide * rows);
    alpha.set(held);
    fill(alpha, held.length);
    const height = alpha.length / wide;
    const known = Math.max(0, height - 2 * reach);
    held = alpha.slice(wide * known);
    const raster: AlphaRaster = { width: wide, height, margin: reach, shrink: 1, alpha };
    const white = known > 0 ? whiteOf(raster, pitch, choke) : alpha;
    const out = new Uint8Array(width * known);
    for (let row = 0; row < known; row += 1) {
      const at = (row + reach) * wide + reach;
      out.set(white.subarray(at, at + width), row * width);
    }
    return out;
  };

  return {
    push: (pixels) =>
      take(pixels.length / width, (alpha, from) => {
        for (let at = 0, to = from + reach; at < pixels.length; to += 2 * reach) {
          // Little-endian: the fourth byte is how opaque a pixel is.
          for (const end = at + width; at < end; at += 1, to += 1) alpha[to] = (pixels[at] as number) >>> 24;
        }
      }),
    end: () => take(reach, () => undefined),
  };
}
