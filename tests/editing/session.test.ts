import { describe, expect, it } from 'vitest';
import { edits, redo, session, undo } from '../../src/editing';
import { type Book, filmOf, type Id, type Roll } from '../../src/model';
import { asMinor } from '../../src/units';
import { freshIds, smallBook } from './book';

const rollOf = (book: Book): Roll => {
  const [run] = Object.values(book.run);
  const film = run && filmOf(book, run);
  if (film?.kind !== 'roll') throw new Error('the small book has a roll');
  return film;
};
const priced = (book: Book, amount: number): Book => {
  const [run] = Object.values(book.run);
  const roll = rollOf(book);
  const fields = { ...roll, price: { ...roll.price, amount: asMinor(amount) } };
  return session(book, edits.chooseFilm(run?.id ?? ('' as Id<'run'>), roll.id, fields), freshIds()).book;
};

describe('a quiet edit between two steps', () => {
  it('is made in what undo and redo lead to: an old price comes back in the currency of now', () => {
    const { book } = smallBook();
    const yen = session(priced(priced(book, 900), 1200), edits.changeCurrency('JPY'), freshIds()).book;
    expect(rollOf(yen).price.amount).toBe(12);
    const once = undo(yen, freshIds());
    expect(rollOf(once).price.amount).toBe(9);
    const twice = undo(once, freshIds());
    expect(rollOf(twice).price.amount).toBe(8);
    // And forwards from there, in a third currency.
    const kronor = session(twice, edits.changeCurrency('SEK'), freshIds()).book;
    expect(rollOf(kronor).price.amount).toBe(800);
    expect(rollOf(redo(redo(kronor, freshIds()), freshIds())).price.amount).toBe(1200);
  });
});
