import type { Pitch } from './disc';

/** A closed line as x, y, x, y…, in pixels between centres; its last point joins its first. */
export type Contour = readonly number[];

interface Raster {
  readonly width: number;
  readonly height: number;
  readonly alpha: Uint8Array;
}

type Side = 'top' | 'right' | 'bottom' | 'left';

const TOP_LEFT = 1;
const TOP_RIGHT = 2;
const BOTTOM_RIGHT = 4;
const BOTTOM_LEFT = 8;

/** Where a line that comes into a cell by one side goes out, where only one way is possible. */
function wayOut(corners: number, from: Side): Side {
  const crossed: Record<Side, boolean> = {
    top: Boolean(corners & TOP_LEFT) !== Boolean(corners & TOP_RIGHT),
    right: Boolean(corners & TOP_RIGHT) !== Boolean(corners & BOTTOM_RIGHT),
    bottom: Boolean(corners & BOTTOM_LEFT) !== Boolean(corners & BOTTOM_RIGHT),
    left: Boolean(corners & TOP_LEFT) !== Boolean(corners & BOTTOM_LEFT),
  };
  return (['top', 'right', 'bottom', 'left'] as const).find((side) => side !== from && crossed[side]) ?? from;
}

const SIDES: readonly Side[] = ['top', 'right', 'bottom', 'left'];
const indexOf: Record<Side, number> = { top: 0, right: 1, bottom: 2, left: 3 };

/** The way out for each set of corners and each side; those of the two saddles are replaced as they are met. */
const waysOut = Uint8Array.from({ length: 64 }, (_, index) => {
  const from = SIDES[index % 4] as Side;
  return indexOf[wayOut(Math.floor(index / 4), from)];
});

/** A saddle's corners of one kind are joined through the middle, or kept apart: pairs top-right and left-bottom, or top-left and right-bottom. */
const saddleOut = (topWithRight: boolean, from: number): number => (topWithRight ? from ^ 1 : 3 - from);

/**
 * Traces the lines along which a raster crosses a level, between pixels by their values: marching squares (the plane's case of
 * W. E. Lorensen and H. E. Cline, "Marching cubes", 1987), saddles decided by the mean of their corners. Ink lies to the
 * left of a line that is walked along, so that outer lines and those of holes have areas of different sign.
 * @param raster clear along its edge
 */
export function contours({ width, height, alpha }: Raster, level: number): Contour[] {
  const found: Contour[] = [];
  // Whether the crossing from clear to ink, right of a pixel, has been walked over.
  const walked = new Uint8Array(alpha.length);
  const view = new DataView(alpha.buffer, alpha.byteOffset, alpha.length);
  for (let y = 1; y < height - 1; y += 1) {
    const row = y * width;
    for (let x = 0; x < width - 1; x += 1) {
      // Stretches of nothing, and of solid ink, are passed over four pixels at a time.
      while (x + 4 < width && isFlat(view.getInt32(row + x))) x += 3;
      const at = row + x;
      if ((alpha[at] as number) < level && (alpha[at + 1] as number) >= level && walked[at] === 0) {
        found.push(trace(alpha, width, level, walked, x, y));
      }
    }
  }
  return found;
}

/** Four pixels that are all clear, or all opaque. */
const isFlat = (four: number): boolean => four === 0 || four === -1;

function trace(
  alpha: Uint8Array,
  width: number,
  level: number,
  walked: Uint8Array,
  startX: number,
  startY: number,
): Contour {
  const line: number[] = [];
  /** How far along from one value to the next the level is met. */
  const between = (a: number, b: number) => (level - 0.5 - a) / (b - a);
  let [x, y, from] = [startX, startY, 0];
  do {
    // Cell of the pixels (x, y) to (x + 1, y + 1), come into by a side.
    const at = y * width + x;
    const topLeft = alpha[at] as number;
    const topRight = alpha[at + 1] as number;
    const bottomLeft = alpha[at + width] as number;
    const bottomRight = alpha[at + width + 1] as number;
    if (from === 0) {
      line.push(x + between(topLeft, topRight), y);
      if (topLeft < level) walked[at] = 1;
    } else if (from === 1) line.push(x + 1, y + between(topRight, bottomRight));
    else if (from === 2) {
      line.push(x + between(bottomLeft, bottomRight), y + 1);
      if (bottomLeft < level) walked[at + width] = 1;
    } else line.push(x, y + between(topLeft, bottomLeft));
    const corners =
      (topLeft >= level ? TOP_LEFT : 0) +
      (topRight >= level ? TOP_RIGHT : 0) +
      (bottomRight >= level ? BOTTOM_RIGHT : 0) +
      (bottomLeft >= level ? BOTTOM_LEFT : 0);
    let out: number;
    if (corners === 5 || corners === 10) {
      const inkInMiddle = (topLeft + topRight + bottomLeft + bottomRight) / 4 >= level;
      out = saddleOut((corners === 5) === inkInMiddle, from);
    } else out = waysOut[4 * corners + from] as number;
    if (out === 0) y -= 1;
    else if (out === 1) x += 1;
    else if (out === 2) y += 1;
    else x -= 1;
    from = (out + 2) % 4;
  } while (x !== startX || y !== startY || from !== 0);
  return line;
}

