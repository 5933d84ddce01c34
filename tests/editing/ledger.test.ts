import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addFilm,
  addGarment,
  addOrder,
  addRun,
  addSupply,
  addTransfer,
  advanceRun,
  applySettled,
  type BookDraft,
  closeRun,
  counterEntry,
  cutOffcut,
  editFilm,
  editRun,
  enterByHand,
  finishRun,
  forget,
  type HandEntry,
  lockRun,
  printedTo,
  putOffcutBack,
  redoStep,
  remember,
  removeFilm,
  removeRun,
  setPlaces,
  spoil,
  spoilCopy,
  stepBack,
  stepForward,
  stepRunBack,
  undoStep,
  unlockRun,
} from '../../src/editing';
import { proposeClosing } from '../../src/log';
import { type Book, type Film, type Id, type Roll, type Run, settingsOf } from '../../src/model';
import { blanksOfRun, counterProblem, itemOf, leftOfFilm, sumsOf } from '../../src/stock';
import { fromMm, type LocalDate, UPRIGHT, um } from '../../src/units';
import { edited, freshIds, NOW, smallBook } from './book';

/** A step of a hand at work: an edit that may be undone, one that begins undo anew, or undo and redo themselves. */
type Act = Edit | { readonly kind: 'undo' } | { readonly kind: 'redo' };
interface Edit {
  readonly kind: 'edit' | 'for-good';
  edit(draft: BookDraft): void;
}

const nth = <Item>(items: Readonly<Record<string, Item>>, index: number): Item | undefined => {
  const all = Object.values(items);
  return all[index % Math.max(1, all.length)];
};
const index = fc.nat({ max: 30 });
const ids = freshIds;
const edit = (act: (draft: BookDraft) => void): Act => ({ kind: 'edit', edit: act });
const forGood = (act: (draft: BookDraft) => void): Act => ({ kind: 'for-good', edit: act });

const close = (draft: BookDraft, run: Run, share: number): void => {
  const book = draft as Book;
  const settings = settingsOf(book);
  if (!settings) return;
  const covers = () => ({ colour: 3000, white: 5000 });
  const closing = proposeClosing(book, run.id, settings, covers, {
    now: NOW,
    day: '2026-11-25' as LocalDate,
  });
  if (!closing) return;
  const film = um(Math.round(share * closing.actual.film));
  const blanks = blanksOfRun(book, run).map(({ blank, order, ...each }) => ({
    ...each,
    blank: blank.id,
    order: order.id,
  }));
  closeRun(draft, { ...closing, actual: { ...closing.actual, film } }, blanks, ids());
};

/** An act on some run. */
const onRun = (act: (draft: BookDraft, run: Run) => void) =>
  index.map((at) =>
    forGood((draft) => {
      const run = nth(draft.run, at) as Run | undefined;
      if (run) act(draft, run);
    }),
  );

/** One state on, whatever a run's is. */
const goOn = fc.tuple(fc.nat({ max: 1 }), fc.constantFrom(0.5, 1, 1.5)).map(([at, share]) =>
  forGood((draft) => {
    const run = nth(draft.run, at) as Run | undefined;
    if (!run) return;
    if (run.state === 'draft') lockRun(draft, run.id, ids());
    else if (run.state === 'locked') finishRun(draft, run.id, ids());
    else if (run.state === 'pressed') close(draft, run, share);
    else advanceRun(draft, run.id, ids());
  }),
);

const handKinds = ['bought', 'returned', 'weighed-out', 'discarded', 'spoiled', 'counted'] as const;

