import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdit, checked, edits, historyOf, redo, replaceStep, session, undo } from '../../src/editing';
import { MOST_STEPS } from '../../src/editing/history';
import { asId, type Book, filmOf, type Id, type LedgerEntry, type Roll } from '../../src/model';
import { asMinor, fromMm, UPRIGHT } from '../../src/units';
import { anyEdit, type EditFor } from './any-edit';
import { freshIds, LATER, NOW, smallBook } from './book';

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

const noBox = { lot: '', bestBefore: null, opened: null, reorder: null, order: '' };

describe('a quiet edit', () => {
  const renamed = () =>
    session(smallBook().book, edits.editTransfer(smallBook().front, { name: 'back' }), freshIds()).book;

  it('leaves steps that it does not reach as they are stored', () => {
    const before = renamed();
    const { book, changed } = session(before, edits.editStation({ temperature: 'F' }), freshIds());
    expect(changed).toBe(true);
    expect(book.step).toBe(before.step);
    // It reaches what undo leads to of prices alone.
    const { book: yen } = session(priced(before, 900), edits.changeCurrency('JPY'), freshIds());
    const [name, price] = [historyOf(priced(before, 900)).done, historyOf(yen).done];
    expect(price.map(({ redo }) => redo)).toEqual([
      name[0]?.redo,
      expect.not.arrayContaining(name[1]?.redo ?? []),
    ]);
  });

  it('forgets all steps where one is damaged where it is stored', () => {
    const before = renamed();
    const [step] = historyOf(before).done;
    if (!step) throw new Error('nothing to undo');
    const undo = [{ op: 'replace' as const, path: ['copy', 'gone', 'place'], value: null }];
    const damaged = { ...before, step: { [step.id]: { ...step, undo } } };
    const { book } = session(damaged, edits.editStation({ temperature: 'F' }), freshIds());
    expect(book.step).toEqual({});
    expect(book.settings.shop?.station.temperature).toBe('F');
  });
});

describe('an entry of the ledger that may not be undone', () => {
  const { book } = smallBook();
  const film = rollOf(book);
  const entriesOf = (of: Book, kind: LedgerEntry['kind']) =>
    Object.values(of.entry).filter((entry) => entry.kind === kind);
  const counter = (of: Book, [entry]: readonly LedgerEntry[]) =>
    session(of, edits.counterEntry(entry?.id ?? ''), freshIds());

  it('stays where more would leave a roll than there is', () => {
    const cut = session(book, edits.cutOffcut(film.id, fromMm(1000), 'End'), freshIds()).book;
    const { book: after, changed } = counter(cut, entriesOf(cut, 'opening'));
    expect([changed, after]).toEqual([false, cut]);
  });

  it('stays where it is undone already: a second tap does not undo the undoing', () => {
    const bought = session(book, edits.buyFilm({ ...film, name: 'Other' }, noBox), freshIds()).book;
    const once = counter(bought, entriesOf(bought, 'bought')).book;
    expect(entriesOf(once, 'counter')).toHaveLength(1);
    expect(counter(once, entriesOf(once, 'bought')).book).toBe(once);
  });
});

