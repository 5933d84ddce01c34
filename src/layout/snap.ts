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

/**
 * Draws a copy that is being dragged to the film's margins, and to a gap from, or in line with, the
 * copies around it.
 * @param copy as it is held, not yet snapped
 * @param reach how near a position must be, in micrometres: some pixels at the present zoom
 */
export function snap(run: LaidRun, copy: LaidCopy, reach: Micrometres): { x: Micrometres; y: Micrometres } {
  const { film } = run;
  const across = [film.margins.left, film.width - film.margins.right - copy.width];
  const along: number[] = [film.margins.lead];
  for (const other of run.copies) {
    if (other.id === copy.id) continue;
    const near = reach + film.gap;
    const besideAlong = other.y < copy.y + copy.length + near && copy.y < other.y + other.length + near;
    const besideAcross = other.x < copy.x + copy.width + near && copy.x < other.x + other.width + near;
    if (besideAlong) {
      across.push(other.x + other.width + film.gap, other.x - film.gap - copy.width);
      along.push(other.y, other.y + other.length - copy.length);
    }
    if (besideAcross) {
      along.push(other.y + other.length + film.gap, other.y - film.gap - copy.length);
      across.push(other.x, other.x + other.width - copy.width);
    }
  }
  return { x: um(nearest(copy.x, across, reach)), y: um(nearest(copy.y, along, reach)) };
}
