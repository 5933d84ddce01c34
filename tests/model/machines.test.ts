import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addFilm, addRun, editPrinter, editStation, firstFilm, lockRun, setPlaces } from '../../src/editing';
import { handOverRun } from '../../src/hand-over';
import { layRun } from '../../src/layout';
import {
  asId,
  type Book,
  daysAlone,
  firstOf,
  type Id,
  printerOf,
  runViewOf,
  type Sending,
  type Week,
} from '../../src/model';
import { framesOf, imageOf } from '../../src/output/print-image';
import { startingPrinter } from '../../src/pressing';
import { fromMm, UPRIGHT } from '../../src/units';
import { edited, freshIds, NOW, smallBook } from '../editing/book';

const small = smallBook();
const [first] = Object.values(small.book.run);
const ids = freshIds();
const WINDOW = asId<'printer'>('window');

/** A shop with a second printer, a roll in each, and a run on each roll. */
let other = '' as Id<'run'>;
const book = edited(small.book, (draft) => {
  const { shop } = draft.settings;
  if (!shop || !first) throw new Error('no shop');
  editStation(draft, { printers: [...shop.station.printers, startingPrinter(WINDOW)] });
  const film = addFilm(draft, { ...firstFilm('By the window', 'USD', 'mm'), printer: WINDOW }, ids);
  other = addRun(draft, { name: 'Run 2', film }, ids);
  const of = (transfer: string) => Object.values(draft.copy).filter((copy) => copy.transfer === transfer);
  const place = (transfer: string) =>
    of(transfer).map(
      ({ id }, at): [Id<'copy'>, { x: never; y: never; angle: typeof UPRIGHT; pinned: false }] => [
        id,
        { x: fromMm(5) as never, y: fromMm(10 + 90 * at) as never, angle: UPRIGHT, pinned: false },
      ],
    );
  setPlaces(draft, first.id, place(small.front));
  setPlaces(draft, other, place(small.tag));
});
const run = first?.id ?? expect.fail();

const strip = fc.record({
  firstEnd: fc.constantFrom('lead' as const, 'tail' as const),
  inkUp: fc.constantFrom('mirrored' as const, 'plain' as const),
  feed: fc.constantFrom(0.99, 1, 1.01, 1.02),
  mirrored: fc.boolean(),
});

/** The pixels of all copies in the image of a run, as its printer wants them. */
function imagesOf(own: Book, id: string): unknown {
  const laid = layRun(own, own.run[id] ?? expect.fail()) ?? expect.fail();
  const { firstEnd, mirrored, feed } = laid.view.printer ?? expect.fail();
  const marks = { ticks: false, numbers: false, names: null, corners: false };
  return framesOf(laid, { kind: 'run' }).map((frame) =>
    imageOf(laid, frame, { ppi: 150, mirrored, firstEnd, feed, marks }),
  );
}

describe('the test strip of a printer', () => {
  it('tells of its own films alone: runs, images and feed of another printer stay as they are', () => {
    fc.assert(
      fc.property(strip, strip, (here, there) => {
        const set = edited(book, (draft) => {
          editPrinter(draft, firstOf('printer'), here);
          editPrinter(draft, WINDOW, there);
        });
        const again = edited(set, (draft) => editPrinter(draft, WINDOW, { ...here, feed: 1.03 }));
        expect(runViewOf(set, run)).toMatchObject({ stretch: here.feed, printer: here });
        expect(runViewOf(set, other)).toMatchObject({ stretch: there.feed, printer: there });
        expect(imagesOf(again, run)).toEqual(imagesOf(set, run));
        expect(runViewOf(again, other)?.stretch).toBe(1.03);
      }),
    );
  });

  it('is nobody’s where there is no such printer', () => {
    expect(edited(book, (draft) => editPrinter(draft, 'gone', { feed: 1.05 })).settings).toEqual(
      book.settings,
    );
  });
});

describe('a printer', () => {
  it('tells of the rolls in it what a job is, and of no other', () => {
    const sent = (sends: Sending) => edited(book, (draft) => editPrinter(draft, WINDOW, { sends }));
    const jobs = (own: Book) =>
      Object.values(own.film).map((film) => (film.kind === 'roll' ? [film.name, film.jobs] : []));
    expect(jobs(sent('by-span'))).toEqual([
      ['Roll', 'run'],
      ['By the window', 'span'],
    ]);
  });

  it('that is taken away stands in what was locked with it, and the first one for all else', () => {
    const fed = edited(book, (draft) => editPrinter(draft, WINDOW, { feed: 1.02, name: 'Old' }));
    const locked = edited(fed, (draft) => lockRun(draft, other, freshIds()));
    const gone = (own: Book) =>
      edited(own, (draft) => {
        const [only] = draft.settings.shop?.station.printers ?? expect.fail();
        editStation(draft, { printers: [only] });
      });
    expect(runViewOf(gone(locked), other)).toMatchObject({ stretch: 1.02, printer: { name: 'Old' } });
    expect(runViewOf(gone(fed), other)).toMatchObject({ stretch: 1, printer: { id: firstOf('printer') } });
  });

  it('goes alone with a run that is handed over, which needs no other', () => {
    const locked = edited(book, (draft) => lockRun(draft, other, freshIds()));
    const handed = handOverRun(locked, other, null, NOW) ?? expect.fail();
    if (handed.kind !== 'run') throw new Error('no run');
    const { received, snapshot } = handed.run;
    expect(received?.station.printers.map(({ id }) => id)).toEqual([WINDOW]);
    expect(received && printerOf(received.station, snapshot.film).id).toBe(WINDOW);
  });
});

describe('a day without a person', () => {
  const open: Week = Array.from({ length: 7 }, (_, day) => (day < 6 ? [{ from: '08:00', to: '12:00' }] : []));
  const on = (...days: readonly number[]): Week =>
    open.map((_, day) => (days.includes(day) ? [{ from: '09:00', to: '18:00' }] : []));
  const evening: Week = open.map(() => [{ from: '12:00', to: '18:00' }]);

  it.each([
    ['nobody but on two days', [on(0, 2)], [1, 3, 4, 5]],
    ['two who share the week', [on(0, 1, 2), on(3, 4, 5)], []],
    ['someone whenever it is open', [on(0), null], []],
    ['someone who comes when it has closed', [evening], [0, 1, 2, 3, 4, 5]],
  ] as const)('is found of %s', (_, hours, days) =>
    expect(
      daysAlone(
        open,
        hours.map((own) => ({ hours: own as Week | null })),
      ),
    ).toEqual(days),
  );
});
