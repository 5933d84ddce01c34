import { describe, expect, it } from 'vitest';
import {
  addCheck,
  benchEdits,
  editStation,
  finishRun,
  lockRun,
  noteCheck,
  noteFailedCheck,
  printedTo,
  setPlaces,
  stepRunBack,
} from '../../src/editing';
import { type Book, firstOf, type Id, type Instant } from '../../src/model';
import { BEGUN, printKey, READY, startingPrinter } from '../../src/pressing';
import { fromMinutes, fromMm, fromVolume, type LocalDate, UPRIGHT } from '../../src/units';
import { checkStates, isDueAtPrint, printedBy, type Standing } from '../../src/upkeep';
import { edited, freshIds, smallBook } from '../editing/book';

const FIRST = firstOf('printer');
const SECOND = 'printer-b' as Id<'printer'>;
const dayOf = (at: string) => at.slice(0, 10) as LocalDate;
/** An instant in November 2026; days here are those of UTC. */
const on = (day: number, hour = 9) =>
  `2026-11-${String(day).padStart(2, '0')}T${String(hour).padStart(2, '0')}:00:00.000Z` as Instant;

const shop = smallBook();
const run = Object.values(shop.book.run)[0]?.id ?? expect.fail();
const fronts = Object.values(shop.book.copy).filter(({ transfer }) => transfer === shop.front);

/** Two printers; the film is in the first. */
const two = edited(shop.book, (draft) => {
  const { printers } = draft.settings.shop?.station ?? expect.fail();
  editStation(draft, { printers: [printers[0], startingPrinter(SECOND)] });
});

const locked = (book: Book, at: Instant): Book =>
  edited(book, (draft) => {
    const place = (y: number) => ({ x: fromMm(5), y: fromMm(y), angle: UPRIGHT, pinned: false });
    setPlaces(
      draft,
      run,
      fronts.map(({ id }, index) => [id, place(10 + 90 * index)] as const),
    );
    lockRun(draft, run, freshIds(at));
  });
const printed = (book: Book, at: Instant): Book =>
  edited(locked(book, at), (draft) => finishRun(draft, run, freshIds(at)));
const ticked = (book: Book, at: Instant, ...subjects: string[]): Book =>
  edited(book, (draft) =>
    benchEdits.tickJobs(run, subjects, { done: true, by: 'MK' }, 'Run 2').apply(draft, freshIds(at)),
  );
const noted = (book: Book, check: string, at: Instant, machine: string | null = FIRST, done = true): Book =>
  edited(book, (draft) =>
    noteCheck(
      draft,
      { check: check as Id<'check'>, machine, name: check, done, note: '' },
      { by: 'MK', day: dayOf(at) },
      freshIds(at),
    ),
  );

const standing = (book: Book, check: string, now: Instant, machine: string = FIRST): Standing | undefined =>
  checkStates(book, printedBy(book), { now, dayOf }).find(
    (state) => state.check.id === check && state.machine?.id === machine,
  )?.standing;
const done: Standing = { kind: 'done' };
const beforeRun: Standing = { kind: 'before-run' };

describe('a routine after days without a print', () => {
  const at = (book: Book, now: Instant) => standing(book, 'stood-still', now);

  it('is due once three days have passed without one, and for how long', () => {
    const book = printed(shop.book, on(6, 17));
    expect(at(book, on(9))).toEqual(done);
    expect(at(book, on(10, 0))).toEqual({ kind: 'days', over: 0 });
    expect(at(book, on(12))).toEqual({ kind: 'days', over: 2 });
  });

  it('is not due at a printer that never printed, nor once it is done, for as many days again', () => {
    expect(at(shop.book, on(28))).toEqual(done);
    const book = noted(printed(shop.book, on(2)), 'stood-still', on(10));
    expect(at(book, on(13))).toEqual(done);
    expect(at(book, on(14))).toEqual({ kind: 'days', over: 0 });
  });

  it.each([
    ['passed', (book: Book) => noted(book, 'nozzles', on(5))],
    [
      'failed',
      (book: Book) =>
        edited(book, (draft) =>
          noteFailedCheck(
            draft,
            { check: 'nozzles' as Id<'check'>, machine: FIRST, name: 'Nozzles', note: '' },
            { seconds: fromMinutes(5), colour: fromVolume(0, 'ml'), white: fromVolume(0, 'ml') },
            { by: 'MK', day: dayOf(on(5)) },
            freshIds(on(5)),
          ),
        ),
    ],
  ])('counts a nozzle check as a print, one that %s too', (_, check) => {
    const book = printed(shop.book, on(2));
    expect(at(book, on(7))).toEqual({ kind: 'days', over: 1 });
    expect(at(check(book), on(7))).toEqual(done);
    expect(at(check(book), on(9))).toEqual({ kind: 'days', over: 0 });
  });

  it('counts no nozzle check that was taken back', () => {
    const book = noted(
      noted(printed(shop.book, on(2)), 'nozzles', on(5)),
      'nozzles',
      on(5, 10),
      FIRST,
      false,
    );
    expect(at(book, on(7))).toEqual({ kind: 'days', over: 1 });
  });
});

