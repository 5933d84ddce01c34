import type { Micrometres } from '../units';
import { bitMask, isIn, outOf } from './bit-mask';
import { discOf, grow, type Pitch } from './disc';
import type { Pixels } from './pixels';
import { LEAST_ALPHA } from './trim';

/**
 * Puts the white in place of the colours: as dense as they are, and taken in from every edge by the choke, which is an erosion by
 * a disc (J. Serra, "Image Analysis and Mathematical Morphology", 1982).
 * @param image changed in place; what lies beyond it is clear
 * @param pitch micrometres a pixel, as it is printed
 */
export function layWhite({ rgba, width, height }: Pixels, pitch: Pitch, choke: Micrometres): void {
  const pixel = Math.sqrt(pitch.x * pitch.y);
  // From centre to centre: the edge lies half a pixel from the centre of a clear pixel.
  const disc = discOf(choke + pixel / 2, pitch);
  const margin = Math.max(1, disc.length, ...disc);
  const inked = bitMask(width + 2 * margin, height + 2 * margin);
  for (let at = 0; at < width * height; at += 1) {
    if ((rgba[4 * at + 3] as number) < LEAST_ALPHA) continue;
    const [x, y] = [(at % width) + margin, Math.floor(at / width) + margin];
    (inked.words[y * inked.span + (x >> 5)] as number) |= 1 << (x & 31);
  }
  const taken = grow(outOf(inked), disc);
  for (let at = 0; at < width * height; at += 1) {
    const isTaken = isIn(taken, (at % width) + margin, Math.floor(at / width) + margin);
    rgba.fill(255, 4 * at, 4 * at + 3);
    if (isTaken) rgba[4 * at + 3] = 0;
  }
}
