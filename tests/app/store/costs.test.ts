import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { costsOf, costsTried } from '../../../app/store/costs';
import { useShop } from '../../../app/store/shop';
import { edits, session } from '../../../src/editing';
import { layRun } from '../../../src/layout';
import { asId, type Book } from '../../../src/model';
import { asMinor } from '../../../src/units';
import { afterEdits } from '../../editing/after-edits';
import { freshIds, NOW } from '../../editing/book';
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

  it('are kept where only what is told of an order changes', () => {
    const [order] = Object.keys(book.order);
    const told = session(
      book,
      edits.editOrder(order ?? '', { name: 'Hill Bakers and Sons' }),
      freshIds(),
    ).book;
    expect(told).not.toBe(book);
    expect(costsOf(told, laidIn(told))).toBe(costsOf(book, laidIn(book)));
  });

  it('that are kept are what they would be if they were reckoned anew, after any edits', () => {
    const see = (own: Book, anew: Book) => {
      for (const [id, record] of Object.entries(own.run)) {
        const laid = layRun(own, record);
        const again = layRun(anew, anew.run[id] ?? expect.fail());
        if (!laid || !again) continue;
        const { use, sheet } = costsOf(own, laid);
        const tried = costsTried(anew, again);
        expect({ use, sheet }).toEqual({ use: tried.use, sheet: tried.sheet });
      }
    };
    afterEdits(book, see, { most: 10, numRuns: 60 });
  }, 60_000);

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

  it('follow what is spoiled on it', () => {
    const laid = laidIn(book);
    const [copy] = laid.copies;
    const spoilt = {
      id: asId<'spoilage'>('spoilt'),
      run: laid.id,
      copy: copy?.id ?? expect.fail(),
      stage: 'press',
      garment: true,
      reason: 'crooked',
      changed: NOW,
    } as const;
    const replaced = (own: Book) => costsOf(own, laid).use.orders.map((order) => order.replaced);
    expect(replaced(book)).toEqual([0]);
    expect(replaced({ ...book, spoilage: { [spoilt.id]: spoilt } })).toEqual([1]);
  });

  it('that are only tried are the same, and are not kept', () => {
    const tried = costsTried(book, laidIn(book));
    expect(tried).toEqual(costsOf(book, laidIn(book)));
    expect(tried).not.toBe(costsOf(book, laidIn(book)));
  });
});
