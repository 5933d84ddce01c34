import type { Consumption } from '../costing';
import { copiesToLay, type LaidRun, layRun, leastOffRoll, problemOf, runFigures } from '../layout';
import type { Book, Film } from '../model';
import { leastFilm } from '../packing';
import { leftOfFilm, sumsOf } from './amount';
import { suppliesOf } from './supplies';

/** What would be left of a film, in its base unit; below nothing where it does not last. */
export interface FilmOutlook {
  readonly afterRun: number;
  /** Once all open runs on it are printed as they lie now. */
  readonly afterAll: number;
  /** Open runs on it, this one included. */
  readonly runs: number;
  /** At most, once all that this run takes is laid, also what still waits: by the proven bound. */
  readonly afterWanted: number;
}

/** What no layout of all copies that a run takes can go below, in the film's base unit. */
function leastWanted(book: Book, run: LaidRun, film: Film): number {
  const record = book.run[run.id];
  if (!record || run.state === 'locked') return taken(run);
  const wanted = problemOf(book, record, film, 'placed');
  // Where nothing waits the layout tells; the bound takes its time, and a layout comes many times a second.
  if (copiesToLay(wanted).length === 0) return taken(run);
  const least = leastFilm(wanted.problem);
  return least.kind === 'sheets' ? least.sheets : leastOffRoll(film, least.length, run);
}

/** What an open run still takes of its film: what is printed part of the way is taken when all is printed. */
const taken = (laid: LaidRun): number => {
  const { length, sheets } = runFigures(laid);
  return laid.film.kind === 'roll' ? length : sheets;
};

/** Whether a film lasts for a run and for all open runs on it; `null` for a run that is printed. */
export function filmOutlook(book: Book, run: LaidRun): FilmOutlook | null {
  const film = book.film[run.film.id];
  if (!film || (run.state !== 'draft' && run.state !== 'locked')) return null;
  const open = Object.values(book.run).filter(
    ({ film: own, state }) => own === film.id && (state === 'draft' || state === 'locked'),
  );
  const others = open
    .filter(({ id }) => id !== run.id)
    .map((each) => {
      const laid = layRun(book, each);
      return laid ? taken(laid) : 0;
    });
  const afterRun = leftOfFilm(film) - taken(run);
  return {
    afterRun,
    afterAll: others.reduce((left, each) => left - each, afterRun),
    runs: open.length,
    afterWanted: Math.min(afterRun, leftOfFilm(film) - leastWanted(book, run, film)),
  };
}

/** Ink or powder that a run would take more of than there is, of what is kept in stock. */
export interface Shortage {
  readonly kind: 'colour' | 'white' | 'powder';
  readonly present: number;
  readonly needed: number;
}

/** What of ink and powder will not last for a run, by the shop's rates. What is not kept in stock is not told of. */
export function shortages(book: Pick<Book, 'item' | 'entry'>, needed: Consumption): Shortage[] {
  const sums = sumsOf(book.entry);
  return (['white', 'colour', 'powder'] as const).flatMap((kind) => {
    const kept = suppliesOf(book, kind);
    const present = kept.reduce((sum, { id }) => sum + (sums.get(id) ?? 0), 0);
    return kept.length > 0 && present < needed[kind] ? [{ kind, present, needed: needed[kind] }] : [];
  });
}
