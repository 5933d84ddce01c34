import type { Book, Film } from '../model';
import { unitOf, unsummed } from '../stock';
import { applyEdit, type EditContext } from './step';

/**
 * Makes the ledger of each film sum to what is left of it, by an entry of the difference: layouts go by the film's own figure, and
 * entries are never changed. For books that come from storage, before they are worked on; it is no step of undo.
 * @returns the films that had such an entry
 */
export function reconciled(
  book: Book,
  { newId, now }: EditContext,
): { readonly book: Book; readonly films: readonly Film[] } {
  const wrong = unsummed(book);
  const mended = applyEdit(
    book,
    (draft) => {
      for (const { film, difference } of wrong) {
        const id = newId<'entry'>();
        draft.entry[id] = {
          id,
          item: film.id,
          name: film.name,
          unit: unitOf(film),
          kind: 'counted',
          amount: difference,
          run: null,
          order: null,
          counters: null,
          note: '',
          at: now,
          changed: now,
        };
      }
    },
    now,
  );
  return { book: mended.book, films: wrong.map(({ film }) => film) };
}
