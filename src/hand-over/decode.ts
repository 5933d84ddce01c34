import { decodeQR } from 'qr/decode.js';

/** Red, green, blue and alpha of each pixel, row by row. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** How hard pixels are looked at: tries, and milliseconds for all but the first. A picture has no next frame. */
const FRAME = { effort: 8, timeLimit: 100 };
const PICTURE = { effort: 8, timeLimit: 1500 };

function decoded(pixels: Pixels, options: typeof FRAME): string | null {
  try {
    return decodeQR(pixels, options);
  } catch {
    return null;
  }
}

/** The text of the code in a frame of a film; `null` if none is found. */
export const readFrame = (pixels: Pixels): string | null => decoded(pixels, FRAME);

/** The text of the code in a picture; `null` if none is found. */
export const readPicture = (pixels: Pixels): string | null => decoded(pixels, PICTURE);
