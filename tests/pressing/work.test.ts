import { describe, expect, it } from 'vitest';
import { editOrder, lockRun, printedTo, setPlaces, spoil } from '../../src/editing';
import { layRun } from '../../src/layout';
import {
  type Book,
  firstOf,
  type Id,
  type Place,
  type Run,
  type Sending,
  type Station,
} from '../../src/model';
import type { Span } from '../../src/packing';
import {
  asTicked,
  type JobKind,
  loadsOf,
  printedBefore,
  startingCure,
  startingOven,
  startingStation,
  ticked,
  tickedBy,
  timelineOf,
  type Work,
  wetWhenWhole,
  workOf,
} from '../../src/pressing';
import { createScheduler, validateSchedule } from '../../src/pressing/schedule';
import { asSeconds, fromMm, type LocalDate, UPRIGHT } from '../../src/units';
import { context, edited, smallBook } from '../editing/book';
import { presses, printing } from './stations';

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
    expect(of('powder/0').start - of('print/0').start).toBeLessThanOrEqual(startingStation('C').wetLimit);
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
    const noPress = workIn(only, { curer: 'line', ...presses(0) });
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
    expect(problems(presses(0))).toEqual(['no-press']);
    expect(problems(printing({ perHour: fromMm(0) }))).toEqual(['no-speed']);
    expect(problems({}, nothing)).toEqual(['nothing-laid']);
    expect(problems({}, { ...laid, spans: null })).toEqual(['not-cut']);
  });

  it('names what is larger than the press and its bed', () => {
    const small = { width: fromMm(340), length: fromMm(70) };
    const { tooLarge } = workIn(laidBook, presses(1, { platen: small }));
    expect(tooLarge.filter(({ kind }) => kind === 'span')).toHaveLength(work.spans.length);
    expect(tooLarge.filter(({ kind }) => kind === 'transfer')).toMatchObject([{ transfer: { id: front } }]);
    expect(work.tooLarge).toEqual([]);
  });

  it.each([
    // Film of 22 in on a platen of 16 by 20 in, on one of 16 by 24 in, and through a line of 16 in and of 24 in.
    ['press', 406, 508, true],
    ['press', 406, 610, false],
    ['line', 406, 610, true],
    ['line', 610, 406, false],
  ] as const)(
    'says where film of 22 in is too wide for its cure: %s, %i by %i mm',
    (curer, width, length, isSaid) => {
      const wide = edited(laidBook, (draft) => {
        for (const film of Object.values(draft.film)) film.width = fromMm(559);
      });
      const bed = { width: fromMm(width), length: fromMm(length) };
      const { tooLarge } = workIn(wide, {
        curer,
        ovens: [{ ...startingOven(firstOf('oven')), bed }],
        ...presses(1, { platen: bed }),
      });
      const told = tooLarge.filter(({ kind }) => kind !== 'transfer');
      const takes = curer === 'line' ? bed.width : bed.length;
      expect(told).toEqual(
        isSaid ? [expect.objectContaining({ kind: 'film', width: fromMm(559), takes })] : [],
      );
    },
  );

  it('names what goes on caps, unless there is a platen for these', () => {
    const onCaps = edited(laidBook, (draft) => {
      const own = draft.transfer[tag];
      if (own) own.name = 'badge, cap';
    });
    const toldWith = (caps: boolean) => workIn(onCaps, presses(1, { caps })).tooLarge.map(({ kind }) => kind);
    expect(toldWith(false)).toEqual(['cap']);
    expect(toldWith(true)).toEqual([]);
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

describe('film on its way to the cure', () => {
  const station = { ...startingStation('C'), allowance: 0 };
  const sent = (sends: Sending, more: Partial<Station> = {}) =>
    workIn(laidBook, { ...more, allowance: 0, ...printing({ sends }) });
  const entriesOf = (work: Work) => {
    const { entries } = timeline(work);
    return (key: string) => entries.find(({ job }) => job.key === key) ?? expect.fail(key);
  };
  const taskOf = (work: Work, key: string) => work.jobs.findIndex((job) => job.key === key);

  it('has its powder within the longest wait from the first ink on, not from the last', () => {
    const { problem, jobs } = sent('by-span');
    for (const { tasks, limit } of problem.chains) {
      const [print = 0] = tasks;
      expect(jobs[print]?.kind).toBe('print');
      expect(limit).toBe(station.wetLimit - (problem.tasks[print]?.duration ?? 0));
    }
    expect(problem.chains).toHaveLength(sent('by-span').spans.length);
    const slow = timeline(sent('by-span', { wetLimit: asSeconds(30) }));
    // No span is printed in half a minute: all of them wait too long, whatever the order of work.
    expect(slow.overWet).toBeGreaterThan(0);
    expect(timeline(sent('by-span')).overWet).toBe(0);
  });

  it('waits for its cure no longer than it may, and is told where it does', () => {
    expect(timeline(sent('by-span'))).toMatchObject({ overWet: 0, overPowdered: 0 });
    // The press is cold when the first span is powdered.
    const cold = presses(1, { warmUp: asSeconds(3600) });
    expect(timeline(sent('by-span', cold)).overPowdered).toBeGreaterThan(0);
  });

  it.each([1, 2, 3])('is powdered on no more than %i trays at once', (trays) => {
    const cold = presses(1, { warmUp: asSeconds(7200) });
    const { entries } = timeline(sent('by-span', { trays, ...cold }));
    const powders = entries.filter(({ job }) => job.kind === 'powder');
    expect(powders.length).toBeGreaterThan(1);
    for (const { start } of powders) {
      const taken = powders.filter((powder) => {
        const [span] = powder.job.spans;
        const cure = entries.find(({ job }) => job.kind === 'cure' && job.spans.includes(span ?? -1));
        const free = (cure?.start ?? 0) + station.handling.load;
        return powder.start <= start && free > start;
      });
      expect(taken.length).toBeLessThanOrEqual(trays);
    }
  });

  it('is printed at a stretch and cut off behind all of it where the run is sent without a pause', () => {
    const through = sent('whole-through');
    const of = entriesOf(through);
    const last = through.spans.length - 1;
    for (let span = 1; span <= last; span += 1)
      expect(of(`print/${span}`).start).toBe(of(`print/${span - 1}`).end);
    expect(of('cut-off/0').start).toBeGreaterThanOrEqual(of(`print/${last}`).end);
    expect(of('cut-off/1').start).toBeGreaterThanOrEqual(of('cut-off/0').end);
    // Its wet time is told from its own first ink.
    const wait = through.problem.waits.find(({ to }) => to === taskOf(through, 'powder/0'));
    expect(wait).toMatchObject({ from: taskOf(through, 'print/0') });
    const paused = entriesOf(sent('whole-pausing'));
    expect(paused('print/1').start).toBeGreaterThanOrEqual(paused('cut-off/0').end);
  });

  it('asks how long the first ink of a run that is sent without a pause lies wet, but not on a line', () => {
    const laid = layRun(laidBook, run) ?? expect.fail();
    const wetWith = (sends: Sending | null, curer: Station['curer'] = 'press') =>
      wetWhenWhole(laid, { ...station, curer, ...printing({ sends }) });
    // 0.28 m at 2.5 m an hour, and the cut behind it.
    expect(laid.lengthUsed).toBe(280_000);
    expect(wetWith('whole-through')).toBe(403 + 30);
    for (const sends of [null, 'by-span', 'whole-pausing'] as const) expect(wetWith(sends)).toBeNull();
    expect(wetWith('whole-through', 'line')).toBeNull();
  });

  it('takes hands for every loose copy where copies are cut apart before the powder', () => {
    const early = (loose: number) => {
      const { problem, jobs } = workIn(laidBook, {
        cutApart: 'before-powder',
        allowance: 0,
        handling: { ...station.handling, loose: asSeconds(loose) },
      });
      const lasts = (key: string) =>
        problem.tasks[jobs.findIndex((job) => job.key === key)]?.duration ?? Number.NaN;
      return { powder: lasts('powder/0'), cure: lasts('cure/0'), jobs };
    };
    const [plain, slow] = [early(0), early(10)];
    const copiesOfJob = (key: string) => plain.jobs.find((job) => job.key === key)?.copies.length ?? 0;
    expect(slow.powder - plain.powder).toBe(10 * copiesOfJob('powder/0'));
    // Laid down, and taken up again.
    expect(slow.cure - plain.cure).toBe(2 * 10 * copiesOfJob('cure/0'));
    expect(copiesOfJob('powder/0')).toBeGreaterThan(0);
  });

  it.each([
    ['longer than two beds', 400, 40, 3],
    ['wider than the bed as well', 200, 40, 6],
    ['such that it fits better turned', 50, 340, 2],
  ])('is cured in as many goes as it takes when it is %s', (_, width, length, goes) => {
    const platen = { width: fromMm(width), length: fromMm(length) };
    const one = workIn(laidBook, { allowance: 0, ...presses(1, { platen }) });
    const [{ from, to }] = one.spans as [Span];
    // The film is 330 mm wide.
    expect(to - from).toBeGreaterThan(fromMm(80));
    expect(to - from).toBeLessThanOrEqual(fromMm(100));
    const { duration } = one.problem.tasks[taskOf(one, 'cure/0')] ?? expect.fail();
    expect(duration).toBe(goes * (startingCure('press').seconds + 2 * station.handling.load));
  });
});

describe('the time that hands take', () => {
  const station = startingStation('C');
  const plain = { ...station, allowance: 0 };
  const lasts = (book: Book, kind: JobKind, more: Partial<Station> = {}) => {
    const { problem, jobs } = workIn(book, { ...plain, ...more });
    return jobs.flatMap((job, at) => (job.kind === kind ? [problem.tasks[at]?.duration ?? 0] : []));
  };
  const total = (times: readonly number[]) => times.reduce((all, time) => all + time, 0);

  it('grows by the allowance for rest and hitches, and that of machines does not', () => {
    for (const kind of ['cut-off', 'powder', 'apart', 'press', 'pack'] as const)
      for (const [at, time] of lasts(laidBook, kind, { allowance: 0.5 }).entries())
        expect(Math.abs(time - 1.5 * (lasts(laidBook, kind)[at] ?? 0))).toBeLessThanOrEqual(1);
    expect(lasts(laidBook, 'print', { allowance: 0.5 })).toEqual(lasts(laidBook, 'print'));
    // Of a cure only the loading.
    const { load } = station.handling;
    const more = lasts(laidBook, 'cure', { allowance: 0.5 }).map(
      (time, at) => time - (lasts(laidBook, 'cure')[at] ?? 0),
    );
    for (const time of more) expect(time).toBe(load);
  });

  it('is by the line along which a copy is cut out with scissors, and by the cut on a trimmer', () => {
    const handling = { ...station.handling, cutApart: asSeconds(0), cutMetre: asSeconds(100) };
    // Three fronts of 100 by 80 mm and two tags of 50 by 30 mm: 1.4 m.
    expect(total(lasts(laidBook, 'apart', { handling }))).toBeCloseTo(140, -1);
    const straight = edited(laidBook, (draft) => {
      for (const film of Object.values(draft.film)) film.cutting = 'straight';
    });
    expect(total(lasts(straight, 'apart', { handling }))).toBe(0);
    const laid = layRun(laidBook, run) ?? expect.fail();
    // A triangle of 30, 40 and 50 mm each.
    const outline = [Float64Array.of(0, 0, 30_000, 0, 0, 40_000)];
    const cut = workOf(
      { ...laid, copies: laid.copies.map((copy) => ({ ...copy, outline })) },
      { ...plain, handling },
      ORIGIN,
    );
    if (!cut.ok) throw new Error(cut.problem.join());
    const { problem, jobs } = cut.value;
    const times = jobs.flatMap(({ kind }, at) =>
      kind === 'apart' ? [problem.tasks[at]?.duration ?? 0] : [],
    );
    expect(total(times)).toBe(5 * 12);
  });

  it('is by the garment in packing, and little for a transfer that is only counted', () => {
    // Transfers listed by hand are pressed each on a garment of its own.
    expect(lasts(laidBook, 'pack')).toEqual([30 + 5 * station.handling.pack]);
    const only = edited(laidBook, (draft) => editOrder(draft, order, { wants: 'transfers' }));
    expect(lasts(only, 'pack')).toEqual([30 + 5 * 2]);
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
  const tick = (subject: string, done: boolean, minute: number, id = 'a', by = '') => ({
    id: id as Id<'tick'>,
    subject,
    done,
    by,
    at: `2026-11-25T08:${String(minute).padStart(2, '0')}:00.000Z` as never,
  });

  it('hold as they were made last, in whatever order they come', () => {
    const list = [tick('print/0', true, 10), tick('print/0', false, 12), tick('print/1', true, 20)];
    expect([...ticked(list).keys()]).toEqual(['print/1']);
    expect(ticked(list.toReversed())).toEqual(ticked(list));
    const same = [tick('print/0', true, 10, 'a'), tick('print/0', false, 10, 'b')];
    expect(ticked(same)).toEqual(ticked(same.toReversed()));
  });

  it('tell who made them', () => {
    const list = [
      tick('print/0', true, 10, 'a', 'MR'),
      tick('cure/0', true, 11, 'b', 'JT'),
      tick('cure/0', false, 12, 'c', 'MR'),
      tick('print/1', true, 13, 'd'),
    ];
    expect([...tickedBy(list)]).toEqual([
      ['print/0', 'MR'],
      ['print/1', ''],
    ]);
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
