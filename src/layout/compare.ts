import { runCost } from '../costing';
import type { Book, Film, Run } from '../model';
import { createPlanner, type Problem } from '../packing';
import { type Micrometres, type Minor, um } from '../units';
import { problemOf } from './problem';

/** Layouts built to compare: enough to tell two films apart, quick enough to wait for. */
const LAYOUTS = 400;

/** What all copies of a run would take of a film. */
export interface FilmTried {
  readonly film: Film;
  /** Taken off a roll, what the printer feeds blank for a job included. */
  readonly length: Micrometres;
  readonly sheets: number;
  readonly cost: Minor;
  /** Copies that found no place: too large, or too little film. */
  readonly leftOut: number;
}

function tried(book: Book, run: Run, film: Film, change: (problem: Problem) => Problem): FilmTried {
  const { problem } = problemOf(book, run, film, 'pinned');
  const planner = createPlanner({ ...change(problem), pinned: [] }, 1);
  planner.step(LAYOUTS);
  const { lengthUsed, sheetsUsed: sheets, unplaced } = planner.best();
  const length = um(film.kind === 'roll' && lengthUsed > 0 ? lengthUsed + film.jobBlank : 0);
  const leftOut = unplaced.reduce((sum, { count }) => sum + count, 0);
  return { film, length, sheets, cost: runCost(film, { length, sheets }), leftOut };
}

const endless = (problem: Problem): Problem =>
  problem.film.kind === 'roll'
    ? { ...problem, film: { ...problem.film, lengthLimit: null } }
    : { ...problem, film: { ...problem.film, sheetLimit: null } };

/** What the copies of a run take by the ways of cutting them apart. */
export function filmByCutting(book: Book, run: Run, film: Film): Record<Film['cutting'], FilmTried> {
  const by = (cutting: Film['cutting']) =>
    tried(book, run, film, (problem) => ({ ...endless(problem), cutting }));
  return { free: by('free'), straight: by('straight'), staged: by('staged') };
}

/** What the copies of a run take when those of an order lie anywhere, and when each order has a stretch of its own. */
export function filmByTogether(book: Book, run: Run, film: Film): Record<'any' | 'apart', FilmTried> {
  const by = (kind: 'any' | 'apart') =>
    tried(book, run, film, (problem) => ({ ...endless(problem), together: { kind } }));
  return { any: by('any'), apart: by('apart') };
}

/** Every film in stock, tried for a run: those that take most copies first, the cheapest among them first. */
export const filmsTried = (book: Book, run: Run): FilmTried[] =>
  Object.values(book.film)
    .filter(({ archived }) => !archived)
    .map((film) => tried(book, run, film, (problem) => problem))
    .sort((a, b) => a.leftOut - b.leftOut || a.cost - b.cost);