const anyAct: fc.Arbitrary<Act> = fc.oneof(
  fc.constant<Act>({ kind: 'undo' }),
  fc.constant<Act>({ kind: 'redo' }),
  fc.tuple(index, fc.nat({ max: 12_000_000 })).map(([at, length]) =>
    edit((draft) => {
      const film = nth(draft.film, at) as Film | undefined;
      if (!film) return;
      const fields =
        film.kind === 'roll' ? { ...film, lengthLeft: um(length) } : { ...film, sheetsLeft: length % 50 };
      editFilm(draft, film.id, fields, ids());
    }),
  ),
  fc.nat({ max: 20_000_000 }).map((length) =>
    edit((draft) => {
      const roll = nth(draft.film, 0) as Roll | undefined;
      if (roll?.kind === 'roll') addFilm(draft, { ...roll, lengthLeft: um(length) }, ids(), 'bought');
    }),
  ),
  index.map((at) => edit((draft) => removeFilm(draft, nth(draft.film, at)?.id ?? '', ids()))),
  fc.nat({ max: 900 }).map((amount) =>
    edit((draft) => {
      const box = { lot: '', bestBefore: null, opened: null, reorder: null, order: '' };
      addSupply(draft, { kind: 'white', name: 'White', ...box }, amount, ids());
    }),
  ),
  fc.tuple(index, fc.constantFrom(...handKinds), fc.nat({ max: 3_000_000 })).map(([at, kind, amount]) =>
    edit((draft) => {
      const item = nth({ ...draft.film, ...draft.item }, at);
      if (item) enterByHand(draft, item.id, { kind, amount } as HandEntry, { run: null, note: '' }, ids());
    }),
  ),
  index.map((at) =>
    edit((draft) => {
      const entry = nth(draft.entry, at);
      if (entry && counterProblem(draft as Book, entry as Book['entry'][string]) === null)
        counterEntry(draft, entry.id, ids());
    }),
  ),
  fc.tuple(index, fc.integer({ min: 1, max: 2_000_000 })).map(([at, length]) =>
    edit((draft) => {
      const film = nth(draft.film, at);
      if (film) cutOffcut(draft, film.id, um(length), 'End', ids());
    }),
  ),
  index.map((at) => edit((draft) => putOffcutBack(draft, nth(draft.film, at)?.id ?? '', ids()))),
  fc.tuple(index, index).map(([at, of]) =>
    edit((draft) => {
      const run = nth(draft.run, at);
      const film = nth(draft.film, of);
      if (run?.state === 'draft' && film) editRun(draft, run.id, { film: film.id });
    }),
  ),
  index.map((at) =>
    edit((draft) => {
      const film = nth(draft.film, at);
      if (film) addRun(draft, { name: 'Next', film: film.id }, ids());
    }),
  ),
  index.map((at) => edit((draft) => removeRun(draft, nth(draft.run, at)?.id ?? ''))),
  // An order of two copies that lie on the film at once, so that there is something to print.
  index.map((at) =>
    edit((draft) => {
      const run = nth(draft.run, at);
      if (run?.state !== 'draft') return;
      const size = { width: fromMm(60), height: fromMm(40), typed: { width: '', height: '' } };
      const order = addOrder(draft, { name: 'Fair', due: null }, ids());
      const transfer = addTransfer(draft, order, { name: 'x', turn: 'fixed', ...size }, 2, ids());
      const copies = Object.values(draft.copy).filter((copy) => copy.transfer === transfer);
      const y = Math.max(
        10,
        (run.printed?.to ?? 0) / 1000 + 5,
        ...Object.values(draft.copy).map(({ place, run: on }) =>
          place && on === run.id ? place.y / 1000 + 50 : 0,
        ),
      );
      const place = (x: number) => ({ x: fromMm(x), y: fromMm(y), angle: UPRIGHT, pinned: false });
      setPlaces(
        draft,
        run.id,
        copies.map(({ id }, nr): [Id<'copy'>, ReturnType<typeof place>] => [id, place(10 + 80 * nr)]),
      );
    }),
  ),
  goOn,
  goOn,
  goOn,
  goOn,
  onRun((draft, run) => unlockRun(draft, run.id, ids())),
  onRun((draft, run) => printedTo(draft, run.id, fromMm(60), ids())),
  onRun((draft, run) => void spoil(draft, run.id, { from: fromMm(20), to: fromMm(40) }, ids())),
  onRun((draft, run) => stepRunBack(draft, run.id, ids())),
  onRun((draft, run) => {
    const copy = Object.values(draft.copy).find((each) => each.run === run.id);
    if (copy)
      spoilCopy(draft, { run: run.id, copy: copy.id, stage: 'press', garment: true, reason: 'x' }, ids());
  }),
);

function play(book: Book, act: Act): Book {
  if (act.kind === 'undo' || act.kind === 'redo') {
    const step = act.kind === 'undo' ? stepBack(book) : stepForward(book);
    if (!step) return book;
    const way = act.kind === 'undo' ? undoStep : redoStep;
    const played = way(step.book, step.step, ids());
    if (!played) throw new Error('a step that cannot be played');
    return played;
  }
  const after = applySettled(book, (draft) => act.edit(draft), NOW);
  if (!after.step) return after.book;
  const kept = remember(after.book, after.step, NOW);
  return act.kind === 'for-good' ? forget(kept) : kept;
}

