import { describe, expect, it } from 'vitest';
import {
  advanceRun,
  applySettled,
  drawFromShelf,
  duplicateOrder,
  editStation,
  finishRun,
  lockRun,
  removeTransfer,
  setCount,
  setPlaces,
  setPress,
  spoilCopy,
  stepRunBack,
  tickJobs,
  undoStep,
  waitingFor,
} from '../../src/editing';
import { setCure } from '../../src/editing/bench';
import { copiesToLay, layRun, problemOf } from '../../src/layout';
import { type Book, draftRun, type Id, type Place, type Run, runOf, type Sending } from '../../src/model';
import {
  cureRecipe,
  pressRecipe,
  startingCure,
  startingPress,
  startingStation,
  ticksOf,
  workOf,
} from '../../src/pressing';
import { asSeconds, fromMm, UPRIGHT } from '../../src/units';
import { printing } from '../pressing/stations';
import { closeIt, edited, freshIds, LATER, NOW, orderStateIn, smallBook } from './book';

const { book: empty, order, front } = smallBook();
const run = Object.keys(empty.run)[0] as Id<'run'>;
const at = (x: number, y: number): Place => ({ x: fromMm(x), y: fromMm(y), angle: UPRIGHT, pinned: false });
/** Three fronts, one over and two tags on film and locked. */
const locked = edited(
  edited(empty, (draft) => {
    setCount(draft, front, 1, freshIds(), 'over');
    const fronts = Object.values(draft.copy).filter((copy) => copy.transfer === front);
    const tags = Object.values(draft.copy).filter((copy) => copy.transfer !== front);
    setPlaces(draft, run, [
      ...fronts.map(({ id }, index): [Id<'copy'>, Place] => [id, at(5, 10 + 90 * index)]),
      ...tags.map(({ id }, index): [Id<'copy'>, Place] => [id, at(120, 10 + 90 * index)]),
    ]);
  }),
  (draft) => lockRun(draft, run, freshIds()),
);
const stateOf = (book: Book): Run['state'] | undefined => book.run[run]?.state;
const printed = edited(locked, (draft) => finishRun(draft, run, freshIds()));
const ordered = Object.values(locked.copy).find((copy) => copy.transfer === front && copy.role === 'ordered');
if (!ordered) throw new Error('no copy');

const jobsOf = (book: Book) => {
  const record = book.run[run];
  const laid = record && layRun(book, record);
  const work = laid && workOf(laid, startingStation('C'), new Date('2026-11-25T08:00:00'));
  if (!work?.ok) throw new Error('no work');
  return work.value.jobs;
};

describe('ticks', () => {
  const tickAll = (book: Book, kinds: readonly string[]) =>
    jobsOf(book)
      .filter(({ kind }) => kinds.includes(kind))
      .reduce(
        (now, { key }) =>
          edited(now, (draft) => tickJobs(draft, run, [key], { done: true, by: '' }, freshIds())),
        book,
      );

  it('bring a run from print to press, each state with its date, and its film off the roll', () => {
    const isPrinted = tickAll(locked, ['print']);
    expect(stateOf(isPrinted)).toBe('printed');
    expect(isPrinted.film).toEqual(printed.film);
    const isPressed = tickAll(tickAll(isPrinted, ['cure']), ['press']);
    expect(stateOf(isPressed)).toBe('pressed');
    expect(isPressed.run[run]?.history.map(({ state }) => state)).toEqual([
      'locked',
      'printed',
      'cured',
      'pressed',
    ]);
  });

  it('wait until all of a kind is done', () => {
    const [first] = jobsOf(locked).filter(({ kind }) => kind === 'press');
    const some = edited(tickAll(locked, ['print', 'cure']), (draft) =>
      tickJobs(draft, run, [first?.key ?? ''], { done: true, by: '' }, freshIds()),
    );
    expect(stateOf(some)).toBe('cured');
  });

  it('are only ever added: one taken back is another', () => {
    const once = edited(locked, (draft) =>
      tickJobs(draft, run, ['print/0'], { done: true, by: '' }, freshIds()),
    );
    const back = edited(once, (draft) =>
      tickJobs(draft, run, ['print/0'], { done: false, by: '' }, freshIds()),
    );
    expect(ticksOf(back, run).map(({ done }) => done)).toEqual([true, false]);
  });
});

