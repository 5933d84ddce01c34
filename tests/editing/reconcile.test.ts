import { describe, expect, it } from 'vitest';
import { applyEdit, edits, reconciled, session, undo } from '../../src/editing';
import type { Book } from '../../src/model';
import { leftOfFilm, sumsOf, unsummed } from '../../src/stock';
import { um } from '../../src/units';
import { demoShop } from '../demo/shop';
import { freshIds, NOW, smallBook } from './book';

/** A book in which a film has so much more than its entries come to. */
function amiss(book: Book, by: number): Book {
  return applyEdit(
    book,
    (draft) => {
      const [film] = Object.values(draft.film);
      if (film?.kind === 'roll') film.lengthLeft = um(film.lengthLeft + by);
    },
    NOW,
  ).book;
}

describe('a film whose ledger does not sum to what is left of it', () => {
  const { book } = smallBook();

  it.each([
    ['more', 250_000],
    ['less', -250_000],
    ['one micrometre more', 1],
  ])('is found and gets an entry of the difference, where %s is left', (_, by) => {
    const wrong = amiss(book, by);
    expect(unsummed(wrong).map(({ difference }) => difference)).toEqual([by]);
    const { book: mended, films } = reconciled(wrong, freshIds());
    expect(films.map(({ id }) => id)).toEqual(Object.keys(book.film).slice(0, 1));
    expect(mended.film).toEqual(wrong.film);
    expect(Object.values(mended.entry).slice(0, -1)).toEqual(Object.values(wrong.entry));
    for (const film of Object.values(mended.film))
      expect(sumsOf(mended.entry).get(film.id)).toBe(leftOfFilm(film));
    expect(unsummed(mended)).toEqual([]);
  });

  it('stays mended through undo of what was done before', () => {
    const done = session(book, edits.addOrder({ name: 'Mill', due: null }), freshIds()).book;
    const { book: mended } = reconciled(amiss(done, 9_000), freshIds());
    const back = undo(mended, freshIds()).book;
    expect(back.order).toEqual(book.order);
    expect(unsummed(back)).toEqual([]);
  });

  it('is none in a book that was only ever worked on', () => {
    for (const sound of [book, demoShop('mm'), demoShop('in')]) {
      const { book: same, films } = reconciled(sound, freshIds());
      expect([films, same === sound]).toEqual([[], true]);
    }
  });
});
