import { describe, expect, it } from 'vitest';
import { addFilm, edits, firstFilm, session, undo } from '../../src/editing';
import { copiesToLay, faultsOf, holds, layRun, placesOf, problemOf } from '../../src/layout';
import { type Book, type Id, type Run, runOf } from '../../src/model';
import { atOnce, createPlanner } from '../../src/packing';
import { fromMm, type LocalDate } from '../../src/units';
import { edited, freshIds, smallBook } from './book';

const SPAN = 400;

/** A roll in spans full of copies of an order due today, and a rush that came in after: two rows of it, due next week. */
function shop(): { book: Book; run: Run; rush: Id<'order'>; day: Id<'order'> } {
  const ids = freshIds();
  const small = smallBook();
  let { book } = small;
  const of = <Result>(edit: Parameters<typeof session<Result>>[1]): Result => {
    const done = session(book, edit, ids);
    book = done.book;
    return done.result;
  };
  const open = runOf(book, null) ?? expect.fail();
  const { id: _, changed: __, ...film } = open.film;
  of(
    edits.chooseFilm(open.run.id, open.film.id, {
      ...film,
      kind: 'roll',
      spanMax: fromMm(SPAN),
    } as typeof film),
  );
  of(edits.editOrder(small.order, { due: '2026-11-25' as LocalDate }));
  of(edits.setCount(small.front, 30, 'ordered'));
  layAll();
  const rush = of(edits.addOrder({ name: 'Rush', due: '2026-12-02' as LocalDate }));
  const size = { width: fromMm(150), height: fromMm(120), typed: { width: '150', height: '120' } };
  const transfer = of(edits.addTransfer(rush, { name: 'Back', ...size, turn: 'fixed', shade: null }, 4));
  expect(transfer).toBeTruthy();
  return { book, run: book.run[open.run.id] ?? expect.fail(), rush, day: small.order };

  function layAll() {
    const { run, film: own } = runOf(book, null) ?? expect.fail();
    const problem = problemOf(book, run, own, 'pinned');
    const planner = createPlanner(problem.problem, 1);
    planner.step(50);
    of(edits.layOut(run.id, placesOf(planner.best(), problem, own)));
  }
}

const laid = (book: Book, run: string) => layRun(book, book.run[run] ?? expect.fail()) ?? expect.fail();

describe('a rush that must go out first', () => {
  it('comes to the front of the draft in one act, and undo takes all of it back', () => {
    const { book, run, rush } = shop();
    const done = session(book, edits.bringFirst(rush, { kind: 'run', run: run.id }, atOnce), freshIds());
    expect(done.result).toEqual({ run: run.id, placed: 4, waiting: 0 });
    expect(done.takenOff).toEqual([]);
    expect(done.book.order[rush]?.rush).toBe(true);
    const now = laid(done.book, run.id);
    expect(holds(now)).toBe(true);
    expect(faultsOf(now)).toEqual([]);
    const [first] = now.spans ?? expect.fail();
    const own = now.copies.filter(({ order }) => order.id === rush);
    expect(own).toHaveLength(4);
    for (const { y, length } of own) expect(y + length).toBeLessThanOrEqual(first?.to ?? 0);
    const back = undo(done.book, freshIds());
    expect(back.book.order[rush]?.rush).toBe(false);
    expect(back.book.copy).toEqual(book.copy);
  });

  it('has a run of its own where the present one is in print, and undo takes that back too', () => {
    const { book, run, rush } = shop();
    const locked = session(book, edits.lockRun(run.id, null), freshIds()).book;
    expect(
      session(locked, edits.bringFirst(rush, { kind: 'run', run: run.id }, atOnce), freshIds()).result,
    ).toBeNull();
    const done = session(
      locked,
      edits.bringFirst(rush, { kind: 'new', name: 'Rush', inUse: run.film }, atOnce),
      freshIds(),
    );
    const made = done.result?.run ?? expect.fail();
    expect(laid(done.book, made).copies.map(({ order }) => order.id)).toEqual([rush, rush, rush, rush]);
    expect(laid(done.book, run.id)).toEqual(laid(locked, run.id));
    expect(
      copiesToLay(
        problemOf(done.book, done.book.run[made] ?? expect.fail(), laid(done.book, made).film, 'pinned'),
      ),
    ).toHaveLength(4);
    expect(undo(done.book, freshIds()).book.run[made]).toBeUndefined();
  });

  it('begins its own run on the fullest roll that its prints fit, as any new run does', () => {
    const { book, run, rush } = shop();
    const ids = freshIds();
    const roll = (name: string, width: number, left: number) => {
      const film = firstFilm(name, 'USD', 'mm');
      if (film.kind !== 'roll') throw new Error('no roll');
      return { ...film, width: fromMm(width), lengthLeft: fromMm(left) };
    };
    const stocked = edited(book, (draft) => {
      addFilm(draft, roll('Full', 330, 90_000), ids);
      // Its prints are 150 x 120 mm.
      addFilm(draft, roll('Narrow', 100, 95_000), ids);
    });
    const locked = session(stocked, edits.lockRun(run.id, null), ids).book;
    const on = { kind: 'new', name: 'Rush', inUse: run.film } as const;
    const done = session(locked, edits.bringFirst(rush, on, atOnce), ids);
    const made = done.book.run[done.result?.run ?? ''] ?? expect.fail();
    expect(done.book.film[made.film]?.name).toBe('Full');
  });

  it('comes over from another draft, and changes nothing where all of it is in print', () => {
    const { book, run, rush, day } = shop();
    const other = session(book, edits.addRun({ name: '2', film: run.film, takes: 'chosen' }), freshIds());
    const over = session(
      other.book,
      edits.bringFirst(day, { kind: 'run', run: other.result }, atOnce),
      freshIds(),
    );
    expect(laid(over.book, run.id).copies).toEqual([]);
    expect(over.result?.placed).toBe(Object.values(book.copy).filter(({ run: on }) => on === run.id).length);
    const first = session(book, edits.bringFirst(rush, { kind: 'run', run: run.id }, atOnce), freshIds());
    const locked = session(first.book, edits.lockRun(run.id, null), freshIds()).book;
    const again = session(
      locked,
      edits.bringFirst(rush, { kind: 'new', name: '3', inUse: run.film }, atOnce),
      freshIds(),
    );
    expect(again.result).toBeNull();
    expect(again.book).toBe(locked);
  });
});
