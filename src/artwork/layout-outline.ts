import {
  area,
  difference,
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
import { contains } from '../outlines';
import { fromMm, type Micrometres } from '../units';
import { simplify } from './contour';
import { joined } from './joined';
import type { Outline } from './outline';

/** How far a line may be from what it stands for, as a share of the longer side: coarser, where that takes too many corners. */
const TOLERANCES = [0.002, 0.004, 0.008, 0.016];
/** Corners of all outer lines together: layouts take time with each. */
const MOST_CORNERS = 120;
/** The same of all holes: of more, the largest are told. */
const MOST_IN_HOLES = 60;
/** A hole is told that is no narrower than this share of the longer side: no copy is so small beside it as to lie in a smaller one. */
const LEAST_HOLE = 0.1;
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

const flat = (path: Path64): number[] => path.flatMap(({ x, y }) => [x, y]);

/** A line of fewer corners, none of which is further from it than the tolerance. */
function simpler(path: Path64, tolerance: number): Path64 {
  const line = simplify(flat(path), tolerance);
  return Array.from({ length: line.length / 2 }, (_, at) => ({
    x: line[2 * at] as number,
    y: line[2 * at + 1] as number,
  }));
}

/** How finely lines are told, in steps of the box: see {@link layoutOutline}. */
type Fineness = Record<'tolerance' | 'pixel' | 'bar' | 'width' | 'height', number>;

/** By how much lines are moved away from what prints, so that none of it lies beyond them. */
const growthOf = ({ tolerance, pixel }: Fineness): number => Math.ceil(tolerance + pixel);

/** Lines of fewer corners around an outline: none of it lies outside them, nor they outside of its box. */
function around(paths: readonly Path64[], fineness: Fineness): Path64[] {
  const { tolerance, bar, width, height } = fineness;
  const fewer = paths.map((path) => simpler(path, tolerance));
  const by = growthOf(fineness);
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
 * Lines of fewer corners within the holes in which a copy may lie, the largest first: what prints within one would fall out with it,
 * so that a hole with an island in it is none.
 */
function holesIn(paths: readonly Path64[], fineness: Fineness): Path64[] {
  const ink = paths.filter((path) => area(path) > 0);
  const isBare = (hole: Path64): boolean => {
    const lying = { rings: [Float64Array.from(flat(hole))], x: 0, y: 0 };
    return !ink.some(([first]) => first !== undefined && contains(lying, first.x, first.y));
  };
  const isWide = (path: Path64): boolean => {
    const { left, top, right, bottom } = getBounds(path);
    return Math.min(right - left, bottom - top) >= LEAST_HOLE * OUTLINE_STEPS;
  };
  const bare = paths.filter((path) => area(path) < 0 && isWide(path) && isBare(path));
  const inner = bare.flatMap((hole) =>
    inflatePaths(
      [simpler(hole.toReversed(), fineness.tolerance)],
      -growthOf(fineness),
      JoinType.Miter,
      EndType.Polygon,
      SHARPEST,
    ),
  );
  let corners = 0;
  return inner
    .filter(isWide)
    .sort((a, b) => area(b) - area(a))
    .filter(({ length }) => {
      corners += length;
      return corners <= MOST_IN_HOLES;
    });
}

/**
 * The outline that copies are laid out by, of few corners, around all that prints, in one piece, with the holes that others may lie in.
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
    const fineness = { tolerance: tolerance * OUTLINE_STEPS, pixel, bar, width, height };
    const found = around(paths, fineness);
    if (found.length === 0) return null;
    if (cornersIn(found) > MOST_CORNERS) continue;
    const steps = (value: number, side: number) => Math.max(0, Math.round((value * OUTLINE_STEPS) / side));
    const outer = found.map((path) => (area(path) > 0 ? path : path.toReversed()));
    const holes = holesIn(paths, fineness);
    // The bars that tie islands may reach into a hole, and go no further than its edge.
    const whole = holes.length === 0 ? outer : difference(outer, holes, FillRule.NonZero);
    return whole.map((path) => path.flatMap(({ x, y }) => [steps(x, width), steps(y, height)]));
  }
  return null;
}
