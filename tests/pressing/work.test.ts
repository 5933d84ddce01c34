import { describe, expect, it } from 'vitest';
import { editOrder, lockRun, printedTo, setPlaces, spoil } from '../../src/editing';
import { layRun } from '../../src/layout';
import type { Book, Id, Place, Run, Station } from '../../src/model';
import {
  asTicked,
  loadsOf,
  printedBefore,
  startingStation,
  ticked,
  timelineOf,
  type Work,
  workOf,
} from '../../src/pressing';
import { createScheduler, validateSchedule } from '../../src/pressing/schedule';
import { fromMm, type LocalDate, UPRIGHT } from '../../src/units';
import { context, edited, smallBook } from '../editing/book';

const { book: empty, order, front, tag } = smallBook();
const [run] = Object.values(empty.run) as [Run];
const at = (x: number, y: number): Place => ({ x: fromMm(x), y: fromMm(y), angle: UPRIGHT, pinned: false });
const copiesOf = (transfer: string) =>
  Object.values(empty.copy)
    .filter((copy) => copy.transfer === transfer)
    .map(({ id }) => id);

/** Three fronts one behind the other and two tags beside them, in spans of at most 150 mm. */
const laidBook = edited(empty, (draft) => {
  const fronts = copiesOf(front).map((id, index): [Id<'copy'>, Place] => [id, at(5, 10 + 90 * index)]);
  const tags = copiesOf(tag).map((id, index): [Id<'copy'>, Place] => [id, at(120, 10 + 90 * index)]);
  setPlaces(draft, run.id, [...fronts, ...tags]);
  for (const film of Object.values(draft.film)) if (film.kind === 'roll') film.spanMax = fromMm(150);
});

const ORIGIN = new Date('2026-11-25T08:00:00');

function workIn(book: Book, more: Partial<Station> = {}): Work {
  const laid = layRun(book, book.run[run.id] ?? run);
  if (!laid) throw new Error('not laid');
  const work = workOf(laid, { ...startingStation('C'), ...more }, ORIGIN);
  if (!work.ok) throw new Error(work.problem.join());
  return work.value;
}

function timeline(work: Work) {
  const scheduler = createScheduler(work.problem, { seed: 1, cycle: 100, earlier: null });
  scheduler.step(100);
  const schedule = scheduler.best();
  expect(validateSchedule(work.problem, schedule)).toEqual([]);
  return timelineOf(work, schedule, scheduler.bound);
}

const kinds = (work: Work) => {
  const counts: Record<string, number> = {};
  for (const { kind } of work.jobs) counts[kind] = (counts[kind] ?? 0) + 1;
  return counts;
};

