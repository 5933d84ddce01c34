import type { Book, Copy, Film, Place, Run } from '../model';
import type { AtOnce } from '../packing';
import { soundPlaces } from './offered';
import { problemOfSome } from './problem';

/**
 * The place nearest to the leading edge where one waiting copy can lie, all others staying where they are.
 * @returns `null` if the film has none
 */
export function placeFor(book: Book, run: Run, film: Film, copy: Copy, { firstPlan }: AtOnce): Place | null {
  const alone = problemOfSome(book, run, film, new Set([copy.id]));
  const [place] = soundPlaces({ book, run, film }, alone, firstPlan(alone.problem)) ?? [];
  return place?.[1] ?? null;
}
