import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { costsOf, costsTried } from '../../../app/store/costs';
import { useShop } from '../../../app/store/shop';
import { layRun } from '../../../src/layout';
import type { Book } from '../../../src/model';
import { asMinor } from '../../../src/units';
import { laidBook } from './laid-book';

const { book, run } = laidBook();
const initial = useShop.getState();
const bookNow = () => useShop.getState().book;

function laidIn(own: Book) {
  const record = own.run[run];
  const laid = record && layRun(own, record);
  if (!laid) throw new Error('nothing laid');
  return laid;
}

beforeEach(() => useShop.setState({ ...initial, phase: { kind: 'open' }, book }));
afterAll(() => useShop.setState(initial));

describe('the costs of a run', () => {
  it('are reckoned once as long as the book is the same', () => {
    expect(costsOf(book, laidIn(book))).toBe(costsOf(book, laidIn(book)));
  });

  it('follow a price, and are those of the book that is asked for', () => {
    const before = costsOf(book, laidIn(book)).sheet.amount;
    const film = laidIn(book).film;
    if (film.kind !== 'roll') throw new Error('not a roll');
    const { amount, per } = film.price;
    const dear = { ...film, price: { amount: asMinor(2 * amount), per } };
    useShop.setState({ book: { ...book, film: { ...book.film, [film.id]: dear } } });
    const dearer = costsOf(bookNow(), laidIn(bookNow())).sheet.amount;
    expect(dearer).toBeGreaterThan(before);
    expect(costsOf(book, laidIn(book)).sheet.amount).toBe(before);
  });

  it('that are only tried are the same, and are not kept', () => {
    const tried = costsTried(book, laidIn(book));
    expect(tried).toEqual(costsOf(book, laidIn(book)));
    expect(tried).not.toBe(costsOf(book, laidIn(book)));
  });
});
