import { describe, expect, it } from 'vitest';
import { editOrder } from '../../src/editing';
import { layRun } from '../../src/layout';
import type { Book, Hours, Station } from '../../src/model';
import {
  BEGUN,
  type DayTerms,
  dayWork,
  type OpenRun,
  packKey,
  startingStation,
  timelineOf,
} from '../../src/pressing';
import { createScheduler, validateSchedule } from '../../src/pressing/schedule';
import { fromMinutes, fromMm, type LocalDate } from '../../src/units';
import { edited } from '../editing/book';
import { presses, printing } from './stations';
import { dayOfTwoRuns } from './two-runs';

const { book, one, two, order, early } = dayOfTwoRuns();
/** A Wednesday; the shop is open from 8 to 12 and from 12:30 to 17. */
const ORIGIN = new Date(2026, 10, 25);
const station = startingStation('C');
const HOUR = 3600;

const openRun = (
  own: Book,
  id: string,
  done: Readonly<Record<string, number>> = {},
  more: Partial<Station> = {},
): OpenRun => {
  const run = own.run[id];
  const laid = run && layRun(own, run);
  if (!laid) throw new Error('not laid');
  const at = (seconds: number) => new Date(ORIGIN.getTime() + 1000 * seconds).toISOString();
  return {
    laid,
    station: { ...station, ...more },
    done: new Map(Object.entries(done).map(([key, seconds]) => [key, at(seconds)])),
    on: new Map(),
  };
};

function planned(open: readonly OpenRun[], terms: Partial<DayTerms> = {}) {
  const { work } = dayWork(open, { station, origin: ORIGIN, now: 9 * HOUR, runOrder: [], ...terms });
  const scheduler = createScheduler(work.problem, { seed: 1, cycle: 60, earlier: null });
  scheduler.step(60);
  const schedule = scheduler.best();
  expect(validateSchedule(work.problem, schedule)).toEqual([]);
  return timelineOf(work, schedule, scheduler.bound);
}

const both = [openRun(book, one), openRun(book, two)];
const printsOf = ({ entries }: ReturnType<typeof planned>, run: string) =>
  entries.filter(({ job }) => job.run.id === run && job.kind === 'print');

describe('a day of two runs', () => {
  it('prints one behind the other, and the second while the first is pressed', () => {
    const day = planned(both);
    const [first, second] = day.runs;
    const last = printsOf(day, first?.run.id ?? '').at(-1);
    expect(printsOf(day, second?.run.id ?? '')[0]?.start).toBeGreaterThanOrEqual(last?.end ?? 0);
    expect(second?.print).toBeLessThan(first?.end ?? 0);
    const alone = both.map((run) => planned([run]).end - 9 * HOUR);
    expect(day.end - 9 * HOUR).toBeLessThan((alone[0] ?? 0) + (alone[1] ?? 0));
  });

  it('prints the run first that is due first, and another if that is wished', () => {
    expect(planned(both).runs[0]?.run.id).toBe(two);
    expect(planned(both, { runOrder: [one] }).runs[0]?.run.id).toBe(one);
  });

  it('has a rush without a date done before what is due on Friday, but not before what would be late for it', () => {
    const dayWith = (rush: boolean, due: string, dueTime: string | null) => {
      const own = edited(book, (draft) => {
        editOrder(draft, early, { due: null, dueTime: null, rush });
        editOrder(draft, order, { due: due as LocalDate, dueTime });
      });
      const day = planned([openRun(own, one), openRun(own, two)], { runOrder: [] });
      const endOf = (id: string) => day.orders.find((each) => each.order.id === id) ?? expect.fail();
      return { first: day.runs[0]?.run.id, rush: endOf(early), other: endOf(order) };
    };
    const friday = dayWith(true, '2026-11-27', null);
    expect(friday).toMatchObject({ first: two, rush: { due: null, late: 0 }, other: { late: 0 } });
    expect(friday.rush.end).toBeLessThan(friday.other.end);
    expect(friday.rush.end).toBeLessThan(dayWith(false, '2026-11-27', null).rush.end);
    // The other is due as soon as it can be done at all.
    const soonest = dayWith(false, '2026-11-25', '09:00').other.end;
    const minute = new Date(ORIGIN.getTime() + 1000 * (soonest + 60)).toTimeString().slice(0, 5);
    expect(dayWith(true, '2026-11-25', minute).other.late).toBe(0);
  });

  it('has an order done when its last copy of any run is packed', () => {
    const day = planned(both);
    const packs = day.entries.filter(({ job }) => job.key === packKey(order));
    expect(packs).toHaveLength(2);
    const own = day.orders.find((each) => each.order.id === order);
    expect(own?.end).toBe(Math.max(...packs.map(({ end }) => end)));
    expect(own?.runs.map(({ id }) => id).toSorted()).toEqual([one, two].toSorted());
  });

  it('leaves hands their break, and goes on at the next opening', () => {
    const day = planned(both, { now: 16.75 * HOUR });
    const rest = [12 * HOUR, 12.5 * HOUR] as const;
    for (const { takes, job } of [...day.entries, ...planned(both, { now: 11 * HOUR }).entries]) {
      for (const { worker, from, to } of takes) {
        const pauses = job.kind === 'apart' || job.kind === 'pack';
        if (worker === 'hands' && !pauses) expect(to <= rest[0] || from >= rest[1]).toBe(true);
        if (!pauses) expect(to <= 17 * HOUR || from >= 32 * HOUR).toBe(true);
      }
    }
    expect(day.end).toBeGreaterThan(32 * HOUR);
  });

  it('is planned from the next opening in the evening, and always where no hours are told', () => {
    expect(
      Math.min(...planned(both, { now: 20 * HOUR }).entries.map(({ start }) => start)),
    ).toBeGreaterThanOrEqual(32 * HOUR);
    const hours: Hours = { week: station.hours.week.map(() => []), closed: [] };
    expect(planned(both, { now: 20 * HOUR, station: { ...station, hours } }).end).toBeLessThan(32 * HOUR);
  });

  it('is late by its order only, and says by how much', () => {
    const late = edited(book, (draft) => {
      const own = draft.order[order];
      if (own) Object.assign(own, { due: '2026-11-25', dueTime: '09:05' });
    });
    const day = planned([openRun(late, one), openRun(late, two)]);
    expect(day.orders.filter(({ late: by }) => by > 0).map((each) => each.order.id)).toEqual([order]);
  });
});

