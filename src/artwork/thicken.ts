import type { Micrometres } from '../units';
import { alphaBuilder } from './alpha';
import type { Pitch } from './disc';
import { inkMask } from './ink-mask';
import { largestSpeck } from './limits';
import { type Pixels, padded } from './pixels';
import { printing } from './printing';
import { thinParts } from './thin';

/** Depths are kept in so many steps of the width asked for. */
const STEPS = 200;
/** On a flank of a stroke the next pixel inwards is deeper by nearly its distance, on the ridge by nothing. */
const FLANK = 0.25;

interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * The middle lines of strokes that are thinner than a width: the ridge of the distance from the outside, where no neighbour is
 * deeper by much (H. Blum, "A transformation for extracting new descriptors of shape", 1967).
 * @returns points in pixels of the image, from the middle of its first one
 */
function middleLines({ rgba, width, height }: Pixels, pitch: Pitch, to: Micrometres): Point[] {
  const margin = Math.ceil(to / 2 / Math.min(pitch.x, pitch.y)) + 3;
  const { raster, add } = alphaBuilder(width, height, 1, margin);
  add(rgba, 0, height);
  const mask = inkMask(printing(raster), pitch);
  const wide = mask.ink.width;
  const depths = new Uint8Array(wide * mask.ink.height);
  const around = [-1, 0, 1].flatMap((y) =>
    [-1, 0, 1].map((x) => ({
      step: y * wide + x,
      rise: (FLANK * Math.hypot(x * mask.pitch.x, y * mask.pitch.y) * STEPS) / to,
    })),
  );
  const lines: Point[] = [];
  for (const part of thinParts(mask, to)) {
    const longest = Math.max(part.box.width * pitch.x, part.box.height * pitch.y);
    if (part.apart && longest <= largestSpeck(to)) continue;
    for (const [index, at] of part.pixels.entries()) {
      depths[at] = Math.round(((part.depths[index] as number) * STEPS) / to);
    }
    for (const at of part.pixels) {
      const own = depths[at] as number;
      if (around.some(({ step, rise }) => step !== 0 && (depths[at + step] as number) > own + rise)) continue;
      lines.push({
        x: ((at % wide) + 0.5 - mask.margin.x) / mask.finer.x - 0.5,
        y: (Math.floor(at / wide) + 0.5 - mask.margin.y) / mask.finer.y - 0.5,
      });
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
  // A middle line is met within three eighths of a pixel.
  const radius = to / 2 + 0.375 * pixel;
  const reach = {
    x: Math.ceil((radius + pixel / 2) / pitch.x),
    y: Math.ceil((radius + pixel / 2) / pitch.y),
  };
  const most = Math.max(reach.x, reach.y) + 1;
  const isNearEdge = ({ x, y }: Point) => Math.min(x, y, image.width - 1 - x, image.height - 1 - y) < most;
  const by = lines.some(isNearEdge) ? most : 0;
  const thick = padded(image, by);
  const { rgba, width } = thick;
  for (const line of lines) {
    const [column, row] = [Math.round(line.x), Math.round(line.y)];
    const middle = (row + by) * width + column + by;
    // What was stamped before is of the stroke's colour as well.
    const colour = rgba.slice(4 * middle, 4 * middle + 3);
    for (let y = -reach.y; y <= reach.y; y += 1) {
      for (let x = -reach.x; x <= reach.x; x += 1) {
        const distance = Math.hypot((column + x - line.x) * pitch.x, (row + y - line.y) * pitch.y);
        const alpha = Math.round(255 * Math.min(1, (radius - distance) / pixel + 0.5));
        const to = 4 * (middle + y * width + x);
        if (alpha <= (rgba[to + 3] as number)) continue;
        rgba.set(colour, to);
        rgba[to + 3] = alpha;
      }
    }
  }
  return thick;
}