describe('a check before a run, after hours without one', () => {
  const at = (book: Book, now: Instant) => standing(book, 'circulated', now);

  it('is due when the last run is four hours past, and not while its printer is at one', () => {
    const book = printed(shop.book, on(6, 8));
    expect(at(book, on(6, 11))).toEqual(done);
    expect(at(book, on(6, 12))).toEqual(beforeRun);
    const next = locked(shop.book, on(6, 12));
    expect(at(ticked(next, on(6, 13), BEGUN), on(6, 14))).toEqual({ kind: 'never' });
    expect(at(ticked(next, on(6, 13), BEGUN, READY), on(6, 14))).toEqual(done);
    expect(at(ticked(next, on(6, 13), printKey(0)), on(6, 18))).toEqual(beforeRun);
  });

  it('is due before the first run of a printer of which nobody knows', () => {
    expect(at(shop.book, on(6))).toEqual({ kind: 'never' });
    expect(at(noted(shop.book, 'circulated', on(6, 8)), on(6, 9))).toEqual(done);
    expect(at(noted(shop.book, 'circulated', on(6, 8)), on(6, 12))).toEqual(beforeRun);
  });

  it('counts what was printed of a run that stopped on the way', () => {
    const book = edited(locked(shop.book, on(6, 8)), (draft) =>
      printedTo(draft, run, fromMm(100), freshIds(on(6, 9))),
    );
    expect(at(book, on(6, 12))).toEqual(done);
    expect(at(book, on(6, 13))).toEqual(beforeRun);
  });

  it('counts no nozzle check, which leaves the white ink where it has settled', () => {
    expect(at(noted(printed(shop.book, on(6, 8)), 'nozzles', on(6, 12)), on(6, 13))).toEqual(beforeRun);
  });

  it('counts no run that was taken back to unprinted, by hand or with its tick', () => {
    const before = noted(shop.book, 'circulated', on(6, 7));
    const book = printed(before, on(6, 12));
    expect(at(book, on(6, 13))).toEqual(done);
    expect(
      at(
        edited(book, (draft) => stepRunBack(draft, run, freshIds(on(6, 13)))),
        on(6, 14),
      ),
    ).toEqual(beforeRun);
    const byTick = ticked(locked(before, on(6, 11)), on(6, 12), READY, printKey(0));
    expect(at(byTick, on(6, 13))).toEqual(done);
    const back = edited(byTick, (draft) => stepRunBack(draft, run, freshIds(on(6, 13))));
    expect(at(back, on(6, 14))).toEqual(beforeRun);
  });

  it('is the same act as stirring for the day: who has done one has done the other, and it is taken back as it was noted', () => {
    const stirred = noted(shop.book, 'white-stirred', on(6, 8));
    expect(at(stirred, on(6, 9))).toEqual(done);
    expect(standing(noted(shop.book, 'circulated', on(6, 8)), 'white-stirred', on(6, 9))).toEqual(done);
    expect(at(noted(stirred, 'white-stirred', on(6, 9), FIRST, false), on(6, 9))).toEqual({ kind: 'never' });
  });
});

describe('a clock that was ahead and is set back', () => {
  it('leaves checks due whose notes and prints are dated later than now', () => {
    const ahead = noted(printed(noted(shop.book, 'circulated', on(5)), on(26)), 'nozzles', on(26));
    expect(standing(ahead, 'circulated', on(6))).toEqual(beforeRun);
    expect(standing(ahead, 'nozzles', on(6))).toEqual({ kind: 'never' });
    const again = noted(noted(ahead, 'circulated', on(6)), 'nozzles', on(6));
    expect(standing(again, 'circulated', on(6, 10))).toEqual(done);
    expect(standing(again, 'nozzles', on(6, 10))).toEqual(done);
  });
});

