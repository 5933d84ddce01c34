import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addOrder,
  addTransfer,
  applySettled,
  type BookDraft,
  editFilm,
  editTransfer,
  redoStep,
  remember,
  removeOrder,
  removeTransfer,
  setCount,
  setPinned,
  setPlaces,
  stepBack,
  stepForward,
  undoStep,
} from '../../src/editing';
import type { Book, Id, Roll } from '../../src/model';
import { fromMm } from '../../src/units';
import { LATER, NOW, smallBook } from './book';

type Edit = (draft: BookDraft) => void;

const ids = { now: NOW, newId: () => crypto.randomUUID() };
const later = { ...ids, now: LATER };
const nth = <Item>(items: Record<string, Item>, index: number): Item | undefined => {
  const all = Object.values(items);
  return all[index % Math.max(1, all.length)];
};
const mm = fc.integer({ min: 1, max: 400 }).map(fromMm);
const index = fc.nat({ max: 30 });

/** Any one command, on whatever the book holds at the time. */
const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  fc.string().map(
    (name): Edit =>
      (draft) =>
        void addOrder(draft, { name, due: null }, ids),
  ),
  fc.tuple(index, mm, mm, fc.nat({ max: 6 })).map(
    ([at, width, height, count]): Edit =>
      (draft) => {
        const order = nth(draft.order, at);
        const fields = {
          name: 'x',
          width,
          height,
          typed: { width: '', height: '' },
          turn: 'quarter' as const,
        };
        if (order) addTransfer(draft, order.id, fields, count, ids);
      },
  ),
  fc.tuple(index, mm).map(
    ([at, width]): Edit =>
      (draft) => {
        const transfer = nth(draft.transfer, at);
        if (transfer) editTransfer(draft, transfer.id, { width });
      },
  ),
  fc.tuple(index, fc.nat({ max: 9 })).map(
    ([at, count]): Edit =>
      (draft) => {
        const transfer = nth(draft.transfer, at);
        if (transfer) setCount(draft, transfer.id, count, ids);
      },
  ),
  fc.tuple(index, mm, mm, fc.boolean()).map(
    ([at, x, y, turned]): Edit =>
      (draft) => {
        const copy = nth(draft.copy, at);
        const run = nth(draft.run, 0);
        if (copy && run) setPlaces(draft, run.id as Id<'run'>, [[copy.id, { x, y, turned, pinned: false }]]);
      },
  ),
  fc.tuple(index, fc.boolean()).map(
    ([at, pinned]): Edit =>
      (draft) => {
        const copy = nth(draft.copy, at);
        if (copy) setPinned(draft, [copy.id], pinned);
      },
  ),
  mm.map(
    (width): Edit =>
      (draft) => {
        const film = nth(draft.film, 0);
        if (film) editFilm(draft, film.id, { ...(film as Roll), width }, ids);
      },
  ),
  index.map(
    (at): Edit =>
      (draft) => {
        const transfer = nth(draft.transfer, at);
        if (transfer) removeTransfer(draft, transfer.id);
      },
  ),
  index.map(
    (at): Edit =>
      (draft) => {
        const order = nth(draft.order, at);
        if (order) removeOrder(draft, order.id);
      },
  ),
);

/** A book without the instants of change and the ledger: undoing is a change too, and says when it was. */
const contents = (book: Book): unknown =>
  JSON.parse(
    JSON.stringify({ ...book, step: {}, entry: {} }, (key, value) => (key === 'changed' ? undefined : value)),
  );

describe('undo', () => {
  it('after any sequence of commands gives back the first state, and redo the last', () => {
    fc.assert(
      fc.property(fc.array(anyEdit, { maxLength: 12 }), (edits) => {
        const first = smallBook().book;
        let book = first;
        for (const edit of edits) {
          const edited = applySettled(book, edit, NOW);
          book = edited.step ? remember(edited.book, edited.step, NOW) : edited.book;
        }
        const last = book;
        // What is stored is what is read again: steps outlive a reload.
        book = JSON.parse(JSON.stringify(book)) as Book;
        for (let back = stepBack(book); back; back = stepBack(book)) {
          book = undoStep(back.book, back.step, later);
        }
        expect(contents(book)).toEqual(contents(first));
        for (let on = stepForward(book); on; on = stepForward(book)) {
          book = redoStep(on.book, on.step, later);
        }
        expect(contents(book)).toEqual(contents(last));
      }),
    );
  });

  it('stamps what it touches with its own time and leaves the rest alone', () => {
    const { book, front, tag } = smallBook();
    const edited = applySettled(book, (draft) => editTransfer(draft, front, { name: 'back' }), NOW);
    const undone = edited.step && undoStep(edited.book, edited.step, later);
    expect(undone?.transfer[front]).toMatchObject({ name: 'front', changed: LATER });
    expect(undone?.transfer[tag]?.changed).toBe(NOW);
  });

  it('is forgotten forwards by a new command', () => {
    const step = { undo: [], redo: [] };
    const { book } = smallBook();
    const back = stepBack(remember(book, step, NOW));
    expect(back && stepForward(back.book)).not.toBeNull();
    expect(back && stepForward(remember(back.book, step, NOW))).toBeNull();
  });
});

describe('a draft', () => {
  it('follows edits: a copy that no longer fits comes off the film in the same step (rule 5)', () => {
    const { book, front } = smallBook();
    const run = Object.values(book.run)[0];
    const [a, b] = Object.values(book.copy).filter((copy) => copy.transfer === front);
    if (!run || !a || !b) throw new Error('the small book lacks copies');
    const at = (
      x: number,
    ): {
      x: ReturnType<typeof fromMm>;
      y: ReturnType<typeof fromMm>;
      turned: false;
      pinned: false;
    } => ({
      x: fromMm(x),
      y: fromMm(10),
      turned: false,
      pinned: false,
    });
    const laid = applySettled(
      book,
      (draft) =>
        setPlaces(draft, run.id, [
          [a.id, at(5)],
          [b.id, at(110)],
        ]),
      NOW,
    ).book;
    const wider = applySettled(laid, (draft) => editTransfer(draft, front, { width: fromMm(120) }), NOW);
    expect(wider.takenOff).toHaveLength(1);
    expect([wider.book.copy[a.id]?.place === null, wider.book.copy[b.id]?.place === null].sort()).toEqual([
      false,
      true,
    ]);
    const undone = wider.step && undoStep(wider.book, wider.step, later);
    expect(undone && contents(undone)).toEqual(contents(laid));
  });
});
