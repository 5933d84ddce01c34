import { describe, expect, it } from 'vitest';
import {
  addCheck,
  advanceRun,
  applyEdit,
  editCheck,
  finishRun,
  lockRun,
  noteCheck,
  noteFailedCheck,
  resetCheck,
  setPlaces,
} from '../../src/editing';
import { addSupply } from '../../src/editing/stock';
import { asId, type Book, type Id, type Instant } from '../../src/model';
import {
  fromMinutes,
  fromMm,
  fromUnit,
  fromVolume,
  type LocalDate,
  type Micrometres,
  toUnit,
  UPRIGHT,
  um,
} from '../../src/units';
import { checkStates, checksOf, printedBy, type Standing } from '../../src/upkeep';
import { context, edited, freshIds, smallBook } from '../editing/book';

const day = (date: string) => date as LocalDate;
const nothing = { filmSince: () => um(0), runsOn: () => [] };
/** So much film through whichever printer since any time. */
const film = (length: Micrometres) => ({ ...nothing, filmSince: () => length });
/** The end of a day: days here are those of UTC. */
const clock = (today: string) => ({
  now: `${today}T23:59:59.999Z` as Instant,
  dayOf: (at: string) => day(at.slice(0, 10)),
});

const noted = (book: Book, check: string, at: string, done = true): Book =>
  applyEdit(
    book,
    (draft) =>
      noteCheck(
        draft,
        { check: check as Id<'check'>, machine: null, name: check, done, note: '' },
        { by: 'MK', day: day(at.slice(0, 10)) },
        { newId: <Kind extends string>() => asId<Kind>(`${check}-${at}-${done}`), now: at as Instant },
      ),
    at as Instant,
  ).book;

const standing = (book: Book, check: string, today: string, printed = nothing): Standing | undefined =>
  checkStates(book, printed, clock(today)).find((state) => state.check.id === check)?.standing;

describe('a nozzle check that failed', () => {
  const withInk = edited(smallBook().book, (draft) => {
    for (const kind of ['colour', 'white'] as const)
      addSupply(
        draft,
        { kind, name: kind, lot: '', bestBefore: null, opened: null, reorder: null, order: '' },
        1_000_000,
        freshIds(),
      );
  });
  const failed = { seconds: fromMinutes(12), colour: fromVolume(8, 'ml'), white: fromVolume(0, 'ml') };
  const at = '2026-11-05T08:00:00.000Z' as Instant;
  const failedIn = (book: Book) =>
    edited(book, (draft) =>
      noteFailedCheck(
        draft,
        { check: 'nozzles' as Id<'check'>, machine: null, name: 'Nozzles', note: '' },
        failed,
        { by: 'MK', day: day('2026-11-05') },
        { ...freshIds(), now: at },
      ),
    );

  it('keeps its minutes and takes its ink out of stock', () => {
    const book = failedIn(withInk);
    expect(Object.values(book.upkeep)).toMatchObject([{ done: false, failed, by: 'MK' }]);
    const used = Object.values(book.entry).filter(({ kind }) => kind === 'used');
    expect(used).toMatchObject([{ name: 'colour', amount: -8000, note: 'Nozzles' }]);
  });

  it('is due until it passes, and says nothing of the one that passed before', () => {
    expect(standing(failedIn(withInk), 'nozzles', '2026-11-05')).toEqual({ kind: 'never' });
    const passed = noted(withInk, 'nozzles', '2026-11-04T07:00:00.000Z');
    expect(standing(failedIn(passed), 'nozzles', '2026-11-05')).toEqual({ kind: 'days', over: 0 });
    expect(
      standing(noted(failedIn(passed), 'nozzles', '2026-11-05T09:00:00.000Z'), 'nozzles', '2026-11-05'),
    ).toEqual({
      kind: 'done',
    });
  });
});

