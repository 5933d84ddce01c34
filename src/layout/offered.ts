import type { Book, Copy, Film, Id, Place, Run } from '../model';
import { type Plan, validatePlan } from '../packing';
import { holds } from './faults';
import { layRun } from './laid';
import { placesOf, type RunProblem } from './problem';

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
function mayShow(book: Book, run: Run, places: Places): boolean {
  const laid = layRun(withPlaces(book, run, places), run);
  return laid !== null && holds(laid);
}

/**
 * Where a plan puts a run's copies, once it has passed both checks: it answers its problem, and nothing on the run is wrong then.
 * @returns `null` if it may not be shown
 */
export function soundPlaces(
  { book, run, film }: { readonly book: Book; readonly run: Run; readonly film: Film },
  problem: RunProblem,
  plan: Plan,
): Places | null {
  if (validatePlan(problem.problem, plan).length > 0) return null;
  const places = placesOf(plan, problem, film);
  return mayShow(book, run, places) ? places : null;
}
