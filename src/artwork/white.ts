import type { Micrometres } from '../units';
import { type AlphaRaster, alphaBuilder } from './alpha';
import { isIn, isRunOut, outOf } from './bit-mask';
import { discOf, grow, type Pitch } from './disc';
import { finenessAt, inkMask } from './ink-mask';
import type { Pixels } from './pixels';
import { printing } from './printing';

/** Rows, and columns, of a raster around a place that its white depends on: as far as the choke reaches, and what tells an edge. */
export const whiteReach = (pitch: Pitch, choke: Micrometres): number =>
  Math.ceil(choke / Math.min(pitch.x, pitch.y)) + 3;

/**
 * How dense the white is under each pixel: as dense as the ink, and taken in from every edge by the choke, which is an erosion by a
 * disc (J. Serra, "Image Analysis and Mathematical Morphology", 1982) of what prints, at 600 ppi and finer; a pixel that the edge of the white crosses
 * has its share.
 * @param raster with a margin of {@link whiteReach} on both sides, clear or of the rows above and below; the white within it is not told
 * @param pitch micrometres a pixel, as it is printed
 */
export function whiteOf(raster: AlphaRaster, pitch: Pitch, choke: Micrometres): Uint8Array {
  const { width, height, margin, alpha } = raster;
  const shares = printing(raster);
  const { ink, finer, pitch: fine } = inkMask(shares, pitch, finenessAt(pitch));
  // From centre to centre: the edge lies half a pixel from the centre of a clear pixel.
  const taken = grow(outOf(ink), discOf(choke + Math.sqrt(fine.x * fine.y) / 2, fine));
  const white = new Uint8Array(alpha.length);
  const viewOf = ({ buffer, byteOffset, length }: Uint8Array) => new DataView(buffer, byteOffset, length);
  const [own4, share4, white4] = [viewOf(alpha), viewOf(shares.alpha), viewOf(white)];
  const parts = finer.x * finer.y;
  /** Whether the choke takes nothing of four pixels of a row. */
  const isLeft = (x: number, y: number): boolean => {
    for (let part = 0; part < finer.y; part += 1) {
      if (!isRunOut(taken, y * finer.y + part, x * finer.x, (x + 4) * finer.x)) return false;
    }
    return true;
  };
  for (let y = margin; y < height - margin; y += 1) {
    for (let x = margin; x < width - margin; x += 1) {
      const at = y * width + x;
      // Stretches of nothing, and of what prints whole, are passed over four pixels at a time.
      if (x + 4 <= width - margin) {
        const four = share4.getInt32(at);
        if (four === 0 || (four === -1 && isLeft(x, y))) {
          if (four === -1) white4.setInt32(at, own4.getInt32(at));
          x += 3;
          continue;
        }
      }
      const own = alpha[at] as number;
      const share = shares.alpha[at] as number;
      if (share === 0) continue;
      let left = 0;
      for (let part = 0; part < parts; part += 1) {
        if (!isIn(taken, x * finer.x + (part % finer.x), y * finer.y + Math.floor(part / finer.x))) left += 1;
      }
      // What smooths an edge is as dense as the ink that it smooths.
      white[at] = Math.round(Math.min(255, (255 * own) / share) * Math.min(left / parts, share / 255));
    }
  }
  return white;
}

/**
 * Puts the white in place of the colours.
 * @param image changed in place
 * @param pitch micrometres a pixel, as it is printed
 */
export function layWhite({ rgba, width, height }: Pixels, pitch: Pitch, choke: Micrometres): void {
  const margin = whiteReach(pitch, choke);
  const { raster, add } = alphaBuilder(width, height, 1, margin);
  add(rgba, 0, height);
  const white = whiteOf(raster, pitch, choke);
  for (let at = 0; at < width * height; at += 1) {
    rgba.fill(255, 4 * at, 4 * at + 3);
    rgba[4 * at + 3] = white[
      (Math.floor(at / width) + margin) * raster.width + (at % width) + margin
    ] as number;
  }
}
