import { densityChunk, headerChunk, PNG_SIGNATURE, pngChunk } from '../../artwork/png-parts';
import type { PixelSize } from './orientation';

const METRES_PER_INCH = 0.0254;
const PERCEPTUAL = 0;

/**
 * All that comes before the pixels: signature, IHDR, sRGB and pHYs (11.2.1, 11.3.2.5, 11.3.4.3). Grey is a coverage, and in no space
 * of colours.
 */
export function pngHead(
  size: PixelSize,
  ppi: number,
  form: 'colours' | 'grey' = 'colours',
): Uint8Array<ArrayBuffer>[] {
  const perMetre = ppi / METRES_PER_INCH;
  return [
    PNG_SIGNATURE,
    headerChunk(size, form),
    ...(form === 'colours' ? [pngChunk('sRGB', Uint8Array.of(PERCEPTUAL))] : []),
    densityChunk({ x: perMetre, y: perMetre }),
  ];
}

/** What ends a file. */
export const pngEnd = (): Uint8Array<ArrayBuffer> => pngChunk('IEND', new Uint8Array());