/** For each item that is or was: the sum of its entries, and what is left of it as far as films say. */
function unbalanced(book: Book): string[] {
  const sums = sumsOf(book.entry);
  const films = Object.values(book.film).filter((film) => (sums.get(film.id) ?? 0) !== leftOfFilm(film));
  const gone = [...sums].filter(([id, sum]) => sum !== 0 && !itemOf(book, id));
  return [
    ...films.map((film) => `${film.id} has ${leftOfFilm(film)}, its entries ${sums.get(film.id)}`),
    ...gone.map(([id, sum]) => `${id} is gone, its entries sum to ${sum}`),
  ];
}

/** The small book with ink and with blanks of its order, its three fronts on film. */
const stockedBook = edited(smallBook().book, (draft) => {
  const [run] = Object.values(draft.run);
  const [order] = Object.values(draft.order);
  if (!run || !order) return;
  const tee = { style: 'Tee', colour: 'Black', shade: null, size: 'M' };
  const box = { lot: '', bestBefore: null, opened: null, reorder: null, order: '' };
  addSupply(draft, { kind: 'white', name: 'White', ...box }, 500_000, ids());
  addSupply(draft, { kind: 'blank', name: 'Tee', ...tee, ...box }, 2, ids());
  addGarment(draft, order.id, { ...tee, count: 3 }, ids());
  const copies = Object.values(draft.copy).slice(0, 3);
  setPlaces(
    draft,
    run.id,
    copies.map(({ id }, at) => [
      id,
      { x: fromMm(5), y: fromMm(10 + 90 * at), angle: UPRIGHT, pinned: false },
    ]),
  );
});

describe('the ledger', () => {
  it('sums to what there is of every item, whatever is done, undone and made again, and loses no entry', () => {
    let [closed, used] = [0, 0];
    fc.assert(
      fc.property(fc.array(anyAct, { size: 'max', maxLength: 60 }), (acts) => {
        let book = stockedBook;
        for (const act of acts) {
          const before = book.entry;
          book = play(book, act);
          expect(unbalanced(book)).toEqual([]);
          expect(Object.values(book.film).filter((film) => leftOfFilm(film) < 0)).toEqual([]);
          for (const [id, entry] of Object.entries(before)) {
            const now = book.entry[id];
            // Most are the same object still.
            if (now !== entry) expect(now).toEqual(entry);
          }
        }
        closed += Object.keys(book.closing).length;
        used += Object.values(book.entry).filter(({ kind }) => kind === 'used').length;
      }),
      { numRuns: 300 },
    );
    // The acts come as far as closing runs, else this would prove little.
    expect(closed).toBeGreaterThan(10);
    expect(used).toBeGreaterThan(20);
  });

  it('gives a roll its length back once, also where its cut was undone by hand before the offcut is put back', () => {
    const { book } = smallBook();
    const roll = Object.keys(book.film)[0] as Id<'film'>;
    const before = leftOfFilm(book.film[roll] as Film);
    const after = edited(book, (draft) => {
      const offcut = cutOffcut(draft, roll, fromMm(500), 'End', ids());
      const cut = Object.values(draft.entry).find(({ item, kind }) => item === roll && kind === 'cut');
      if (cut) counterEntry(draft, cut.id, ids());
      if (offcut) putOffcutBack(draft, offcut, ids());
    });
    expect(leftOfFilm(after.film[roll] as Film)).toBe(before);
    expect(Object.keys(after.film)).toEqual(Object.keys(book.film));
  });

  it('leaves nothing of an offcut that was undone and counted by hand before it is put back', () => {
    const { book } = smallBook();
    const roll = Object.keys(book.film)[0] as Id<'film'>;
    const before = leftOfFilm(book.film[roll] as Film);
    const after = edited(book, (draft) => {
      const offcut = cutOffcut(draft, roll, fromMm(500), 'End', ids()) ?? expect.fail();
      const made = Object.values(draft.entry).find(({ item }) => item === offcut) ?? expect.fail();
      counterEntry(draft, made.id, ids());
      editFilm(draft, offcut, { ...(draft.film[offcut] as Film), sheetsLeft: 1 } as Film, ids());
      putOffcutBack(draft, offcut, ids());
    });
    expect(unbalanced(after)).toEqual([]);
    expect(leftOfFilm(after.film[roll] as Film)).toBe(before);
  });
});
