import { problemOnFilm } from '../../src/layout';
import { type Book, draftOf } from '../../src/model';
import { leastFilm } from '../../src/packing';
import { type Micrometres, um } from '../../src/units';
import { useShop } from '../store/shop';

let last: { key: string; shortest: Micrometres } | null = null;

/** The proven shortest length for what lies on the film; it depends on what lies there, not on where. */
function shortestOf(book: Book): Micrometres | null {
  const draft = draftOf(book);
  if (!draft) return null;
  const problem = problemOnFilm(book, draft.run, draft.film);
  if (problem.pieces.length === 0) return null;
  const key = JSON.stringify(problem);
  if (last?.key !== key) last = { key, shortest: um(leastFilm(problem)) };
  return last.shortest;
}

let lastBook: { book: Book; shortest: Micrometres | null } | null = null;

export const useShortest = (): Micrometres | null =>
  useShop(({ book }) => {
    if (lastBook?.book !== book) lastBook = { book, shortest: shortestOf(book) };
    return lastBook.shortest;
  });