/** Twice the area would be the cross products' sum; positive for lines around ink, negative for those of holes. */
export function signedArea(line: Contour): number {
  let sum = 0;
  for (let at = 0, before = line.length - 2; at < line.length; before = at, at += 2) {
    sum +=
      (line[at] as number) * (line[before + 1] as number) -
      (line[before] as number) * (line[at + 1] as number);
  }
  return sum / 2;
}

/**
 * Fewer points, none of those left out further from the line than a tolerance: D. H. Douglas and T. K. Peucker, "Algorithms
 * for the reduction of the number of points required to represent a digitized line", 1973, on the two halves between a point
 * and the one furthest from it.
 * @param tolerance in pixels
 */
export function simplify(line: Contour, tolerance: number): Contour {
  const count = line.length / 2;
  if (count < 5) return line;
  const kept = new Uint8Array(count + 1);
  const distanceSquared = (a: number, b: number) =>
    ((line[2 * a] as number) - (line[2 * b] as number)) ** 2 +
    ((line[2 * a + 1] as number) - (line[2 * b + 1] as number)) ** 2;
  let far = 0;
  for (let at = 1; at < count; at += 1) if (distanceSquared(0, at) > distanceSquared(0, far)) far = at;
  kept[0] = 1;
  kept[far] = 1;
  const ranges: [number, number][] = [
    [0, far],
    [far, count],
  ];
  for (let range = ranges.pop(); range; range = ranges.pop()) {
    const [first, last] = range;
    const [ax, ay] = [line[2 * first] as number, line[2 * first + 1] as number];
    const end = last % count;
    const [dx, dy] = [(line[2 * end] as number) - ax, (line[2 * end + 1] as number) - ay];
    const squared = dx * dx + dy * dy || 1;
    let [most, index] = [tolerance * tolerance, -1];
    for (let at = first + 1; at < last; at += 1) {
      const [px, py] = [(line[2 * at] as number) - ax, (line[2 * at + 1] as number) - ay];
      const along = Math.max(0, Math.min(1, (px * dx + py * dy) / squared));
      const off = (px - along * dx) ** 2 + (py - along * dy) ** 2;
      if (off > most) [most, index] = [off, at];
    }
    if (index < 0) continue;
    kept[index] = 1;
    ranges.push([first, index], [index, last]);
  }
  const fewer: number[] = [];
  for (let at = 0; at < count; at += 1) {
    if (kept[at] === 1) fewer.push(line[2 * at] as number, line[2 * at + 1] as number);
  }
  return fewer;
}

/** A straight edge of hard pixels wobbles within a band one pixel wide. */
const WOBBLE = 1;

/**
 * The length of all lines, holes included, in the unit of the pitch. They are simplified within the wobble of a raster first:
 * a polygon-based estimator, and like all of them it converges to the true length as pixels get finer, as estimators that look
 * at a fixed number of pixels do not (R. Klette and A. Rosenfeld, "Digital Geometry", 2004, chapter 10; M. Tajine and A.
 * Daurat, "On local definitions of length of digital curves", 2003).
 */
export function outlineLength(lines: readonly Contour[], pitch: Pitch): number {
  let sum = 0;
  for (const line of lines) {
    const points = simplify(line, WOBBLE);
    for (let at = 0, before = points.length - 2; at < points.length; before = at, at += 2) {
      sum += Math.hypot(
        ((points[at] as number) - (points[before] as number)) * pitch.x,
        ((points[at + 1] as number) - (points[before + 1] as number)) * pitch.y,
      );
    }
  }
  return sum;
}