describe('a check', () => {
  const { book } = smallBook();

  it('is due until it is noted, and again on the next day, or after its days', () => {
    expect(standing(book, 'nozzles', '2026-11-25')).toEqual({ kind: 'never' });
    const done = noted(
      noted(book, 'nozzles', '2026-11-25T08:00:00.000Z'),
      'filters',
      '2026-11-25T08:05:00.000Z',
    );
    expect(standing(done, 'nozzles', '2026-11-25')).toEqual({ kind: 'done' });
    expect(standing(done, 'nozzles', '2026-11-26')).toEqual({ kind: 'days', over: 0 });
    expect(standing(done, 'nozzles', '2026-11-30')).toEqual({ kind: 'days', over: 4 });
    expect(standing(done, 'filters', '2026-12-01')).toEqual({ kind: 'done' });
    expect(standing(done, 'filters', '2026-12-02')).toEqual({ kind: 'days', over: 0 });
  });

  it('counts days across a month, a leap day and the turn of the clocks', () => {
    const done = noted(book, 'nozzles', '2028-02-28T08:00:00.000Z');
    expect(standing(done, 'nozzles', '2028-03-01')).toEqual({ kind: 'days', over: 1 });
    const march = noted(book, 'nozzles', '2026-03-28T08:00:00.000Z');
    expect(standing(march, 'nozzles', '2026-03-29')).toEqual({ kind: 'days', over: 0 });
  });

  it('that was noted by mistake is taken back by another entry, and what was before holds again', () => {
    const once = noted(book, 'nozzles', '2026-11-24T08:00:00.000Z');
    const twice = noted(once, 'nozzles', '2026-11-25T08:00:00.000Z');
    const back = noted(twice, 'nozzles', '2026-11-25T08:01:00.000Z', false);
    expect(standing(back, 'nozzles', '2026-11-25')).toEqual({ kind: 'days', over: 0 });
    expect(Object.keys(back.upkeep)).toHaveLength(3);
    const never = noted(
      noted(back, 'nozzles', '2026-11-25T08:02:00.000Z', false),
      'nozzles',
      '2026-11-25T08:03:00.000Z',
      false,
    );
    expect(standing(never, 'nozzles', '2026-11-25')).toEqual({ kind: 'never' });
  });

  it('by length is due when so much film went through', () => {
    const done = noted(book, 'rollers', '2026-11-25T08:00:00.000Z');
    expect(standing(done, 'rollers', '2027-11-25', film(fromUnit(49, 'm')))).toEqual({ kind: 'done' });
    expect(standing(done, 'rollers', '2026-11-25', film(fromUnit(62, 'm')))).toEqual({
      kind: 'film',
      over: fromUnit(12, 'm'),
    });
  });

  it.each([
    ['mm', [50, 150], 'm'],
    ['in', [150, 500], 'ft'],
  ] as const)('are due by film in round figures of the shop’s unit, %s', (unit, lengths, per) => {
    const byFilm = checksOf(book.check, unit).flatMap(({ interval }) =>
      interval.kind === 'film' ? [toUnit(interval.length, per)] : [],
    );
    expect(byFilm).toEqual(lengths);
  });

  it('can be the shop’s own, another interval, given up, and as it was to start with', () => {
    const ids = context();
    let own = '' as Id<'check'>;
    const more = edited(book, (draft) => {
      own = addCheck(
        draft,
        { name: 'Bulbs of the oven', interval: { kind: 'days', days: 30 }, of: 'shop', hazard: 'heat' },
        ids,
      );
      const nozzles = checksOf(book.check, 'mm').find(({ id }) => id === 'nozzles');
      const blade = checksOf(book.check, 'mm').find(({ id }) => id === 'blade');
      if (nozzles) editCheck(draft, nozzles, { interval: { kind: 'days', days: 2 } }, ids);
      if (blade) editCheck(draft, blade, { archived: true }, ids);
    });
    expect(standing(more, own, '2026-11-25')).toEqual({ kind: 'never' });
    expect(standing(more, 'blade', '2026-11-25')).toBeUndefined();
    expect(checksOf(more.check, 'mm').find(({ id }) => id === 'blade')?.archived).toBe(true);
    const done = noted(more, 'nozzles', '2026-11-25T08:00:00.000Z');
    expect(standing(done, 'nozzles', '2026-11-26')).toEqual({ kind: 'done' });
    const reset = edited(done, (draft) => resetCheck(draft, 'nozzles' as Id<'check'>));
    expect(standing(reset, 'nozzles', '2026-11-26')).toEqual({ kind: 'days', over: 0 });
    // One of the shop's own is given up, never lost.
    expect(edited(more, (draft) => resetCheck(draft, own))).toEqual(more);
  });
});

describe('film that went through', () => {
  const filmSince = (book: Book, at: string) => printedBy(book).filmSince(at, null);

  it('is what lies on a printed run, and what was used once it is closed', () => {
    const { book, front } = smallBook();
    const run = Object.values(book.run)[0];
    const copy = Object.values(book.copy).find(({ transfer }) => transfer === front);
    if (!run || !copy) throw new Error('the book is not as expected');
    const at = (hour: string) => ({ ...context(), now: `2026-11-25T${hour}:00:00.000Z` as Instant });
    const place = { x: fromMm(5), y: fromMm(10), angle: UPRIGHT, pinned: false };
    const printed = edited(book, (draft) => {
      setPlaces(draft, run.id, new Map([[copy.id, place]]));
      lockRun(draft, run.id, at('13'));
      finishRun(draft, run.id, at('14'));
    });
    const long = filmSince(printed, '2026-11-25T08:00:00.000Z');
    // 10 mm of lead, 80 mm of copy, 10 mm of tail.
    expect(long).toBe(fromMm(100));
    expect(filmSince(printed, '2026-11-25T15:00:00.000Z')).toBe(0);
    expect(filmSince(book, '2026-01-01T00:00:00.000Z')).toBe(0);
    const closed: Book = {
      ...edited(printed, (draft) => advanceRun(draft, run.id, at('16'))),
      closing: { [run.id]: { actual: { film: fromMm(112) } } as never },
    };
    expect(filmSince(closed, '2026-11-25T08:00:00.000Z')).toBe(fromMm(112));
  });
});
