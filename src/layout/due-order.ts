import type { Book, Film, Place, Run } from '../model';
import type { AtOnce } from '../packing';
import { type Places, soundPlaces } from './offered';
import { placedOf, type RunProblem } from './problem';

const isSame = (a: Place | null, b: Place | null): boolean =>
  a?.x === b?.x && a?.y === b?.y && a?.angle === b?.angle;

/**
 * What a problem lays, where it lies now, with what is due soonest as near to the front as it goes on the film that the run takes.
 * @param problem all that it lays, lies on the run
 * @returns copies that lie elsewhere then; `null` if that may not be shown
 */
export function inDueOrder(
  draft: { readonly book: Book; readonly run: Run; readonly film: Film },
  problem: RunProblem,
  { reordered }: AtOnce,
): Places | null {
  const laid = problem.pieces.flatMap(({ copies }, piece) =>
    copies.flatMap(({ place }) => (place ? [placedOf(piece, place, draft.film)] : [])),
  );
  const places = soundPlaces(
    draft,
    problem,
    reordered(problem.problem, [...problem.problem.pinned, ...laid]),
  );
  return places?.filter(([id, place]) => !isSame(place, draft.book.copy[id]?.place ?? null)) ?? null;
}