describe('film that would lie wet over closing time', () => {
  const weekday: Hours['week'][number] = [
    { from: '08:00', to: '12:00' },
    { from: '12:30', to: '17:00' },
  ];
  const hours: Hours = { week: [weekday, weekday, weekday, weekday, weekday, [], []], closed: [] };
  const own = { ...station, hours };
  const dayWith = (done: Readonly<Record<string, number>>, now: number) =>
    planned([openRun(book, one, done, own)], { station: own, now });
  const printing = (day: ReturnType<typeof planned>) => day.entries.find(({ job }) => job.key === 'print/0');

  it('is printed the next morning, though the printer was ready just before', () => {
    const day = dayWith({ [BEGUN]: 16 * HOUR, ready: 16.97 * HOUR }, 16.98 * HOUR);
    expect(printing(day)).toMatchObject({ state: 'ahead' });
    expect(printing(day)?.start).toBeGreaterThanOrEqual(32 * HOUR);
    expect(day).toMatchObject({ overWet: 0, wetOverClosing: null });
  });

  it('is not begun before a break in which it would lie too long, and is where it comes out late in it', () => {
    const limit = { ...own, wetLimit: fromMinutes(7) };
    const at = (now: number) => {
      const run = openRun(book, one, { [BEGUN]: 9 * HOUR, ready: now }, limit);
      return printing(planned([run], { station: limit, now }));
    };
    expect(at(11 * HOUR)).toMatchObject({ state: 'begun' });
    expect(at(11.97 * HOUR)).toMatchObject({ state: 'ahead' });
    expect(at(11.97 * HOUR)?.start).toBeGreaterThan(12.25 * HOUR);
  });

  it('is told where it is printed already: until when it lies wet', () => {
    const day = dayWith({ [BEGUN]: 16 * HOUR, 'print/0': 16.99 * HOUR }, 16.995 * HOUR);
    expect(day.wetOverClosing).toBeGreaterThanOrEqual(32 * HOUR);
    expect(dayWith({ [BEGUN]: 10 * HOUR, 'print/0': 11 * HOUR }, 11 * HOUR).wetOverClosing).toBeNull();
  });
});

