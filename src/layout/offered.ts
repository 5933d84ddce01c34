import type { Book, Copy, Id, Place, Run } from '../model';
import { holds } from './faults';
import { layRun } from './laid';

/** Where copies are to lie; `null` for one that is to come off the film. */
export type Places = readonly (readonly [Id<'copy'>, Place | null])[];

/** A book with copies of a run where told; those that come off wait for it. */
export function withPlaces(book: Book, run: Run, places: Places): Book {
  const copy: Record<string, Copy> = { ...book.copy };
  for (const [id, place] of places) {
    const own = copy[id];
    if (!own) continue;
    copy[id] = place
      ? { ...own, state: 'placed', run: run.id, place }
      : { ...own, state: 'waiting', run: run.id, place };
  }
  return { ...book, copy };
}

/** Whether a run may be shown with its copies where a plan would have them. */
export function mayShow(book: Book, run: Run, places: Places): boolean {
  const laid = layRun(withPlaces(book, run, places), run);
  return laid !== null && holds(laid);
}