describe('checks of several printers', () => {
  it('are kept by printer, what is the shop’s once', () => {
    const book = noted(noted(two, 'nozzles', on(6), FIRST), 'powder-dry', on(6), null);
    const states = checkStates(book, printedBy(book), { now: on(6, 10), dayOf });
    const of = (check: string) =>
      states.flatMap((state) =>
        state.check.id === check ? [[state.machine?.id ?? null, state.standing.kind]] : [],
      );
    expect(of('nozzles')).toEqual([
      [FIRST, 'done'],
      [SECOND, 'never'],
    ]);
    expect(of('powder-dry')).toEqual([[null, 'done']]);
    expect(of('platen')).toEqual([[firstOf('press'), 'never']]);
  });

  it('count the prints and the film of each', () => {
    const book = printed(noted(noted(two, 'rollers', on(1), FIRST), 'rollers', on(1), SECOND), on(6, 8));
    expect(standing(book, 'circulated', on(6, 9), FIRST)).toEqual(done);
    expect(standing(book, 'circulated', on(6, 9), SECOND)).toEqual({ kind: 'never' });
    const { filmSince } = printedBy(book);
    expect(filmSince(on(1), FIRST)).toBe(fromMm(280));
    expect(filmSince(on(1), SECOND)).toBe(0);
    expect(filmSince(on(1), null)).toBe(fromMm(280));
  });

  it('hold for all of them where nobody said at which', () => {
    const book = noted(two, 'nozzles', on(6), null);
    expect(standing(book, 'nozzles', on(6), SECOND)).toEqual(done);
    expect(standing(noted(book, 'nozzles', on(6, 10), FIRST, false), 'nozzles', on(6, 11), SECOND)).toEqual(
      done,
    );
  });

  it('go with the machines that there are: one that is bought has none noted, what nothing cures has no oven', () => {
    const book = noted(shop.book, 'nozzles', on(6));
    const bought = edited(book, (draft) => {
      const { printers } = draft.settings.shop?.station ?? expect.fail();
      editStation(draft, { printers: [printers[0], startingPrinter(SECOND)] });
      addCheck(
        draft,
        { name: 'Bulbs', interval: { kind: 'day' }, of: 'oven', hazard: 'heat' },
        freshIds(on(6)),
      );
    });
    expect(standing(bought, 'nozzles', on(6, 10), SECOND)).toEqual({ kind: 'never' });
    const ovens = (own: Book) =>
      checkStates(own, printedBy(own), { now: on(6), dayOf }).filter(({ check }) => check.name === 'Bulbs');
    expect(ovens(bought)).toEqual([]);
    const cured = edited(bought, (draft) => editStation(draft, { curer: 'oven' }));
    expect(ovens(cured)).toMatchObject([{ machine: { kind: 'oven', number: 1, of: 1 } }]);
  });

  it('ask at a print for what its printer stood still for, and for nothing else', () => {
    const states = checkStates(two, printedBy(two), { now: on(6), dayOf });
    const asked = states.filter((state) => state.machine?.id === SECOND && isDueAtPrint(state));
    expect(asked.map(({ check }) => check.id)).toEqual(['circulated']);
  });
});

describe('a run that another device handed over', () => {
  it('was printed on no printer of this shop', () => {
    const book = printed(shop.book, on(6));
    const own = book.run[run];
    if (own?.state !== 'printed') expect.fail('it is not printed');
    const station = book.settings.shop?.station ?? expect.fail();
    const received = { made: on(6), recipes: [], station, stretch: 1, known: [] };
    const other = { ...book, run: { [run]: { ...own, received } } };
    expect(printedBy(other).runsOn(FIRST)).toEqual([]);
    expect(printedBy(other).filmSince(on(1), null)).toBe(0);
  });
});

describe('runs of which nothing but their closing is kept', () => {
  it('count as printed where their film is', () => {
    const film = Object.values(two.film)[0] ?? expect.fail();
    const closing = {
      id: 'gone' as Id<'run'>,
      at: on(6),
      film: { id: film.id },
      actual: { film: fromMm(500) },
    };
    const book: Book = { ...two, closing: { gone: closing as never } };
    expect(printedBy(book).runsOn(FIRST)).toEqual([on(6)]);
    expect(printedBy(book).filmSince(on(1), FIRST)).toBe(fromMm(500));
    expect(printedBy(book).runsOn(SECOND)).toEqual([]);
  });
});
