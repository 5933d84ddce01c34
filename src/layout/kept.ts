import type { Book, Run } from '../model';
import { brokenWishes, holds } from './faults';
import { orderStretch, runFigures } from './figures';
import { type LaidRun, layRun } from './laid';
import { copiesToLay, type RunProblem } from './problem';

/**
 * Whether a run's layout stays, since a plan for the same copies would take more film: all that the problem lays, lies there, nothing
 * is wrong with it, and it breaks no wish. Where orders are to lie near each other, a longer plan is taken that has them nearer.
 * @param next as the plan would have the run
 */
export function staysShorter(book: Book, run: Run, problem: RunProblem, next: LaidRun): boolean {
  const laid = layRun(book, run);
  if (!laid) return false;
  const lies = new Set<string>(laid.copies.map(({ id }) => id));
  const isWhole = copiesToLay(problem).every(({ id }) => lies.has(id));
  if (!isWhole || !holds(laid) || brokenWishes(laid).length > 0) return false;
  if (laid.film.together.kind === 'near' && orderStretch(next) < orderStretch(laid)) return false;
  const [now, then] = [runFigures(laid), runFigures(next)];
  return laid.film.kind === 'roll' ? then.length > now.length : then.sheets > now.sheets;
}