describe('the work of a run', () => {
  const work = workIn(laidBook);

  it('takes every span from the printer to the pile, and every copy to its garment', () => {
    expect(work.spans.length).toBeGreaterThanOrEqual(2);
    const spans = work.spans.length;
    expect(kinds(work)).toMatchObject({
      ready: 1,
      print: spans,
      'cut-off': spans,
      powder: spans,
      apart: spans,
      pack: 1,
    });
    const pressed = work.jobs.filter(({ kind }) => kind === 'press').flatMap(({ copies }) => copies);
    expect(pressed.toSorted()).toEqual(Object.keys(laidBook.copy).toSorted());
  });

  it('prints as fast as the printer does', () => {
    const film = work.spans.reduce((sum, { from, to }) => sum + to - from, 0);
    const printing = work.jobs.flatMap(({ kind }, task) =>
      kind === 'print' ? [work.problem.tasks[task]?.duration ?? 0] : [],
    );
    // 2.5 m an hour.
    expect(printing.reduce((sum, time) => sum + time, 0)).toBeCloseTo((3600 * film) / 2_500_000, -1);
  });

  it('keeps print, cut, powder and cure in their order, and the printer still while it is cut', () => {
    const { entries } = timeline(work);
    const of = (key: string) => {
      const entry = entries.find(({ job }) => job.key === key);
      if (!entry) throw new Error(key);
      return entry;
    };
    expect(of('cut-off/0').start).toBeGreaterThanOrEqual(of('print/0').end);
    expect(of('print/1').start).toBeGreaterThanOrEqual(of('cut-off/0').end);
    expect(of('powder/0').start - of('print/0').end).toBeLessThanOrEqual(300);
    expect(of('cure/0').start).toBeGreaterThanOrEqual(of('powder/0').end);
    expect(of(`pack/${order}`).end).toBe(timeline(work).end);
  });

  it('cuts apart before the powder where the shop does', () => {
    const early = workIn(laidBook, { cutApart: 'before-powder' });
    const { entries } = timeline(early);
    const index = (key: string) => entries.findIndex(({ job }) => job.key === key);
    expect(index('apart/0')).toBeLessThan(index('powder/0'));
  });

  it('needs no powder by hand on a line, and no press for transfers alone', () => {
    expect(kinds(workIn(laidBook, { curer: 'line' }))).not.toHaveProperty('powder');
    const only = edited(laidBook, (draft) => editOrder(draft, order, { wants: 'transfers' }));
    const station = startingStation('C');
    const noPress = workIn(only, { curer: 'line', press: { ...station.press, count: 0 } });
    expect(kinds(noPress)).not.toHaveProperty('press');
    expect(kinds(noPress)).toMatchObject({ pack: 1 });
  });

  it('leaves cold-peel film lying and presses again after its wait', () => {
    const cold = edited(laidBook, (draft) => {
      for (const film of Object.values(draft.film)) film.peel = 'cold';
    });
    const { entries } = timeline(workIn(cold));
    const again = entries.filter(({ job }) => job.kind === 'again');
    expect(again.length).toBeGreaterThan(0);
    for (const entry of again) {
      const press = entries.find(({ job }) => job.key === entry.job.key.replace('again', 'press'));
      expect(entry.start - (press?.end ?? 0)).toBeGreaterThanOrEqual(60);
    }
  });

  describe('that stopped on the way', () => {
    const [first] = work.spans;
    if (!first) throw new Error('no spans');
    const locked = edited(laidBook, (draft) => lockRun(draft, run.id, context()));
    const laidIn = (book: Book) => layRun(book, book.run[run.id] ?? run) ?? expect.fail();

    it('prints no span that is printed, and goes on behind it', () => {
      const part = edited(locked, (draft) => printedTo(draft, run.id, first.to, context()));
      const own = workIn(part);
      const done = printedBefore(own, laidIn(part));
      expect([...done]).toEqual([['print/0', 0]]);
      const { entries } = timeline(asTicked(own, done, 0));
      const state = (key: string) => entries.find(({ job }) => job.key === key)?.state;
      expect(state('print/0')).toBe('done');
      expect(state('print/1')).toBe('ahead');
      expect(timeline(asTicked(own, done, 0)).end).toBeLessThan(timeline(own).end);
    });

    it('only cuts off film that bears nothing, since all on it was spoiled', () => {
      const spoiled = edited(locked, (draft) => {
        spoil(draft, run.id, { from: fromMm(0), to: first.to }, context());
      });
      const own = workIn(spoiled);
      const blank = own.spans.findIndex(({ to }) => to <= first.to);
      const kindsOf = own.jobs.flatMap(({ kind, spans }) => (spans.includes(blank) ? [kind] : []));
      expect(kindsOf).toEqual(['print', 'cut-off']);
      // What bears copies goes all the way as before.
      const cured = own.jobs.flatMap(({ kind, copies }) => (kind === 'cure' ? copies : []));
      expect(cured.toSorted()).toEqual(
        laidIn(spoiled)
          .copies.map(({ id }) => id)
          .toSorted(),
      );
    });
  });

  it('says what is missing', () => {
    const station = startingStation('C');
    const laid = layRun(laidBook, run);
    const nothing = layRun(empty, run);
    if (!laid || !nothing) throw new Error('not laid');
    const problems = (more: Partial<Station>, of = laid) => {
      const result = workOf(of, { ...station, ...more }, ORIGIN);
      return result.ok ? [] : result.problem;
    };
    expect(problems({ press: { ...station.press, count: 0 } })).toEqual(['no-press']);
    expect(problems({ printer: { ...station.printer, perHour: fromMm(0) } })).toEqual(['no-speed']);
    expect(problems({}, nothing)).toEqual(['nothing-laid']);
    expect(problems({}, { ...laid, spans: null })).toEqual(['not-cut']);
  });

  it('names what is larger than the press and its bed', () => {
    const small = { width: fromMm(90), length: fromMm(70) };
    const station = startingStation('C');
    const { tooLarge } = workIn(laidBook, { press: { ...station.press, platen: small } });
    expect(tooLarge.filter(({ kind }) => kind === 'span')).toHaveLength(work.spans.length);
    expect(tooLarge.filter(({ kind }) => kind === 'transfer')).toMatchObject([{ transfer: { id: front } }]);
    expect(work.tooLarge).toEqual([]);
  });

  it('names an order that will be late', () => {
    const due = edited(laidBook, (draft) => {
      editOrder(draft, order, { due: '2026-11-25' as LocalDate, dueTime: '08:10' });
    });
    const { orders } = timeline(workIn(due));
    expect(orders).toMatchObject([{ order: { code: 'HB' }, due: 600 }]);
    expect(orders[0]?.late).toBe((orders[0]?.end ?? 0) - 600);
  });
});

