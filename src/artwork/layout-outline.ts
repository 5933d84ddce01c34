import {
  area,
  EndType,
  FillRule,
  getBounds,
  inflatePaths,
  JoinType,
  type Path64,
  rectClip,
  union,
} from 'clipper2-ts';
import { type ArtworkOutline, OUTLINE_STEPS } from '../model';
import { fromMm, type Micrometres } from '../units';
import { simplify } from './contour';
import { joined } from './joined';
import type { Outline } from './outline';

/** How far a line may be from what it stands for, as a share of the longer side: coarser, where that takes too many corners. */
const TOLERANCES = [0.002, 0.004, 0.008, 0.016];
/** Corners of all lines together: layouts take time with each. */
const MOST_CORNERS = 120;
/** Islands are tied by bars of film so wide, beside what the gap adds: narrower ones tear (common practice, no source). */
const BAR = fromMm(3);
/** Nobody cuts along a line of more: making it simpler would take longer than it is worth. */
const MOST_READ = 40_000;
/** How far a corner is from where it would be without rounding, as a share of the growth (Miter). */
const SHARPEST = 2;

const cornersIn = (paths: readonly Path64[]): number => paths.reduce((sum, { length }) => sum + length, 0);

/** Of an image, in pixels. */
type PixelSize = { readonly width: number; readonly height: number };

/** Lines that all run so that what is printed has a positive area, and holes a negative one: the largest is no hole. */
function outwards(paths: readonly Path64[]): readonly Path64[] {
  const areas = paths.map((path) => area(path));
  const largest = areas.reduce((most, each) => (Math.abs(each) > Math.abs(most) ? each : most), 0);
  return largest < 0 ? paths.map((path) => path.toReversed()) : paths;
}

/** The box around a line, so much wider on all sides. */
function boxAround(path: Path64, by: number): Path64 {
  const { left, top, right, bottom } = getBounds(path);
  return [
    { x: left - by, y: top - by },
    { x: right + by, y: top - by },
    { x: right + by, y: bottom + by },
    { x: left - by, y: bottom + by },
  ];
}

/** Lines of fewer corners around an outline: none of it lies outside them, nor they outside of its box. */
function around(
  paths: readonly Path64[],
  {
    tolerance,
    pixel,
    bar,
    width,
    height,
  }: Record<'tolerance' | 'pixel' | 'bar' | 'width' | 'height', number>,
): Path64[] {
  const fewer = paths.map((path): Path64 => {
    const line = simplify(
      path.flatMap(({ x, y }) => [x, y]),
      tolerance,
    );
    return Array.from({ length: line.length / 2 }, (_, at) => ({
      x: line[2 * at] as number,
      y: line[2 * at + 1] as number,
    }));
  });
  const by = Math.ceil(tolerance + pixel);
  // Holes are no room for others.
  const isInk = (_: Path64, at: number) => area(paths[at] as Path64) > 0;
  const ink = fewer.filter(isInk);
  const grown = inflatePaths(
    ink.filter((path) => area(path) > 0),
    by,
    JoinType.Miter,
    EndType.Polygon,
    SHARPEST,
  );
  // A thin rule falls into a line, which is no polygon that could grow: it stands in the box around it.
  const fallen = paths.filter((path, at) => isInk(path, at) && area(fewer[at] as Path64) <= 0);
  const all =
    fallen.length === 0
      ? grown
      : union([...grown, ...fallen.map((path) => boxAround(path, by))], FillRule.NonZero);
  const inBox = (paths: Path64[]) =>
    rectClip({ left: 0, top: 0, right: width, bottom: height }, paths).filter(
      (path) => path.length > 2 && area(path) !== 0,
    );
  const islands = inBox(all);
  // Corners that are too many as they are get no fewer.
  return cornersIn(islands) > MOST_CORNERS ? islands : inBox(joined(islands, bar));
}

/**
 * The outline that copies are laid out by, of few corners, around all that prints, in one piece.
 * @param printed the size that it is simplified for; it holds at any
 * @param pixels of the trimmed box: outlines run through the middle of edges, and ink reaches a pixel further
 * @returns `null` where it would take too many corners, or nothing prints: such a copy is laid out as its box
 */
export function layoutOutline(
  outline: Outline,
  printed: { readonly width: Micrometres; readonly height: Micrometres },
  pixels: PixelSize,
): ArtworkOutline | null {
  const longer = Math.max(printed.width, printed.height);
  const [width, height] = [printed.width, printed.height].map((side) =>
    Math.max(1, Math.round((side * OUTLINE_STEPS) / longer)),
  ) as [number, number];
  const bar = (BAR * OUTLINE_STEPS) / longer;
  const pixel = Math.max(width / pixels.width, height / pixels.height);
  const paths = outwards(
    outline.map(
      (line): Path64 =>
        Array.from({ length: line.length / 2 }, (_, at) => ({
          x: Math.round((line[2 * at] as number) * width),
          y: Math.round((line[2 * at + 1] as number) * height),
        })),
    ),
  );
  if (cornersIn(paths) > MOST_READ) return null;
  for (const tolerance of TOLERANCES) {
    const found = around(paths, { tolerance: tolerance * OUTLINE_STEPS, pixel, bar, width, height });
    if (found.length === 0) return null;
    if (cornersIn(found) > MOST_CORNERS) continue;
    const steps = (value: number, side: number) => Math.max(0, Math.round((value * OUTLINE_STEPS) / side));
    return found.map((path) =>
      (area(path) > 0 ? path : path.toReversed()).flatMap(({ x, y }) => [steps(x, width), steps(y, height)]),
    );
  }
  return null;
}