describe('a run on film', () => {
  const pressed = [0, 1].reduce(
    (book) => edited(book, (draft) => advanceRun(draft, run, freshIds())),
    printed,
  );
  const closed = closeIt(pressed, run, freshIds());

  it('goes on to the end and back, all of it noted', () => {
    expect(stateOf(closed)).toBe('closed');
    let book = closed;
    for (const state of ['pressed', 'cured', 'printed', 'locked']) {
      book = edited(book, (draft) => stepRunBack(draft, run, freshIds()));
      expect(stateOf(book)).toBe(state);
    }
    expect(book.film).toEqual(locked.film);
    expect(book.run[run]?.history).toHaveLength(9);
  });

  it('puts its overs on the shelf when it is closed, once', () => {
    expect(Object.values(closed.shelf)).toMatchObject([{ name: 'front', code: 'HB', count: 1 }]);
    const again = closeIt(
      edited(closed, (draft) => stepRunBack(draft, run, freshIds())),
      run,
      freshIds(),
    );
    expect(Object.values(again.shelf)).toMatchObject([{ count: 1 }]);
  });

  it('is drawn on by a later order, whose copy needs no film', () => {
    const later = edited(closed, (draft) => duplicateOrder(draft, order, 'again', freshIds()));
    const [item] = Object.keys(later.shelf);
    if (!item) throw new Error('nothing on the shelf');
    const waiting = waitingFor(later, item);
    expect(waiting).toHaveLength(3);
    let taken = 0;
    const drawn = edited(later, (draft) => {
      taken = drawFromShelf(draft, item);
    });
    expect(taken).toBe(1);
    expect(drawn.shelf[item]?.count).toBe(0);
    const open = runOf(drawn, null) ?? { run: drawn.run[run] as Run, film: Object.values(drawn.film)[0] };
    const draft = draftRun({ ...open.run, id: 'other' as Id<'run'> });
    if (!open.film) throw new Error('no film');
    const own = problemOf(drawn, draft, open.film, 'pinned');
    expect(copiesToLay(own).map(({ id }) => id)).not.toContain(waiting[0]);
    expect(copiesToLay(own).map(({ id }) => id)).toContain(waiting[1]);
  });
});

describe('the shelf', () => {
  const pressed = [0, 1].reduce(
    (book) => edited(book, (draft) => advanceRun(draft, run, freshIds())),
    printed,
  );
  const closed = closeIt(pressed, run, freshIds());
  const [item = ''] = Object.keys(closed.shelf);
  const stock = edited(closed, (draft) => {
    const own = draft.shelf[item];
    if (own) own.count = 2;
  });
  const again = (book: Book) =>
    applySettled(book, (draft) => void duplicateOrder(draft, order, 'again', freshIds()), LATER);
  const shelved = (book: Book) => Object.values(book.copy).filter((copy) => copy.state === 'shelved');

  it('is drawn on first when copies are added, in the same step (rule 16)', () => {
    const { book, step, drawn } = again(stock);
    expect(drawn).toEqual([{ name: 'front', count: 2 }]);
    expect(shelved(book)).toHaveLength(2);
    expect(book.shelf[item]?.count).toBe(0);
    const undone = step && undoStep(book, step, freshIds());
    expect(undone?.shelf[item]?.count).toBe(2);
    expect(undone && Object.keys(undone.copy)).toEqual(Object.keys(stock.copy));
  });

  it('is left alone by copies that are there already, and where the shop wants it so', () => {
    const { book } = again({ ...stock, shelf: {} });
    expect(again({ ...book, shelf: stock.shelf }).drawn).toEqual([{ name: 'front', count: 2 }]);
    const off = edited(stock, (draft) => {
      if (draft.settings.shop) draft.settings.shop.shelfFirst = false;
    });
    expect(again(off).drawn).toEqual([]);
  });

  it('gets back what is not wanted any more, after what needs film (rule 16)', () => {
    const { book } = again(stock);
    const other = Object.values(book.transfer).find(({ id, name }) => name === 'front' && id !== front);
    if (!other) throw new Error('no second order');
    const fewer = edited(book, (draft) => setCount(draft, other.id, 1, freshIds()));
    expect(fewer.shelf[item]?.count).toBe(1);
    expect(shelved(fewer)).toHaveLength(1);
    const none = edited(book, (draft) => removeTransfer(draft, other.id));
    expect(none.shelf[item]?.count).toBe(2);
  });
});

