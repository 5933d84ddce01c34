import type { Book, Film, Run } from '../model';
import { createPlanner, cutCount, cutTree, type Problem } from '../packing';
import type { Micrometres } from '../units';
import { sheetAt } from './film-shape';
import type { LaidRun } from './laid';
import { problemOf } from './problem';

/** How many straight cuts part the copies of a run, knife lines among them; `null` if straight cuts alone cannot. */
export function straightCuts(run: Pick<LaidRun, 'copies' | 'film'>): number | null {
  const sheets = new Set(run.copies.map(({ y }) => sheetAt(run.film, y)));
  let cuts = 0;
  for (const sheet of sheets) {
    const tree = cutTree(run.copies.filter(({ y }) => sheetAt(run.film, y) === sheet));
    if (!tree) return null;
    cuts += cutCount(tree);
  }
  return cuts;
}

/** Layouts built to compare: enough to tell the two apart, quick enough to wait for. */
const LAYOUTS = 400;

/** What all copies of a run take when cut apart freely, and by straight cuts alone: lengths, or sheets. */
export function filmByCutting(
  book: Book,
  run: Run,
  film: Film,
): Record<Film['cutting'], Micrometres | number> {
  const { problem } = problemOf(book, run, film, 'pinned');
  const endless: Problem =
    problem.film.kind === 'roll'
      ? { ...problem, film: { ...problem.film, lengthLimit: null } }
      : { ...problem, film: { ...problem.film, sheetLimit: null } };
  const usedBy = (cutting: Film['cutting']) => {
    const planner = createPlanner({ ...endless, cutting, pinned: [] }, 1);
    planner.step(LAYOUTS);
    const { lengthUsed, sheetsUsed } = planner.best();
    return problem.film.kind === 'roll' ? lengthUsed : sheetsUsed;
  };
  return { free: usedBy('free'), straight: usedBy('straight') };
}
