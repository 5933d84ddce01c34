import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editOrder, lockRun, printedTo, setCount, setPlaces, spoil, tickJobs } from '../../src/editing';
import { layRun, problemOf, soundPlaces } from '../../src/layout';
import { type Book, curers, type Film, type Id, type Run, runOf } from '../../src/model';
import { createPlanner } from '../../src/packing';
import { asTicked, printedBefore, ticked, ticksOf, workOf } from '../../src/pressing';
import { asMinor, fromMm, um } from '../../src/units';
import { edited, freshIds, NOW, smallBook } from './book';

/** A run of any kind, sent to print. */
const anyRun = fc.record({
  onSheets: fc.boolean(),
  cutting: fc.constantFrom('free' as const, 'straight' as const, 'staged' as const),
  spanMax: fc.option(fc.integer({ min: 120, max: 300 }), { nil: null }),
  curer: fc.constantFrom(...curers),
  cutApart: fc.constantFrom('before-powder' as const, 'after-cure' as const),
  peel: fc.constantFrom('hot' as const, 'cold' as const),
  wants: fc.constantFrom('garments' as const, 'transfers' as const),
  overs: fc.nat({ max: 3 }),
  /** The share of the film printed before, or spoiled behind the last copy laid. */
  before: fc.constantFrom('nothing' as const, 'printed' as const, 'all-printed' as const, 'spoiled' as const),
});
type AnyRun = typeof anyRun extends fc.Arbitrary<infer Any> ? Any : never;

const { book: small, order, front } = smallBook();
const run = Object.keys(small.run)[0] as Id<'run'>;

function openOf(book: Book): { run: Run; film: Film } {
  const open = runOf(book, run);
  if (!open) throw new Error('no run');
  return open;
}

function laidIn(book: Book) {
  const laid = layRun(book, openOf(book).run);
  if (!laid) throw new Error('not laid');
  return laid;
}

function laidOut(book: Book): Book {
  const open = openOf(book);
  const problem = problemOf(book, open.run, open.film, 'placed');
  const places = soundPlaces({ book, ...open }, problem, createPlanner(problem.problem, 1).best());
  return places ? edited(book, (draft) => setPlaces(draft, run, places)) : book;
}

function lockedBook({
  onSheets,
  cutting,
  spanMax,
  curer,
  cutApart,
  peel,
  wants,
  overs,
  before,
}: AnyRun): Book {
  const ids = freshIds();
  const set = edited(small, (draft) => {
    editOrder(draft, order, { wants });
    setCount(draft, front, overs, ids, 'over');
    const { shop } = draft.settings;
    if (shop) Object.assign(shop.station, { curer, cutApart });
    for (const film of Object.values(draft.film)) {
      if (film.kind !== 'roll') continue;
      const { id, name, printer, width, margins, gap, together, curl, archived, changed } = film;
      const both = {
        id,
        name,
        printer,
        width,
        margins,
        gap,
        together,
        curl,
        archived,
        changed,
        cutting,
        peel,
      };
      draft.film[id] = onSheets
        ? { ...both, kind: 'sheets', length: fromMm(250), sheetsLeft: 9, price: asMinor(90) }
        : { ...film, ...both, spanMax: spanMax === null ? null : fromMm(spanMax) };
    }
  });
  const lock = (book: Book) => edited(book, (draft) => lockRun(draft, run, ids));
  const locked = lock(laidOut(set));
  const { lengthUsed } = laidIn(locked);
  const sheet = um(onSheets ? Math.ceil(lengthUsed / fromMm(250)) * fromMm(250) : lengthUsed);
  switch (before) {
    case 'nothing':
      return locked;
    case 'printed':
    case 'all-printed': {
      const to = before === 'printed' ? um(onSheets ? fromMm(250) : lengthUsed / 2) : sheet;
      return lock(edited(locked, (draft) => printedTo(draft, run, um(Math.round(to)), ids)));
    }
    case 'spoiled':
      // What was on it is not printed again here: the film ends with a stretch that bears nothing.
      return lock(
        edited(locked, (draft) => {
          const from = um(onSheets ? sheet - fromMm(250) : Math.round(lengthUsed / 2));
          spoil(draft, run, { from, to: sheet }, ids);
        }),
      );
  }
}

/** What is left to be ticked, as a day at the bench shows it, some time on. */
function openJobs(book: Book, seconds: number): string[] {
  const laid = laidIn(book);
  const { station } = laid.view;
  const work = station && workOf(laid, station, new Date(NOW));
  if (!work?.ok) return [];
  const since = (at: string) => (Date.parse(at) - Date.parse(NOW)) / 1000;
  const done = new Map([...ticked(ticksOf(book, run))].map(([subject, at]) => [subject, since(at)]));
  const { jobs, problem } = asTicked(
    work.value,
    new Map([...printedBefore(work.value, laid), ...done]),
    seconds,
  );
  return jobs
    .filter((_, task) => (problem.tasks[task]?.fixed?.end ?? Number.POSITIVE_INFINITY) > seconds)
    .map(({ key }) => key);
}

describe('ticks', () => {
  it('carry a run of any kind to pressed, in whatever order its jobs are ticked', () => {
    fc.assert(
      fc.property(anyRun, fc.infiniteStream(fc.nat({ max: 99 })), (kind, lots) => {
        let book = lockedBook(kind);
        fc.pre(openOf(book).run.state === 'locked');
        const [first] = openJobs(book, 0);
        fc.pre(first !== undefined);
        for (let minute = 1; minute < 200; minute += 1) {
          const open = openJobs(book, 60 * minute);
          const key = open[(lots.next().value ?? 0) % open.length];
          if (key === undefined) break;
          const at = new Date(Date.parse(NOW) + 60_000 * minute).toISOString() as typeof NOW;
          book = edited(book, (draft) => tickJobs(draft, run, [key], { done: true, by: '' }, freshIds(at)));
        }
        expect(openJobs(book, 60 * 300)).toEqual([]);
        expect(book.run[run]?.state).toBe('pressed');
      }),
      { numRuns: 60 },
    );
  });

  it('made at once are taken back at once, with the states that they brought the run to', () => {
    fc.assert(
      fc.property(anyRun, fc.nat({ max: 20 }), fc.infiniteStream(fc.boolean()), (kind, few, lots) => {
        let book = lockedBook(kind);
        fc.pre(openOf(book).run.state === 'locked');
        const tick = (minute: number, keys: readonly string[], done: boolean) => {
          const at = new Date(Date.parse(NOW) + 60_000 * minute).toISOString() as typeof NOW;
          book = edited(book, (draft) => tickJobs(draft, run, keys, { done, by: '' }, freshIds(at)));
        };
        tick(1, openJobs(book, 0).slice(0, few), true);
        const before = book;
        const batch = openJobs(book, 60).filter(() => lots.next().value);
        fc.pre(batch.length > 0);
        tick(2, batch, true);
        tick(3, batch, false);
        expect(book.run[run]?.state).toBe(before.run[run]?.state);
        expect(book.film).toEqual(before.film);
        expect(book.order).toEqual(before.order);
        expect(openJobs(book, 180)).toEqual(openJobs(before, 180));
      }),
      { numRuns: 60 },
    );
  });
});
