import { tooClose } from '../packing';
import { type Micrometres, um } from '../units';
import type { LaidCopy, LaidRun } from './laid';

/** The nearest of some positions to a wish, if one lies within reach. */
function nearest(wish: number, positions: Iterable<number>, reach: number): number {
  let best = wish;
  let distance = reach;
  for (const position of positions) {
    const away = Math.abs(position - wish);
    if (away <= distance) {
      best = position;
      distance = away;
    }
  }
  return best;
}

/** A corner of a copy, in whole micrometres. */
interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A contact is found to within this, micrometres. */
const FINE = 20;
/** Ways that a copy is pushed to where it may lie. */
const AROUND: readonly Spot[] = Array.from({ length: 8 }, (_, at) => ({
  x: Math.cos((at * Math.PI) / 4),
  y: Math.sin((at * Math.PI) / 4),
}));
/** How many places are tried on each of them. */
const TRIED = 6;

const moved = ({ x, y }: Spot, way: Spot, by: number): Spot => ({
  x: Math.round(x + way.x * by),
  y: Math.round(y + way.y * by),
});

/** The last place on a way from a free one that is free still, before the first found that is not. */
function lastFree(
  from: Spot,
  way: Spot,
  free: number,
  taken: number,
  isFree: (spot: Spot) => boolean,
): number {
  let [low, high] = [free, taken];
  while (Math.abs(high - low) > FINE) {
    const middle = (low + high) / 2;
    if (isFree(moved(from, way, middle))) low = middle;
    else high = middle;
  }
  return low;
}

/** How far a free copy slides one way until the gap stops it; `null` if nothing does within reach. */
function contact(from: Spot, way: Spot, reach: number, isFree: (spot: Spot) => boolean): number | null {
  return isFree(moved(from, way, reach)) ? null : lastFree(from, way, 0, reach, isFree);
}

/** Slides a free copy along one axis to the nearer of what it would touch there. */
function slid(from: Spot, axis: 'x' | 'y', reach: number, isFree: (spot: Spot) => boolean): Spot {
  const ways = [1, -1].map((sign) => ({ x: axis === 'x' ? sign : 0, y: axis === 'y' ? sign : 0 }));
  let best = from;
  let least = Infinity;
  for (const way of ways) {
    const by = contact(from, way, reach, isFree);
    if (by === null || by >= least) continue;
    best = moved(from, way, by);
    least = by;
  }
  return best;
}

/** The nearest place to one that is taken where a copy may lie, of those within reach. */
function pushedOut(from: Spot, reach: number, isFree: (spot: Spot) => boolean): Spot {
  let best = from;
  let least = Infinity;
  for (const way of AROUND) {
    for (let tried = 1; tried <= TRIED; tried += 1) {
      const far = (tried * reach) / TRIED;
      if (far >= least) break;
      if (!isFree(moved(from, way, far))) continue;
      // From there back towards the place that was asked for.
      const by = lastFree(from, way, far, far - reach / TRIED, isFree);
      if (by < least) {
        best = moved(from, way, by);
        least = by;
      }
      break;
    }
  }
  return best;
}

/**
 * Draws a copy that is being dragged to the film's margins, and to a gap from, or in line with, the copies around it. Where copies are laid
 * by their outlines it slides on until the gap between these holds, and out of where it does not.
 * @param copy as it is held, not yet snapped
 * @param reach how near a position must be, in micrometres: some pixels at the present zoom
 */
export function snap(run: LaidRun, copy: LaidCopy, reach: Micrometres): { x: Micrometres; y: Micrometres } {
  const { film } = run;
  const across = [film.margins.left, film.width - film.margins.right - copy.width];
  const along: number[] = [film.margins.lead];
  const near = reach + film.gap;
  const around: LaidCopy[] = [];
  for (const other of run.copies) {
    if (other.id === copy.id) continue;
    const besideAlong = other.y < copy.y + copy.length + near && copy.y < other.y + other.length + near;
    const besideAcross = other.x < copy.x + copy.width + near && copy.x < other.x + other.width + near;
    if (besideAlong && besideAcross) around.push(other);
    // Outlines keep the gap wherever they come near, not at the sides of their boxes.
    const isByBox = !copy.outline && !other.outline;
    if (besideAlong) {
      if (isByBox) across.push(other.x + other.width + film.gap, other.x - film.gap - copy.width);
      along.push(other.y, other.y + other.length - copy.length);
    }
    if (besideAcross) {
      if (isByBox) along.push(other.y + other.length + film.gap, other.y - film.gap - copy.length);
      across.push(other.x, other.x + other.width - copy.width);
    }
  }
  const drawn = { x: nearest(copy.x, across, reach), y: nearest(copy.y, along, reach) };
  if (!around.some(({ outline }) => copy.outline || outline)) return { x: um(drawn.x), y: um(drawn.y) };
  const isFree = ({ x, y }: Spot): boolean => {
    const there = { ...copy, x: um(x), y: um(y) };
    return around.every((other) => !tooClose(there, other, film.gap));
  };
  const free = [drawn, copy].find(isFree);
  let spot: Spot = free ?? pushedOut(copy, reach, isFree);
  // Where a margin or an edge has drawn it already, it stays.
  if (free?.x === copy.x) spot = slid(spot, 'x', reach, isFree);
  if (free?.y === copy.y) spot = slid(spot, 'y', reach, isFree);
  return { x: um(spot.x), y: um(spot.y) };
}