describe('loads', () => {
  const bed = { width: fromMm(400), length: fromMm(500) };
  const piece = (width: number, length: number) => ({ width: fromMm(width), length: fromMm(length) });
  const load = (...pieces: ReturnType<typeof piece>[]) =>
    loadsOf(pieces, bed, { apart: fromMm(10), most: 3 });

  it.each([
    ['two short spans lie together', [piece(330, 240), piece(330, 240)], [[0, 1]]],
    ['with the distance between them', [piece(330, 250), piece(330, 250)], [[0], [1]]],
    ['turned, if that is how they fit', [piece(330, 190), piece(330, 190)], [[0, 1]]],
    [
      'no more than may wait for one another',
      Array.from({ length: 4 }, () => piece(330, 100)),
      [[0, 1, 2], [3]],
    ],
    ['only neighbours', [piece(330, 240), piece(330, 450), piece(330, 240)], [[0], [1], [2]]],
  ])('%s', (_, pieces, loads) => {
    expect(load(...pieces)).toEqual({ loads, tooLarge: [] });
  });

  it('leave out what is larger than the bed', () => {
    expect(load(piece(330, 240), piece(330, 600), piece(330, 240))).toEqual({
      loads: [[0], [2]],
      tooLarge: [1],
    });
  });
});

describe('ticks', () => {
  const tick = (subject: string, done: boolean, minute: number, id = 'a') => ({
    id: id as Id<'tick'>,
    subject,
    done,
    at: `2026-11-25T08:${String(minute).padStart(2, '0')}:00.000Z` as never,
  });

  it('hold as they were made last, in whatever order they come', () => {
    const list = [tick('print/0', true, 10), tick('print/0', false, 12), tick('print/1', true, 20)];
    expect([...ticked(list).keys()]).toEqual(['print/1']);
    expect(ticked(list.toReversed())).toEqual(ticked(list));
    const same = [tick('print/0', true, 10, 'a'), tick('print/0', false, 10, 'b')];
    expect(ticked(same)).toEqual(ticked(same.toReversed()));
  });

  const work = workIn(laidBook);
  const state = (done: [string, number][], now: number) => timeline(asTicked(work, new Map(done), now));

  it('fix what is done, and what it waited for', () => {
    const { entries } = state([['cure/0', 2000]], 2100);
    const of = (key: string) => entries.find(({ job }) => job.key === key);
    expect(of('cure/0')).toMatchObject({ end: 2000, state: 'done' });
    for (const key of ['ready', 'print/0', 'cut-off/0', 'powder/0']) expect(of(key)?.state).toBe('done');
    expect(of('powder/0')?.end).toBeLessThanOrEqual(of('cure/0')?.start ?? 0);
    for (const entry of entries)
      if (entry.state === 'ahead') expect(entry.start).toBeGreaterThanOrEqual(2100);
  });

  it('let the printer go on by itself', () => {
    const { entries } = state([['cut-off/0', 1000]], 1010);
    const print = entries.find(({ job }) => job.key === 'print/1');
    expect(print).toMatchObject({ start: 1000, state: 'begun' });
  });

  it('of straight cuts, too, add up to a span cut apart when the last is made', () => {
    const straight = edited(laidBook, (draft) => {
      for (const film of Object.values(draft.film)) {
        film.cutting = 'straight';
        if (film.kind === 'roll') film.spanMax = null;
      }
    });
    const cuts = workIn(straight);
    const apart = cuts.jobs.find(({ kind }) => kind === 'apart');
    const parts = apart?.parts ?? [];
    expect(parts.length).toBeGreaterThan(1);
    expect(parts[0]).toBe('cut/0/1');
    const state = (count: number) =>
      timeline(
        asTicked(cuts, new Map(parts.slice(0, count).map((part, at) => [part, 3000 + at])), 4000),
      ).entries.find(({ job }) => job.key === apart?.key);
    expect(state(parts.length - 1)?.state).not.toBe('done');
    expect(state(parts.length)).toMatchObject({ state: 'done', end: 3000 + parts.length - 1 });
  });

  it('of copies taken out add up in the same way', () => {
    const apart = work.jobs.find(({ kind }) => kind === 'apart');
    const out = (apart?.copies ?? []).map((copy): [string, number] => [`copy/${copy}`, 3000]);
    expect(state(out, 3100).entries.find(({ job }) => job.key === apart?.key)?.state).toBe('done');
    expect(state(out.slice(1), 3100).entries.find(({ job }) => job.key === apart?.key)?.state).not.toBe(
      'done',
    );
  });

  it('end the day when all is done', () => {
    const { end, entries } = state([[`pack/${order}`, 5000]], 5000);
    expect(end).toBe(5000);
    expect(entries.every((entry) => entry.state === 'done')).toBe(true);
  });

  it('find a warm press: no second warm-up', () => {
    const before = state([], 0);
    const after = state([['cure/0', 2000]], 2000);
    const start = (of: typeof after) => of.entries.find(({ job }) => job.kind === 'press')?.start ?? 0;
    expect(start(after)).toBeLessThan(2000 + 720);
    expect(start(before)).toBeGreaterThan(720);
  });
});
