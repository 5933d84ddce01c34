import type { Book, Copy, Film, Place, Run } from '../model';
import { createPlanner } from '../packing';
import { soundPlaces } from './offered';
import { problemOfSome } from './problem';

/**
 * The place nearest to the leading edge where one waiting copy can lie, all others staying where they are.
 * @returns `null` if the film has none
 */
export function placeFor(book: Book, run: Run, film: Film, copy: Copy): Place | null {
  const alone = problemOfSome(book, run, film, new Set([copy.id]));
  const [place] = soundPlaces({ book, run, film }, alone, createPlanner(alone.problem, 1).best()) ?? [];
  return place?.[1] ?? null;
}
