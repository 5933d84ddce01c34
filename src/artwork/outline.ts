import { area, EndType, inflatePaths, JoinType, type Path64, type Paths64 } from 'clipper2-ts';
import type { Micrometres } from '../units';
import type { AlphaRaster } from './alpha';
import { type Contour, contours, signedArea, simplify } from './contour';
import { LEAST_ALPHA } from './trim';

/** The outer lines of all that prints, in shares of the trimmed box: 0 to 1 on each axis, a little beyond at the edges. */
export type Outline = readonly Contour[];

/** The longer side of the raster an outline is drawn from: it is right within a thousandth of that side. */
const LONGEST = 1000;
/** In pixels of that raster. */
const TOLERANCE = 1;

/** The strongest alpha in each block of pixels, so that nothing that prints is lost. */
function strongest({ width, height, margin, alpha }: AlphaRaster) {
  const [inkWidth, inkHeight] = [width - 2 * margin, height - 2 * margin];
  const step = Math.max(1, Math.ceil(Math.max(inkWidth, inkHeight) / LONGEST));
  // Two pixels of clear margin, so that lines close.
  const [across, down] = [Math.ceil(inkWidth / step) + 4, Math.ceil(inkHeight / step) + 4];
  const blocks = new Uint8Array(across * down);
  const view = new DataView(alpha.buffer, alpha.byteOffset, alpha.length);
  for (let y = 0; y < inkHeight; y += 1) {
    const row = (y + margin) * width + margin;
    const first = (Math.floor(y / step) + 2) * across + 2;
    for (let x = 0; x < inkWidth; x += 1) {
      while (x + 4 <= inkWidth && view.getInt32(row + x) === 0) x += 4;
      if (x >= inkWidth) break;
      const block = first + Math.floor(x / step);
      const own = alpha[row + x] as number;
      if (own > (blocks[block] as number)) blocks[block] = own;
      // Nothing is stronger: on to the next block.
      if (own === 255) x += step - 1 - (x % step);
    }
  }
  return { raster: { width: across, height: down, alpha: blocks }, step, inkWidth, inkHeight };
}

/** Whole numbers are what polygons are offset in. */
const FINE = 1000;

const toPath = (line: Contour, scaleX: number, scaleY: number): Path64 =>
  Array.from({ length: line.length / 2 }, (_, at) => ({
    x: Math.round((line[2 * at] as number) * scaleX),
    y: Math.round((line[2 * at + 1] as number) * scaleY),
  }));

/** How far a round corner may be from an arc, as a share of its radius. */
const ROUND = 0.01;

/** Polygons grown on all sides, round at corners; what then overlaps is joined, and holes are closed. */
function grown(paths: Paths64, by: number): Paths64 {
  const larger = inflatePaths(paths, by, JoinType.Round, EndType.Polygon, 2, ROUND * by);
  const areas = larger.map((path) => area(path));
  const outer = Math.sign(areas.reduce((most, each) => (Math.abs(each) > Math.abs(most) ? each : most), 0));
  return larger.filter((_, index) => Math.sign(areas[index] as number) === outer);
}

/**
 * The outer contour of what prints (alpha of at least 8), simplified within a thousandth of the longer side and grown by
 * what simplifying and the raster may have taken, so that no ink lies outside.
 */
export function outlineOf(raster: AlphaRaster): Outline {
  const { raster: blocks, step, inkWidth, inkHeight } = strongest(raster);
  const outer = contours(blocks, LEAST_ALPHA)
    .filter((line) => signedArea(line) > 0)
    .map((line) => toPath(simplify(line, TOLERANCE), FINE, FINE));
  // A pixel reaches half a pixel beyond its centre to each side, at a corner 0.71.
  const around = grown(outer, (TOLERANCE + Math.SQRT1_2) * FINE);
  return around.map((path) =>
    // Block centres lie half a block from their edge, behind two of margin.
    path.flatMap(({ x, y }) => [((x / FINE - 1.5) * step) / inkWidth, ((y / FINE - 1.5) * step) / inkHeight]),
  );
}

/**
 * An outline at its printed size, grown by a distance on all sides: with half the gap, two outlines that do not overlap
 * belong to copies that keep the gap.
 * @returns lines in micrometres from the corner of the trimmed box
 */
export function growOutline(
  outline: Outline,
  printed: { readonly width: Micrometres; readonly height: Micrometres },
  by: Micrometres,
): readonly Contour[] {
  const paths = outline.map((line) => toPath(line, printed.width, printed.height));
  return grown(paths, by).map((path) => path.flatMap(({ x, y }) => [x, y]));
}
