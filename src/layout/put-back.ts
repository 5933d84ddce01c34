import type { Book, Copy, Film, Place, Run } from '../model';
import { createPlanner } from '../packing';
import { problemOf } from './problem';

/**
 * The place nearest to the leading edge where one waiting copy can lie, all others staying where they are.
 * @returns `null` if the film has none
 */
export function placeFor(book: Book, run: Run, film: Film, copy: Copy): Place | null {
  const { problem } = problemOf(book, run, film, 'placed');
  const alone = problem.pieces.map((piece) => ({ ...piece, count: piece.id === copy.transfer ? 1 : 0 }));
  const [placement] = createPlanner({ ...problem, pieces: alone }, 1)
    .best()
    .placements.slice(problem.pinned.length);
  if (!placement) return null;
  const { x, y, turned } = placement;
  return { run: run.id, x, y, turned, pinned: false };
}
