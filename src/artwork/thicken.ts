import type { Micrometres } from '../units';
import { alphaBuilder } from './alpha';
import { discOf, type Pitch, stepsOf } from './disc';
import { largestSpeck } from './limits';
import { type Pixels, padded } from './pixels';
import { inkMask, thinParts } from './thin';

/** Depths are kept in so many steps of the width asked for. */
const STEPS = 200;
/** On a flank of a stroke the next pixel inwards is deeper by nearly its distance, on the ridge by nothing. */
const FLANK = 0.25;

/**
 * The middle lines of strokes that are thinner than a width: the ridge of the distance from the outside, where no neighbour is
 * deeper by much (H. Blum, "A transformation for extracting new descriptors of shape", 1967).
 * @returns pixels of the image
 */
function middleLines({ rgba, width, height }: Pixels, pitch: Pitch, to: Micrometres): number[] {
  const margin = Math.ceil(to / 2 / Math.min(pitch.x, pitch.y)) + 3;
  const { raster, add } = alphaBuilder(width, height, 1, margin);
  add(rgba, 0, height);
  const wide = raster.width;
  const depths = new Uint8Array(wide * raster.height);
  const around = [-1, 0, 1].flatMap((y) =>
    [-1, 0, 1].map((x) => ({
      step: y * wide + x,
      rise: (FLANK * Math.hypot(x * pitch.x, y * pitch.y) * STEPS) / to,
    })),
  );
  const lines: number[] = [];
  for (const part of thinParts(inkMask(raster), pitch, to)) {
    const longest = Math.max(part.box.width * pitch.x, part.box.height * pitch.y);
    if (part.apart && longest <= largestSpeck(to)) continue;
    for (const [index, at] of part.pixels.entries()) {
      depths[at] = Math.round(((part.depths[index] as number) * STEPS) / to);
    }
    for (const at of part.pixels) {
      const own = depths[at] as number;
      if (around.some(({ step, rise }) => step !== 0 && (depths[at + step] as number) > own + rise)) continue;
      lines.push((Math.floor(at / wide) - margin) * width + (at % wide) - margin);
    }
  }
  return lines;
}

/**
 * Makes strokes that are thinner than a width as wide as that, and leaves all else: their middle lines are dilated by a disc
 * (J. Serra, "Image Analysis and Mathematical Morphology", 1982) with a smoothed edge. What is added has the stroke's own colour
 * at the place that is nearest. Specks are none.
 * @param pitch micrometres a pixel
 * @returns the image, larger on all sides where a stroke lies at its edge
 */
export function thicken(image: Pixels, pitch: Pitch, to: Micrometres): Pixels {
  const lines = middleLines(image, pitch, to);
  const pixel = Math.sqrt(pitch.x * pitch.y);
  // As wide as the check asks for, from centre to centre.
  const radius = to / 2 + pixel / 4;
  const disc = discOf(radius + pixel / 2, pitch);
  const stamp = stepsOf(disc, pitch).map(({ x, y, distance }) => ({
    x,
    y,
    alpha: Math.round(255 * Math.min(1, (radius - distance) / pixel + 0.5)),
  }));
  const reach = Math.max(disc.length, ...disc);
  const isNearEdge = (at: number) => {
    const [x, y] = [at % image.width, Math.floor(at / image.width)];
    return Math.min(x, y, image.width - 1 - x, image.height - 1 - y) < reach;
  };
  const by = lines.some(isNearEdge) ? reach : 0;
  const thick = padded(image, by);
  const { rgba, width } = thick;
  for (const at of lines) {
    const middle = (Math.floor(at / image.width) + by) * width + (at % image.width) + by;
    // What was stamped before is of the stroke's colour as well.
    const colour = rgba.slice(4 * middle, 4 * middle + 3);
    for (const { x, y, alpha } of stamp) {
      const to = 4 * (middle + y * width + x);
      if (alpha <= (rgba[to + 3] as number)) continue;
      rgba.set(colour, to);
      rgba[to + 3] = alpha;
    }
  }
  return thick;
}