describe('undo', () => {
  const { book, front } = smallBook();
  const [run] = Object.values(book.run);
  const [a, b] = Object.values(book.copy).filter(({ transfer }) => transfer === front);
  if (!run || !a || !b) throw new Error('the small book lacks copies');
  const at = (x: number) => ({ x: fromMm(x), y: fromMm(10), angle: UPRIGHT, pinned: false });
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

  it('takes nothing off a run that is locked, whatever becomes of its film', () => {
    const locked = session(laid, edits.lockRun(run.id, null), freshIds()).book;
    expect(checked(unknown(locked), freshIds())).toEqual({ book: unknown(locked), takenOff: [] });
    const wider = session(unknown(locked), edits.editTransfer(front, { width: fromMm(300) }), freshIds());
    expect(wider.takenOff).toEqual([]);
    expect(placesOf(wider.book)).toEqual([fromMm(5), fromMm(110)]);
  });

  it('of a step that was damaged where it is stored leaves the book as it is, without a history', () => {
    const [last] = historyOf(laid).done.slice(-1);
    if (!last) throw new Error('nothing to undo');
    const undos = [
      [{ op: 'replace' as const, path: ['copy', 'gone', 'place'], value: null }],
      [{ op: 'replace' as const, path: ['copy', a.id, 'number'], value: 0.5 }],
      [{ op: 'remove' as const, path: ['transfer', front] }],
      [{ op: 'replace' as const, path: ['nowhere', 'x'], value: 1 }],
    ];
    for (const damage of undos) {
      const book = { ...laid, step: { ...laid.step, [last.id]: { ...last, undo: damage } } };
      expect(undo(book, freshIds())).toEqual({
        book: { ...laid, step: {} },
        takenOff: [],
        damaged: true,
      });
    }
  });

  it('stays made where a step wrote a record just as it was', () => {
    const { book, front } = smallBook();
    const artwork = {
      id: 'a' as Id<'artwork'>,
      fileName: 'a.png',
      kind: 'png' as const,
      pixels: { width: 10, height: 10 },
      density: null,
      trim: null,
      madeFrom: null,
    };
    const again = { ...artwork, pixels: { width: 10, height: 20 } };
    const [set, twice, read] = [
      edits.setArtwork(front, artwork),
      edits.setMadeArtwork(front, artwork, {
        width: fromMm(100),
        height: fromMm(90),
        typed: { width: '', height: '' },
      }),
      edits.readArtworkAgain(artwork.id, again),
    ];
    const last = [set, twice, read].reduce((state, edit) => session(state, edit, freshIds()).book, book);
    const back = redo(undo(last, freshIds()).book, freshIds()).book;
    expect(back.artwork[artwork.id]?.pixels.height).toBe(20);
  });
});

/** A book without the instants of change, the ledger and history: undoing is a change too, and says when it was. */
const contents = (book: Book): unknown =>
  JSON.parse(
    JSON.stringify({ ...book, step: {}, entry: {} }, (key, value) => (key === 'changed' ? undefined : value)),
  );

/** What is stored is what is read again: history outlives a reload. */
const reloaded = (book: Book): Book => JSON.parse(JSON.stringify(book)) as Book;

const undone = (book: Book): Book => {
  let back = book;
  while (historyOf(back).done.length > 0) back = undo(back, freshIds(LATER)).book;
  return back;
};
const redone = (book: Book): Book => {
  let on = book;
  while (historyOf(on).undone.length > 0) on = redo(on, freshIds(LATER)).book;
  return on;
};

type Act = { readonly kind: 'undo' | 'redo' } | { readonly kind: 'edit'; readonly edit: EditFor };
const anyAct: fc.Arbitrary<Act> = fc.oneof(
  { weight: 1, arbitrary: fc.constant<Act>({ kind: 'undo' }) },
  { weight: 1, arbitrary: fc.constant<Act>({ kind: 'redo' }) },
  { weight: 12, arbitrary: anyEdit.map((edit): Act => ({ kind: 'edit', edit })) },
);

/** Makes an edit in a book, and in another the same, if it is one that undo leaves alone there. */
function made([book, base]: readonly [Book, Book], drawn: EditFor): readonly [Book, Book] {
  const edit = drawn(book);
  if (!edit) return [book, base];
  const from = freshIds();
  const given: string[] = [];
  const ids = () => {
    let at = 0;
    return {
      ...from,
      newId: <Kind extends string>() => {
        const id = given[at] ?? from.newId();
        given[at] = id;
        at += 1;
        return asId<Kind>(id);
      },
    };
  };
  const after = session(book, edit, ids()).book;
  const isForgotten = Object.keys(after.step).length === 0;
  if (isForgotten) return [after, after];
  return [after, edit.history === 'step' ? base : session(base, edit, ids()).book];
}

