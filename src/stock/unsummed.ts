import type { Book, Film } from '../model';
import { leftOfFilm, sumsOf } from './amount';

/** A film of which more or less is left than its entries come to. */
interface Unsummed {
  readonly film: Film;
  /** What its record says is left of it, less the sum of its entries: micrometres of a roll, sheets of a stack. */
  readonly difference: number;
}

/** The films whose ledger does not sum to what is left of them. No edit leads there; a book that was damaged, or made by hand, may be so. */
export function unsummed({ film, entry }: Pick<Book, 'film' | 'entry'>): Unsummed[] {
  const sums = sumsOf(entry);
  return Object.values(film).flatMap((own) => {
    const difference = leftOfFilm(own) - (sums.get(own.id) ?? 0);
    return difference === 0 ? [] : [{ film: own, difference }];
  });
}