describe('a run that goes through the printer as a whole', () => {
  const through: Station = { ...station, ...printing({ sends: 'whole-through' }) };
  const dayAt = (now: number, runs: readonly string[], more: Partial<Station> = {}, done = {}) => {
    const own = { ...through, ...more };
    return planned(
      runs.map((run) => openRun(book, run, done, own)),
      { station: own, now },
    );
  };
  const firstPrint = (day: ReturnType<typeof planned>) =>
    Math.min(...day.entries.flatMap(({ job, start }) => (job.key === 'print/0' ? [start] : [])));
  const lastPowder = (day: ReturnType<typeof planned>) =>
    Math.max(...day.entries.flatMap(({ job, start }) => (job.kind === 'powder' ? [start] : [])));

  it('is powdered before the shop closes', () => {
    const day = dayAt(14 * HOUR, [one]);
    expect(day.wetOverClosing).toBeNull();
    expect(lastPowder(day)).toBeLessThan(17 * HOUR);
  });

  it.each([16.6, 16.65, 16.7, 16.72, 16.75, 16.8, 16.97])(
    'is begun the next morning where its film would lie wet over closing time: at %f h',
    (hour) => {
      const day = dayAt(hour * HOUR, [one]);
      expect(day.wetOverClosing).toBeNull();
      const isToday = lastPowder(day) < 17 * HOUR;
      if (!isToday) expect(firstPrint(day)).toBeGreaterThanOrEqual(32 * HOUR);
    },
  );

  it('is put off, and the other that is through before closing is not', () => {
    const day = dayAt(16.6 * HOUR, [one, two]);
    expect(day.wetOverClosing).toBeNull();
    expect(firstPrint(day)).toBeLessThan(17 * HOUR);
    expect(lastPowder(day)).toBeGreaterThan(32 * HOUR);
  });

  it.each([1000, 1400])(
    'is printed all the same where no day is long enough, and it is said: %i mm an hour',
    (speed) => {
      const moment = [{ from: '08:00', to: '08:20' }];
      const hours: Hours = { week: station.hours.week.map(() => moment), closed: [] };
      const slow = { hours, ...printing({ perHour: fromMm(speed) }, through) };
      const day = dayAt(8 * HOUR, [one], slow);
      expect(day.wetOverClosing).not.toBeNull();
      expect(firstPrint(day)).toBeLessThan(4 * 24 * HOUR);
    },
  );

  it('is not taken to be printing where it would lie wet, but is over a break', () => {
    const stateAt = (ready: number, now: number) => {
      const day = dayAt(now, [one], {}, { [BEGUN]: 9 * HOUR, ready });
      return day.entries.find(({ job }) => job.key === 'print/0')?.state;
    };
    expect(stateAt(16.97 * HOUR, 16.98 * HOUR)).toBe('ahead');
    expect(stateAt(11.95 * HOUR, 11.96 * HOUR)).toBe('begun');
  });
});

describe('a day that is begun', () => {
  it('keeps the printer at the run that it is at, whatever is wished', () => {
    const begun = openRun(book, one, { [BEGUN]: 8.5 * HOUR, ready: 8.7 * HOUR });
    const day = planned([begun, openRun(book, two)], { runOrder: [two] });
    expect(day.runs[0]?.run.id).toBe(one);
    expect(day.entries.find(({ job }) => job.run.id === one && job.key === 'print/0')?.state).not.toBe(
      'ahead',
    );
  });

  it('has the film of a run done that was brought to printed by hand', () => {
    const laid = openRun(book, one);
    const { view } = laid.laid;
    const history = [{ state: 'printed' as const, at: '2026-11-25T08:00:00.000Z' as const }];
    const printed: OpenRun = {
      ...laid,
      laid: {
        ...laid.laid,
        state: 'printed',
        view: { ...view, run: { ...view.run, history: history as unknown as typeof view.run.history } },
      },
    };
    const day = planned([printed]);
    expect(printsOf(day, one).every(({ state }) => state === 'done')).toBe(true);
    expect(day.runs[0]?.print).toBeNull();
  });

  it('names runs that cannot be planned, and plans the others', () => {
    const still = openRun(book, one, {}, presses(0));
    const { runs, without } = dayWork([still, openRun(book, two)], {
      station,
      origin: ORIGIN,
      now: 0,
      runOrder: [],
    });
    expect(runs.map(({ run }) => run.id)).toEqual([two]);
    expect(without).toMatchObject([{ run: { id: one }, problems: ['no-press'] }]);
  });
});