describe('history', () => {
  it('undone after any edits is what was before with the quiet ones made there, and redone the last state', () => {
    const told = { steps: 0, quiet: 0, forgotten: 0 };
    fc.assert(
      fc.property(fc.array(anyAct, { size: 'max', maxLength: 25 }), (acts) => {
        let pair: readonly [Book, Book] = [smallBook().book, smallBook().book];
        for (const act of acts) {
          const [book, base] = pair;
          if (act.kind === 'edit') {
            pair = made(pair, act.edit);
            if (pair[0] === pair[1] && Object.keys(book.step).length > 0) told.forgotten += 1;
            else if (pair[1] !== base) told.quiet += 1;
          } else pair = [(act.kind === 'undo' ? undo : redo)(reloaded(book), freshIds(LATER)).book, base];
        }
        const [book, base] = pair;
        const last = redone(book);
        told.steps += historyOf(last).done.length;
        const first = undone(reloaded(book));
        expect(contents(first)).toEqual(contents(base));
        expect(contents(redone(first))).toEqual(contents(last));
      }),
      { numRuns: 200 },
    );
    // Steps with quiet edits between come up often, else this would prove little.
    expect(told.steps).toBeGreaterThan(100);
    expect(told.quiet).toBeGreaterThan(60);
    expect(told.forgotten).toBeGreaterThan(20);
  });

  it('goes back so many steps and no further, with numbers that are not given twice', () => {
    let { book } = smallBook();
    const { front } = smallBook();
    for (let step = 1; step <= MOST_STEPS + 30; step += 1)
      book = session(book, edits.editTransfer(front, { name: `name ${step}` }), freshIds()).book;
    expect(historyOf(book).done).toHaveLength(MOST_STEPS);
    expect(historyOf(book).done.at(-1)?.number).toBe(MOST_STEPS + 30);
    const back = undone(book);
    expect(back.transfer[front]?.name).toBe('name 30');
    expect(redone(back).transfer[front]?.name).toBe(`name ${MOST_STEPS + 30}`);
    // One that was taken back makes no room for an older one.
    const other = session(
      undo(book, freshIds()).book,
      edits.editTransfer(front, { name: 'other' }),
      freshIds(),
    );
    expect(historyOf(other.book).done).toHaveLength(MOST_STEPS);
    expect(historyOf(other.book).done.at(-1)?.number).toBe(MOST_STEPS + 31);
  });

  it('stamps what it touches with its own time and leaves the rest alone', () => {
    const { book, front, tag } = smallBook();
    const renamed = session(book, edits.editTransfer(front, { name: 'back' }), freshIds()).book;
    const back = undo(renamed, freshIds(LATER)).book;
    expect(back.transfer[front]).toMatchObject({ name: 'front', changed: LATER });
    expect(back.transfer[tag]?.changed).toBe(NOW);
  });
});

describe('an edit in place of a step', () => {
  const named = (name: string) => edits.editTransfer(smallBook().front, { name });

  it('is one step with it', () => {
    const { book, front } = smallBook();
    const first = replaceStep(book, null, named('a'), freshIds());
    const second = replaceStep(first.book, first, named('b'), freshIds());
    expect(historyOf(second.book).done).toHaveLength(1);
    expect(second.book.transfer[front]?.name).toBe('b');
    expect(undo(second.book, freshIds()).book.transfer[front]?.name).toBe('front');
  });

  it('is one step with it also where what is no step came between', () => {
    const { book, front } = smallBook();
    const first = replaceStep(book, null, named('a'), freshIds());
    const quiet = session(first.book, edits.editSettings({ currency: 'EUR' }), freshIds()).book;
    const second = replaceStep(quiet, first, named('b'), freshIds());
    expect(historyOf(second.book).done).toHaveLength(1);
    const back = undo(second.book, freshIds()).book;
    expect(back.transfer[front]?.name).toBe('front');
    expect(Object.values(back.settings)[0]?.currency).toBe('EUR');
  });

  it('is a step of its own once another lies between, or took its place after undo', () => {
    const { book, order } = smallBook();
    const first = replaceStep(book, null, named('a'), freshIds());
    const other = edits.editOrder(order, { name: 'x' });
    const between = session(first.book, other, freshIds()).book;
    expect(historyOf(replaceStep(between, first, named('b'), freshIds()).book).done).toHaveLength(3);
    const instead = session(undo(first.book, freshIds()).book, other, freshIds()).book;
    const kept = replaceStep(instead, first, named('b'), freshIds()).book;
    expect(historyOf(kept).done).toHaveLength(2);
    expect(kept.order[order]?.name).toBe('x');
  });
});
