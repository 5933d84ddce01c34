import { layRun } from '../layout';
import { type Book, isPrinted } from '../model';
import { um } from '../units';
import type { FilmSince } from './due';

/** When a run was printed; `null` for one that is not. */
function printedAt(book: Book, id: string): string | null {
  const run = book.run[id];
  if (!run || !isPrinted(run)) return null;
  return run.history.findLast(({ state }) => state === 'printed')?.at ?? run.changed;
}

/**
 * Counts film that runs have taken through the printer: of a closed one what was used, of one that is printed and not closed yet
 * what lies on it.
 */
export function filmSince(book: Book): FilmSince {
  const printed: { readonly at: string; readonly length: number }[] = [];
  for (const run of Object.values(book.run)) {
    const at = printedAt(book, run.id);
    if (at === null) continue;
    const length = book.closing[run.id]?.actual.film ?? layRun(book, run)?.lengthUsed ?? 0;
    printed.push({ at, length });
  }
  return (since) => um(printed.reduce((sum, { at, length }) => (at > since ? sum + length : sum), 0));
}
