import { EndType, inflatePaths, JoinType, type Path64 } from 'clipper2-ts';
import { type Micrometres, um } from '../units';
import type { AlphaRaster } from './alpha';
import { type Contour, contours, simplify } from './contour';

/** The lines around all that prints, and around its holes, in shares of the trimmed box: 0 to 1 on each axis. */
export type Outline = readonly Contour[];

interface Printed {
  readonly width: Micrometres;
  readonly height: Micrometres;
}

/** Lines are drawn within so many micrometres, and never more closely than half a pixel tells. */
const TOLERANCE = 20;
/** An outline of more points is drawn from a coarser raster. */
const MOST_POINTS = 40_000;

/** The most that prints in each block of so many pixels a side. */
function strongest({ width, height, alpha }: Raster, step: number): Raster {
  // Two blocks of clear margin, so that lines close.
  const [across, down] = [Math.ceil(width / step) + 4, Math.ceil(height / step) + 4];
  const blocks = new Uint8Array(across * down);
  for (let at = 0; at < alpha.length; at += 1) {
    const own = alpha[at] as number;
    if (own === 0) continue;
    const [x, y] = [at % width, Math.floor(at / width)];
    const block = (Math.floor(y / step) + 2) * across + Math.floor(x / step) + 2;
    if (own > (blocks[block] as number)) blocks[block] = own;
  }
  return { width: across, height: down, alpha: blocks };
}

interface Raster {
  readonly width: number;
  readonly height: number;
  readonly alpha: Uint8Array;
}

/** Half of a pixel prints. */
const HALF = 128;

/**
 * The contour of what prints, holes included: through the middle of smoothed edges, and along the sides of hard pixels. Of thousands of parts, which would be too many points, it is drawn around coarser blocks, so that no ink lies outside.
 * @param shares how much of each pixel prints
 * @param printed size of the trimmed box
 */
export function outlineOf(shares: AlphaRaster, printed: Printed): Outline {
  const { width, height, margin } = shares;
  const [inkWidth, inkHeight] = [width - 2 * margin, height - 2 * margin];
  const pixel = Math.min(printed.width / inkWidth, printed.height / inkHeight);
  for (let step = 1; ; step *= 2) {
    const blocks = step === 1 ? shares : strongest(shares, step);
    const lines = contours(blocks, HALF).map((line) => simplify(line, Math.min(0.5, TOLERANCE / pixel)));
    const points = lines.reduce((sum, line) => sum + line.length / 2, 0);
    if (points > MOST_POINTS) continue;
    // The middle of a pixel of the image, for that of a block behind its margin.
    const middle = (at: number) => (step === 1 ? at : (at - 2 + 0.5) * step - 0.5) - margin + 0.5;
    return lines.map((line) =>
      line.map((at, index) => middle(at) / (index % 2 === 0 ? inkWidth : inkHeight)),
    );
  }
}

/** How far a round corner may be from an arc, and what is left out of a line from it, in micrometres. */
const ROUND = 5;

/**
 * An outline at its printed size, grown by a distance on all sides, round at corners, and into its holes: with half the gap, two
 * outlines that do not overlap belong to copies that keep the gap. Polygons are offset by clipper2.
 * @returns lines in micrometres from the corner of the trimmed box; those of holes run the other way
 */
export function growOutline(outline: Outline, printed: Printed, by: Micrometres): readonly Contour[] {
  const paths = outline.map(
    (line): Path64 =>
      Array.from({ length: line.length / 2 }, (_, at) => ({
        x: Math.round((line[2 * at] as number) * printed.width),
        y: Math.round((line[2 * at + 1] as number) * printed.height),
      })),
  );
  return inflatePaths(paths, by, JoinType.Round, EndType.Polygon, 2, ROUND).map((path) =>
    simplify(
      path.flatMap(({ x, y }) => [x, y]),
      um(ROUND),
    ),
  );
}
