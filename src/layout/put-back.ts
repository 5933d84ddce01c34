import type { Book, Copy, Film, Place, Run } from '../model';
import { createPlanner } from '../packing';
import { placesOf, problemOf } from './problem';

/**
 * The place nearest to the leading edge where one waiting copy can lie, all others staying where they are.
 * @returns `null` if the film has none
 */
export function placeFor(book: Book, run: Run, film: Film, copy: Copy): Place | null {
  const { problem } = problemOf(book, run, film, 'placed');
  // What is printed stands before the transfers as they are now.
  const own = problem.pieces.findLastIndex((piece) => piece.id === copy.transfer);
  const pieces = problem.pieces.map((piece, index) => ({ ...piece, count: index === own ? 1 : 0 }));
  const copies = pieces.map(({ count }) => (count > 0 ? [copy] : []));
  const alone = { problem: { ...problem, pieces }, copies };
  const [place] = placesOf(createPlanner(alone.problem, 1).best(), alone, film);
  return place?.[1] ?? null;
}
