import type { AlphaRaster } from './alpha';
import { type BitMask, bitMask, setRun } from './bit-mask';
import type { Pitch } from './disc';

/** Where ink is, in pixels some times finer than those of the raster that it was found in. */
export interface InkMask {
  readonly ink: BitMask;
  /** Pixels of the mask along one of the raster, on each axis. */
  readonly finer: Pitch;
  /** Between pixels of the mask, in micrometres. */
  readonly pitch: Pitch;
  /** Ground at each side, in pixels of the mask. */
  readonly margin: Pitch;
  /** How much prints at a point, in pixels of the mask: 0 to 255. */
  shareAt(x: number, y: number): number;
}

/** Shapes are told apart this finely, in micrometres a pixel: 600 ppi. */
const FINE = 42.4;
/** And in no more pixels than this, so that a mask takes ten megabytes. */
const MOST = 80_000_000;
/** From here on a point is ink. */
export const HALF = 127.5;

/** How much finer than a raster its shapes are told apart. */
export const finenessAt = (pitch: Pitch): Pitch => ({
  x: Math.ceil(pitch.x / FINE),
  y: Math.ceil(pitch.y / FINE),
});

function finerThan({ width, height }: AlphaRaster, pitch: Pitch): Pitch {
  const { x, y } = finenessAt(pitch);
  const over = Math.max(1, Math.sqrt((width * height * x * y) / MOST));
  return { x: Math.max(1, Math.floor(x / over)), y: Math.max(1, Math.floor(y / over)) };
}

/**
 * The mask of what prints, by its edges between the middles of pixels, where shares are interpolated (bilinear): half and more of it
 * is ink.
 * @param shares how much of each pixel prints, with a clear margin
 * @param pitch micrometres a pixel of the raster
 */
export function inkMask(shares: AlphaRaster, pitch: Pitch, finer: Pitch = finerThan(shares, pitch)): InkMask {
  const { width, height, margin, alpha } = shares;
  const ink = bitMask(width * finer.x, height * finer.y);
  const view = new DataView(alpha.buffer, alpha.byteOffset, alpha.length);
  const between = (left: number, across: number, down: number): number => {
    const above = (alpha[left] as number) * (1 - across) + (alpha[left + 1] as number) * across;
    const below =
      (alpha[left + width] as number) * (1 - across) + (alpha[left + width + 1] as number) * across;
    return above * (1 - down) + below * down;
  };
  /** The first pixel of the mask whose middle is not before that of one of the raster. */
  const first = (x: number): number => Math.ceil(finer.x * (x + 0.5) - 0.5);

  for (let y = Math.ceil(finer.y / 2); y < ink.height - finer.y; y += 1) {
    const middle = (y + 0.5) / finer.y - 0.5;
    const [top, down] = [Math.floor(middle) * width, middle % 1];
    for (let x = 0; x < width - 1; x += 1) {
      const left = top + x;
      // Stretches of nothing, and of ink, are passed over four pixels at a time.
      if (x + 4 < width) {
        const four = view.getInt32(left);
        if ((four === 0 || four === -1) && view.getInt32(left + width) === four) {
          if (four === -1) setRun(ink, y, first(x), first(x + 3));
          x += 2;
          continue;
        }
      }
      const corners =
        Number((alpha[left] as number) > HALF) +
        Number((alpha[left + 1] as number) > HALF) +
        Number((alpha[left + width] as number) > HALF) +
        Number((alpha[left + width + 1] as number) > HALF);
      if (corners === 0) continue;
      for (let at = first(x); at < first(x + 1); at += 1) {
        const across = (at + 0.5) / finer.x - 0.5 - x;
        if (corners === 4 || between(left, across, down) > HALF) setRun(ink, y, at, at + 1);
      }
    }
  }
  return {
    ink,
    finer,
    pitch: { x: pitch.x / finer.x, y: pitch.y / finer.y },
    margin: { x: margin * finer.x, y: margin * finer.y },
    shareAt(x, y) {
      const [across, down] = [(x + 0.5) / finer.x - 0.5, (y + 0.5) / finer.y - 0.5];
      const left = Math.min(Math.max(0, Math.floor(across)), width - 2);
      const top = Math.min(Math.max(0, Math.floor(down)), height - 2);
      return between(top * width + left, across - left, down - top);
    },
  };
}