describe('a spoiled copy', () => {
  const spoilage = { run, copy: ordered.id, stage: 'press', garment: true, reason: 'crooked' } as const;

  it('waits for a reprint, and its order for a blank; the run still shows what was printed', () => {
    const spoiled = edited(printed, (draft) => spoilCopy(draft, spoilage, freshIds()));
    expect(spoiled.copy[ordered.id]).toMatchObject({ run: null, place: null });
    expect(Object.values(spoiled.spoilage)).toMatchObject([spoilage]);
    expect(spoiled.order[order]?.awaits.blanks).toBe(true);
    expect(orderStateIn(spoiled, order)).toBe('part-done');
    const record = spoiled.run[run];
    expect(record && layRun(spoiled, record)?.copies).toHaveLength(6);
  });

  it('is none while the run is not printed, and is not noted twice', () => {
    expect(edited(locked, (draft) => spoilCopy(draft, spoilage, freshIds()))).toEqual(locked);
    const once = edited(printed, (draft) => spoilCopy(draft, spoilage, freshIds()));
    expect(edited(once, (draft) => spoilCopy(draft, spoilage, freshIds()))).toEqual(once);
  });
});

describe('a recipe that is set', () => {
  const values = { ...startingPress('hot', 'cotton'), secondPress: asSeconds(5) };

  it('replaces the one to start with and keeps what it was', () => {
    const hot = { peel: 'hot', fabric: 'cotton' } as const;
    const once = edited(empty, (draft) =>
      setPress(draft, hot, { values, origin: 'data-sheet', notes: 'sheet of May' }, freshIds()),
    );
    expect(pressRecipe(once, 'hot', 'cotton')).toMatchObject({ values, origin: 'data-sheet' });
    expect(pressRecipe(once, 'cold', 'cotton').origin).toBe('common-practice');
    const twice = edited(once, (draft) =>
      setPress(
        draft,
        hot,
        { values: { ...values, wait: asSeconds(5) }, origin: 'own', notes: '' },
        { ...freshIds(), now: LATER },
      ),
    );
    expect(Object.values(twice.recipe)[0]?.history).toMatchObject([
      { values: startingPress('hot', 'cotton'), origin: 'common-practice' },
      { until: LATER, values, origin: 'data-sheet' },
    ]);
  });

  it('of a cure does so by itself, and keeps nothing where its values stay', () => {
    const cure = { ...startingCure('press'), time: asSeconds(200) };
    const set = (book: Book, values: typeof cure, now = LATER) =>
      edited(book, (draft) =>
        setCure(draft, 'press', { values, origin: 'own', notes: 'tried' }, { ...freshIds(), now }),
      );
    const once = set(empty, cure);
    expect(cureRecipe(once, 'press')).toMatchObject({ values: cure, origin: 'own' });
    expect(cureRecipe(once, 'oven').origin).toBe('common-practice');
    const begun = { until: LATER, values: startingCure('press'), origin: 'common-practice' };
    expect(Object.values(once.recipe)).toMatchObject([
      { kind: 'cure', by: 'press', notes: 'tried', history: [begun] },
    ]);
    expect(Object.values(set(once, cure).recipe)).toMatchObject([{ history: [begun] }]);
    const twice = set(once, { ...cure, time: asSeconds(220) }, NOW);
    expect(Object.values(twice.recipe)[0]?.history).toEqual([
      begun,
      { until: NOW, values: cure, origin: 'own' },
    ]);
  });
});

describe('equipment', () => {
  const sent = (sends: Sending | null) => (book: Book) =>
    edited(book, (draft) => editStation(draft, printing({ sends })));
  const jobsOn = (book: Book) =>
    Object.values(book.film).flatMap((film) => (film.kind === 'roll' ? [film.jobs] : []));

  it('tells of every roll what a job is, once it is said how runs are sent', () => {
    expect(jobsOn(empty)).toEqual(['run']);
    expect(jobsOn(sent('by-span')(empty))).toEqual(['span']);
    expect(jobsOn(sent('whole-through')(sent('by-span')(empty)))).toEqual(['run']);
    // Nothing said tells nothing.
    expect(jobsOn(sent(null)(sent('by-span')(empty)))).toEqual(['span']);
  });

  it('leaves a run that is locked with what it was locked with', () => {
    const own = sent('by-span')(locked).run[run];
    expect(own?.state === 'locked' && own.snapshot.film).toMatchObject({ jobs: 'run' });
  });
});
