import { describe, expect, it } from 'vitest';
import { edits, session } from '../../src/editing';
import { holds, inDueOrder, layRun, placesOf, problemOf } from '../../src/layout';
import { type Book, type Id, runOf } from '../../src/model';
import { atOnce, createPlanner } from '../../src/packing';
import { fromMm, type LocalDate } from '../../src/units';
import { freshIds, smallBook } from '../editing/book';

/** The film with three orders laid on it, due one after the other. */
function shop(): { book: Book; orders: readonly Id<'order'>[] } {
  const ids = freshIds();
  const small = smallBook();
  let { book } = small;
  const of = <Result>(edit: Parameters<typeof session<Result>>[1]): Result => {
    const done = session(book, edit, ids);
    book = done.book;
    return done.result;
  };
  of(edits.editOrder(small.order, { due: '2026-11-25' as LocalDate }));
  of(edits.setCount(small.front, 12, 'ordered'));
  const others = [
    // The first has the footprint of the order before it; of the second each copy takes the film's whole width.
    { day: 26, width: 100, height: 80 },
    { day: 27, width: 300, height: 60 },
  ].map(({ day, width, height }) => {
    const order = of(edits.addOrder({ name: String(day), due: `2026-11-${day}` as LocalDate }));
    const typed = { width: String(width), height: String(height) };
    const size = { width: fromMm(width), height: fromMm(height), typed };
    of(edits.addTransfer(order, { name: 'Back', ...size, turn: 'fixed', shade: null }, 6));
    return order;
  });
  const { run, film } = runOf(book, null) ?? expect.fail();
  const problem = problemOf(book, run, film, 'pinned');
  const planner = createPlanner(problem.problem, 1);
  planner.step(50);
  of(edits.layOut(run.id, placesOf(planner.best(), problem, film)));
  return { book, orders: [small.order, ...others] };
}

/** Where the orders' last copies end, and the film that the run takes. */
function ends(book: Book, orders: readonly Id<'order'>[]): { ends: number[]; film: number } {
  const { run } = runOf(book, null) ?? expect.fail();
  const laid = layRun(book, run) ?? expect.fail();
  expect(holds(laid)).toBe(true);
  const endOf = (id: Id<'order'>) =>
    Math.max(...laid.copies.flatMap(({ order, y, length }) => (order.id === id ? [y + length] : [])));
  return { ends: orders.map(endOf), film: laid.lengthUsed };
}

/** The moves that put what lies on the run in due order. */
function movesOf(book: Book) {
  const draft = runOf(book, null) ?? expect.fail();
  return inDueOrder({ book, ...draft }, problemOf(book, draft.run, draft.film, 'pinned'), atOnce);
}

describe('a layout that stays on the film that it takes', () => {
  it('needs no move where it is in due order', () => {
    expect(movesOf(shop().book)).toEqual([]);
  });

  it.each([1, 2])(
    'has a rush at its front, number %i by its due date before, and needs no move then',
    (which) => {
      const { book, orders } = shop();
      const rush = orders[which] ?? expect.fail();
      const rushed = session(book, edits.editOrder(rush, { rush: true }), freshIds()).book;
      const moves = movesOf(rushed) ?? expect.fail();
      expect(moves.length).toBeGreaterThan(0);
      const { run } = runOf(rushed, null) ?? expect.fail();
      const next = session(rushed, edits.layOut(run.id, moves), freshIds()).book;
      const [before, after] = [ends(rushed, orders), ends(next, orders)];
      expect(after.ends[which]).toBeLessThan(before.ends[which] ?? 0);
      expect(after.film).toBe(before.film);
      expect(movesOf(next)).toEqual([]);
    },
  );

  it('leaves what is pinned where it lies, though an order that is due sooner lies behind it', () => {
    const { book, orders } = shop();
    const { run } = runOf(book, null) ?? expect.fail();
    const placed = Object.values(book.copy).filter((copy) => copy.run === run.id && copy.place);
    const ids = freshIds();
    const pinned = session(
      book,
      edits.setPinned(
        placed.map(({ id }) => id),
        true,
      ),
      ids,
    ).book;
    const rush = orders[2] ?? expect.fail();
    expect(movesOf(session(pinned, edits.editOrder(rush, { rush: true }), ids).book)).toEqual([]);
  });
});
