import { type Micrometres, um } from '../units';
import type { Pitch } from './disc';
import type { PixelBox } from './trim';

/** A screen of dots, or of holes, which stands for a tone. */
export interface Screen {
  /** From dot to dot. */
  readonly spacing: Micrometres;
  readonly dots: readonly PixelBox[];
  /** Whether a place lies at a dot of it, and whether one spreads among its dots. */
  has(box: PixelBox): boolean;
  spreadsIn(box: PixelBox): boolean;
}

/** What is larger is no dot of a screen, in micrometres: it would have 10 lines an inch. */
const LARGEST_DOT = 2500;
/** Of so many dots a screen is made at least (ours, no source). */
const LEAST_DOTS = 60;
/** A dot of a screen has so many others nearly as near as the nearest: four on a square grid, two among letters on a line. */
const NEIGHBOURS = 3;
const NEARLY = 1.3;
/** Of all dots so many are to lie like that. */
const REGULAR = 0.6;
/** What lies this near to a dot of it, in its spacing, is of the screen. */
const EDGE = 1.5;
/** What holds so many dots lies among them. */
const AMONG = 9;

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Points by squares, so that those near a place are found at once. */
function gridOf<P extends Point>(points: readonly P[], side: number) {
  const squares = new Map<string, P[]>();
  const key = (x: number, y: number) => `${Math.floor(x / side)} ${Math.floor(y / side)}`;
  for (const point of points) {
    const own = key(point.x, point.y);
    const square = squares.get(own);
    if (square) square.push(point);
    else squares.set(own, [point]);
  }
  return {
    /** All within a side of a place, and some beyond. */
    *near({ x, y }: Point): Generator<P> {
      for (const down of [-side, 0, side]) {
        for (const across of [-side, 0, side]) yield* squares.get(key(x + across, y + down)) ?? [];
      }
    },
  };
}

const middleOf = (box: PixelBox, pitch: Pitch): Point => ({
  x: (box.x + box.width / 2) * pitch.x,
  y: (box.y + box.height / 2) * pitch.y,
});

const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? 0;
};

/**
 * Recognises a screen among parts by how regularly they lie: most have several neighbours nearly as near as the nearest.
 * @param boxes of the parts, in pixels
 * @param pitch micrometres a pixel
 */
export function screenOf(boxes: Iterable<PixelBox>, pitch: Pitch): Screen | null {
  const small: (Point & { readonly box: PixelBox })[] = [];
  for (const box of boxes) {
    if (Math.max(box.width * pitch.x, box.height * pitch.y) > LARGEST_DOT) continue;
    small.push({ ...middleOf(box, pitch), box });
  }
  if (small.length < LEAST_DOTS) return null;
  const around = gridOf(small, 2 * LARGEST_DOT);
  const side = Math.min(2 * LARGEST_DOT, 3 * median(small.slice(0, 500).map((dot) => nearest(dot, around))));
  const grid = gridOf(small, Math.max(1, side));
  const dots = small.filter((dot) => {
    const most = NEARLY * nearest(dot, grid);
    let count = 0;
    for (const other of grid.near(dot)) if (other !== dot && between(dot, other) <= most) count += 1;
    return count >= NEIGHBOURS;
  });
  if (dots.length < Math.max(LEAST_DOTS, REGULAR * small.length)) return null;
  const spacing = median(dots.map((dot) => nearest(dot, grid)));
  // Dots at its edge have fewer neighbours, and some are cut.
  const reach = EDGE * spacing;
  const own = gridOf(dots, reach);
  return {
    spacing: um(spacing),
    dots: dots.map(({ box }) => box),
    has(box) {
      const middle = middleOf(box, pitch);
      for (const dot of own.near(middle)) if (between(dot, middle) <= reach) return true;
      return false;
    },
    spreadsIn(box) {
      let count = 0;
      for (const dot of dots) {
        const [x, y] = [dot.x / pitch.x, dot.y / pitch.y];
        if (x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height) count += 1;
        if (count >= AMONG) return true;
      }
      return false;
    },
  };
}

const between = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

function nearest<P extends Point>(point: P, grid: { near(point: Point): Iterable<P> }): number {
  let least = Number.POSITIVE_INFINITY;
  for (const other of grid.near(point)) if (other !== point) least = Math.min(least, between(point, other));
  return least;
}
