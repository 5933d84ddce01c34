import type { Book, Copy, Film, Id, Place, Run } from '../model';
import { type Plan, validatePlan } from '../packing';
import { holds } from './faults';
import { type LaidRun, layRun } from './laid';
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

interface Draft {
  readonly book: Book;
  readonly run: Run;
  readonly film: Film;
}

/**
 * A run as a plan would have it, once that has passed both checks: it answers its problem, and nothing on the run is wrong then.
 * @returns `null` if it may not be shown
 */
export function soundLayout(
  { book, run, film }: Draft,
  problem: RunProblem,
  plan: Plan,
): { readonly places: Places; readonly laid: LaidRun } | null {
  if (validatePlan(problem.problem, plan).length > 0) return null;
  const places = placesOf(plan, problem, film);
  const laid = layRun(withPlaces(book, run, places), run);
  return laid && holds(laid) ? { places, laid } : null;
}

/** Where a plan puts a run's copies, if it may be shown, see {@link soundLayout}; else `null`. */
export const soundPlaces = (draft: Draft, problem: RunProblem, plan: Plan): Places | null =>
  soundLayout(draft, problem, plan)?.places ?? null;
