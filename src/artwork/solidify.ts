import type { Pixels } from './pixels';
import { softPixels } from './see-through';

/**
 * Makes what is see-through solid from a share of opacity on, and clears the rest. Edges that are merely smoothed stay as they are.
 * @param image changed in place
 * @param from above 0, 1 at most
 */
export function solidify(image: Pixels, from: number): void {
  const { rgba } = image;
  softPixels(image).each((at, alpha) => {
    if (alpha >= from * 255) rgba[4 * at + 3] = 255;
    else rgba.fill(0, 4 * at, 4 * at + 4);
  });
}
