import { describe, expect, it } from 'vitest';
import { applyEdit, checked, edits, redo, session, undo } from '../../src/editing';
import { type Book, filmOf, type Id, type Roll } from '../../src/model';
import { asMinor, fromMm } from '../../src/units';
import { freshIds, NOW, smallBook } from './book';

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
    const once = undo(yen, freshIds()).book;
    expect(rollOf(once).price.amount).toBe(9);
    const twice = undo(once, freshIds()).book;
    expect(rollOf(twice).price.amount).toBe(8);
    // And forwards from there, in a third currency.
    const kronor = session(twice, edits.changeCurrency('SEK'), freshIds()).book;
    expect(rollOf(kronor).price.amount).toBe(800);
    expect(rollOf(redo(redo(kronor, freshIds()).book, freshIds()).book).price.amount).toBe(1200);
  });
});

describe('undo', () => {
  const { book, front } = smallBook();
  const [run] = Object.values(book.run);
  const [a, b] = Object.values(book.copy).filter(({ transfer }) => transfer === front);
  if (!run || !a || !b) throw new Error('the small book lacks copies');
  const at = (x: number) => ({ x: fromMm(x), y: fromMm(10), turned: false, pinned: false });
  const laid = session(
    book,
    edits.setPlaces(run.id, [
      [a.id, at(5)],
      [b.id, at(110)],
    ]),
    freshIds(),
  ).book;
  const placesOf = (of: Book) => [a, b].map(({ id }) => of.copy[id]?.place?.x ?? null);
  /** A wider gap, of which history knows nothing: a version that forgot to check has left it. */
  const unknown = (of: Book) =>
    applyEdit(of, (draft) => Object.assign(draft.film[run.film] ?? {}, { gap: fromMm(8) }), NOW).book;

  it('takes off what can no longer lie where it leads to, says so, and leads on and back from there', () => {
    const off = session(laid, edits.takeOff([b.id]), freshIds()).book;
    const back = undo(unknown(off), freshIds());
    expect(back.takenOff).toEqual([b.id]);
    expect(placesOf(back.book)).toEqual([fromMm(5), null]);
    const further = undo(back.book, freshIds());
    expect(placesOf(further.book)).toEqual([null, null]);
    const again = redo(further.book, freshIds());
    expect(again.takenOff).toEqual([]);
    expect(placesOf(again.book)).toEqual([fromMm(5), null]);
    expect(placesOf(redo(again.book, freshIds()).book)).toEqual([fromMm(5), null]);
  });

  it('finds what an older version left on the film where it may not lie', () => {
    const { book: opened, takenOff } = checked(unknown(laid), freshIds());
    expect(takenOff).toEqual([b.id]);
    expect(placesOf(opened)).toEqual([fromMm(5), null]);
    expect(checked(laid, freshIds())).toEqual({ book: laid, takenOff: [] });
  });
});
