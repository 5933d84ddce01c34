import fc from 'fast-check';
import { session } from '../../src/editing';
import type { Book } from '../../src/model';
import { anyEdit } from './any-edit';
import { freshIds } from './book';

/**
 * Makes any edits in a book, and looks at it after each beside one of which nothing is known: what is kept must be what would be worked
 * out anew.
 */
export const afterEdits = (
  book: Book,
  see: (own: Book, anew: Book) => void,
  { most, numRuns }: { readonly most: number; readonly numRuns: number },
): void =>
  fc.assert(
    fc.property(fc.array(anyEdit, { minLength: 1, maxLength: most }), (lots) => {
      let own = book;
      for (const draw of lots) {
        const edit = draw(own);
        if (edit) own = session(own, edit, freshIds()).book;
        see(own, structuredClone(own));
      }
    }),
    { numRuns },
  );
