import { describe, expect, it } from 'vitest';
import { orderLines } from '../../app/orders/order-lines';
import { addRun, addTransfer, editOrder, edits, lockRun, session, setPlaces } from '../../src/editing';
import { layRun } from '../../src/layout';
import { type Book, type Id, ordersByDue } from '../../src/model';
import { fromMm, UPRIGHT } from '../../src/units';
import { edited, freshIds, smallBook } from '../editing/book';

const { book: empty, order, front } = smallBook();
const first = Object.keys(empty.run)[0] as Id<'run'>;
const at = { x: fromMm(5), y: fromMm(10), angle: UPRIGHT, pinned: false };
const copyOf = (book: Book, transfer: string) =>
  Object.values(book.copy).find((copy) => copy.transfer === transfer && copy.state === 'waiting') ??
  expect.fail();

const locked = edited(empty, (draft) => {
  setPlaces(draft, first, [[copyOf(empty, front).id, at]]);
  lockRun(draft, first, freshIds());
});
const recoded = edited(locked, (draft) => editOrder(draft, order, { code: 'NEW' }));

/** The code of the order in Press, in Orders, and on the film of a run that is begun since. */
function codes(book: Book): { press: string; orders: string; film: string } {
  let second = '' as Id<'run'>;
  const more = edited(book, (draft) => {
    const { id: film } = Object.values(book.film)[0] ?? expect.fail();
    second = addRun(draft, { name: 'Run 2', film, takes: 'all' }, freshIds());
    const size = { width: fromMm(40), height: fromMm(40), typed: { width: '40', height: '40' } };
    addTransfer(draft, order, { name: 'late', ...size, turn: 'fixed' }, 1, freshIds());
  });
  const late = Object.values(more.transfer).find(({ name }) => name === 'late') ?? expect.fail();
  const laid = edited(more, (draft) => setPlaces(draft, second, [[copyOf(more, late.id).id, at]]));
  const onRun = (run: string) => layRun(laid, laid.run[run] ?? expect.fail())?.copies[0]?.order.code ?? '';
  return { press: onRun(first), orders: ordersByDue(laid)[0]?.code ?? '', film: onRun(second) };
}

describe('the code of an order', () => {
  it('is one in every room: that on film while it stands there, whatever it was given since', () => {
    expect(recoded.order[order]?.code).toBe('NEW');
    expect(codes(recoded)).toEqual({ press: 'HB', orders: 'HB', film: 'HB' });
  });

  it('is found by both', () => {
    const found = (search: string) =>
      orderLines(recoded, { search, sorting: 'due', archived: false, first: null }).length > 0;
    expect(['HB', 'NEW', 'Zq'].map(found)).toEqual([true, true, false]);
  });

  it('is its own once the run is closed, or is a draft again', () => {
    const draft = session(recoded, edits.unlockRun(first), freshIds()).book;
    expect(codes(draft)).toEqual({ press: 'NEW', orders: 'NEW', film: 'NEW' });
    const closed = edited(recoded, (book) => {
      const run = book.run[first];
      if (run && run.state !== 'draft') run.state = 'closed';
    });
    expect(ordersByDue(closed)[0]?.code).toBe('NEW');
  });
});
