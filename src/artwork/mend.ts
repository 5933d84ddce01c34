import type { Mend } from '../model';
import { type Micrometres, um } from '../units';
import { rgbOf } from './colour';
import type { Pitch } from './disc';
import { FRINGE } from './fringe';
import { knockOut } from './ground';
import type { Pixels } from './pixels';
import { unmixRim } from './rim';
import { screenSoft } from './screening';
import { takeOffParts } from './small-parts';
import { solidify } from './solidify';
import { strayFinder } from './strays';
import { thicken } from './thicken';
import { LEAST_ALPHA, type PixelBox } from './trim';

/** Clears what is stray within a box; see {@link strayFinder}. */
function takeOffStrays({ rgba, width, height }: Pixels, box: PixelBox, pitch: Pitch, largest: Micrometres) {
  const strays = strayFinder(box, pitch, largest);
  for (let row = 0; row < box.height; row += 1) {
    const start = 4 * ((box.y + row) * width + box.x);
    strays.add(rgba.subarray(start, start + 4 * box.width), row, 1);
  }
  for (const cell of strays.find()?.cells ?? []) {
    const [left, top] = [box.x + cell.x, box.y + cell.y];
    const [right, bottom] = [Math.min(width, left + cell.width), Math.min(height, top + cell.height)];
    for (let y = top; y < bottom; y += 1) rgba.fill(0, 4 * (y * width + left), 4 * (y * width + right));
  }
}

/** 1 for each pixel that is clear. */
function clearIn(rgba: Uint8ClampedArray): Uint8Array {
  const clear = new Uint8Array(rgba.length / 4);
  for (let at = 0; at < clear.length; at += 1) {
    clear[at] = (rgba[4 * at + 3] as number) < LEAST_ALPHA ? 1 : 0;
  }
  return clear;
}

/**
 * Mends an image.
 * @param image its pixels may be changed in place
 * @param box the trimmed box that is printed
 * @param pitch micrometres a pixel, as it is printed
 */
export function mended(image: Pixels, mend: Mend, box: PixelBox, pitch: Pitch): Pixels {
  const { rgba, width, height } = image;
  switch (mend.kind) {
    case 'knock-out':
      knockOut(rgba, width, height, mend);
      return image;
    case 'take-off':
      takeOffStrays(image, box, pitch, mend.largest);
      if (mend.reach === 'everywhere') {
        takeOffParts(
          rgba,
          width,
          height,
          (part) => um(Math.max(part.width * pitch.x, part.height * pitch.y)) <= mend.largest,
        );
      }
      return image;
    case 'defringe':
      unmixRim(image, clearIn(rgba), rgbOf(mend.ground), FRINGE);
      return image;
    case 'thicken':
      return thicken(image, pitch, mend.to);
    case 'threshold':
      solidify(image, mend.from);
      return image;
    case 'screen':
      screenSoft(image, mend, box, pitch);
      return image;
  }
}

/** Whether a mend comes out alike in a smaller picture, so that it can be looked at quickly; others look at single pixels. */
export const showsInSmaller = ({ kind }: Mend): boolean => kind === 'knock-out';
