import fc from 'fast-check';
import { session } from '../../src/editing';
import type { Book } from '../../src/model';
import { anyEdit } from './any-edit';
import { freshIds, smallBook } from './book';

/** A book as a shop may have it: so many random edits of all kinds, made one after another. */
export function playedBook(edits: number, seed: number): Book {
  const lots = fc.sample(anyEdit, { numRuns: edits, seed });
  return lots.reduce((book, draw) => {
    const edit = draw(book);
    return edit ? session(book, edit, freshIds()).book : book;
  }, smallBook().book);
}
