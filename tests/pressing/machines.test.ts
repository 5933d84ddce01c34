import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layRun } from '../../src/layout';
import { asId, type Book, type Press, type Station, type Week } from '../../src/model';
import {
  BEGUN,
  dayWork,
  type Entry,
  type OpenRun,
  startingCure,
  startingOven,
  startingPerson,
  startingPrinter,
  startingStation,
  timelineOf,
  withAnotherPrinter,
} from '../../src/pressing';
import { fitsOn } from '../../src/pressing/loads';
import { isOnCap } from '../../src/pressing/measures';
import { withSteadyHands } from '../../src/pressing/people';
import { createScheduler, validateSchedule } from '../../src/pressing/schedule';
import { asSeconds, fromMm, sum } from '../../src/units';
import { edited } from '../editing/book';
import { people, presses } from './stations';
import { dayOfTwoRuns } from './two-runs';

const { book, one, two } = dayOfTwoRuns();
/** A Wednesday; the shop is open from 8 to 12 and from 12:30 to 17. */
const ORIGIN = new Date(2026, 10, 25);
const HOUR = 3600;
const starting = startingStation('C');

const openRun = (own: Book, id: string, station: Station, done: readonly string[] = []): OpenRun => {
  const run = own.run[id];
  const laid = (run && layRun(own, run)) ?? expect.fail();
  return {
    laid,
    station,
    done: new Map(done.map((key) => [key, new Date(+ORIGIN + 9 * HOUR * 1000).toISOString()])),
    on: new Map(),
  };
};

function planned(open: readonly OpenRun[], station: Station, now = 9 * HOUR) {
  const { work } = dayWork(open, { station, origin: ORIGIN, now, runOrder: [] });
  const scheduler = createScheduler(work.problem, { seed: 1, cycle: 40, earlier: null });
  scheduler.step(40);
  const schedule = scheduler.best();
  expect(validateSchedule(work.problem, schedule)).toEqual([]);
  return { work, ...timelineOf(work, schedule, scheduler.bound) };
}

const bothOn = (own: Book, station: Station) => [openRun(own, one, station), openRun(own, two, station)];

const printsOf = (entries: readonly Entry[], run: string) =>
  entries.filter(({ job }) => job.run.id === run && job.kind === 'print');

const overlap = (a: Entry, b: Entry) => a.start < b.end && b.start < a.end;

/** A shop with a printer more, and the film of the second run in it. */
const window = { ...startingPrinter(asId('window')), name: 'At the window' };
const twoPrinters: Station = { ...starting, ...people(3), printers: [starting.printers[0], window] };
const onTwo = edited(book, (draft) => {
  const { shop } = draft.settings;
  if (shop) Object.assign(shop.station, twoPrinters);
  const film = draft.film[draft.run[two]?.film ?? ''] ?? expect.fail();
  const { id: _, changed: __, ...fields } = film;
  const id = asId<'film'>('other');
  draft.film[id] = { ...fields, id, changed: film.changed, printer: window.id };
  const run = draft.run[two];
  if (run) run.film = id;
});

describe('two printers', () => {
  it('print at once, each its own film, and one what is in it one behind the other', () => {
    const { entries } = planned(bothOn(onTwo, twoPrinters), twoPrinters);
    const [here, there] = [printsOf(entries, one), printsOf(entries, two)];
    expect(here.some((print) => there.some((other) => overlap(print, other)))).toBe(true);
    const names = (prints: readonly Entry[]) => [
      ...new Set(prints.flatMap(({ takes }) => takes.map(({ machine }) => machine?.id))),
    ];
    expect([names(here), names(there)]).toEqual([['printer-1'], ['window']]);
    // The same two runs on film in one printer.
    const alone = planned(bothOn(book, twoPrinters), twoPrinters);
    const [a, b] = [printsOf(alone.entries, one), printsOf(alone.entries, two)];
    expect(a.some((print) => b.some((other) => overlap(print, other)))).toBe(false);
  });

  it('are both gone on with by themselves, each at the run that was begun there', () => {
    const begun = bothOn(onTwo, twoPrinters).map(({ laid, station }) =>
      openRun(onTwo, laid.id, station, [BEGUN]),
    );
    const { entries } = planned(begun, twoPrinters, 9.5 * HOUR);
    for (const run of [one, two])
      expect(printsOf(entries, run).some(({ state }) => state !== 'ahead')).toBe(true);
  });

  it('tell which of them does a job, and one alone does not', () => {
    const told = (station: Station, own: Book) =>
      planned(bothOn(own, station), station).entries.flatMap(({ takes }) =>
        takes.flatMap(({ machine }) => machine?.kind ?? []),
      );
    expect(new Set(told(twoPrinters, onTwo))).toEqual(new Set(['printer']));
    expect(told(starting, book)).toEqual([]);
  });

  it('print with the first of them what was in one that is gone', () => {
    const { work, entries } = planned(bothOn(onTwo, { ...starting, ...people(3) }), {
      ...starting,
      ...people(3),
    });
    expect(work.workers.filter((worker) => worker === 'printer')).toHaveLength(1);
    const all = [...printsOf(entries, one), ...printsOf(entries, two)];
    expect(all.some((print) => all.some((other) => other !== print && overlap(print, other)))).toBe(false);
  });

  it('take turns at one line that powders and cures, and do not at two', () => {
    const line = (count: number): Station => ({
      ...twoPrinters,
      curer: 'line',
      ovens: Array.from({ length: count }, (_, at) => startingOven(asId(`line-${at}`))),
    });
    const atOnce = (station: Station) => {
      const { entries } = planned(bothOn(onTwo, station), station);
      return printsOf(entries, one).some((print) =>
        printsOf(entries, two).some((other) => overlap(print, other)),
      );
    };
    expect([atOnce(line(1)), atOnce(line(2))]).toEqual([false, true]);
  });

  it('share the runs of one out between them when one more is tried, and leave what is begun', () => {
    const more = withAnotherPrinter(bothOn(book, starting), starting, asId('more'));
    const printers = (open: readonly OpenRun[]) => open.map(({ laid }) => laid.film.printer as string).sort();
    expect(printers(more.open)).toEqual(['more', 'printer-1']);
    expect(planned(more.open, more.station).end).toBeLessThanOrEqual(
      planned(bothOn(book, starting), starting).end,
    );
    const begun = bothOn(book, starting).map(({ laid, station }) => openRun(book, laid.id, station, [BEGUN]));
    expect(printers(withAnotherPrinter(begun, starting, asId('more')).open)).toEqual([
      'printer-1',
      'printer-1',
    ]);
  });
});

describe('a span that was printed on another printer than its film was in', () => {
  it('is told with that one, and the rest stays where the film is', () => {
    const done = openRun(book, one, twoPrinters, [BEGUN, 'print/0']);
    const own = { ...done, on: new Map([['print/0', window.id as string]]) };
    const { entries } = planned([own], twoPrinters);
    const printers = entries
      .filter(({ job }) => job.kind === 'print')
      .map(({ takes }) => takes.flatMap(({ machine }) => (machine?.kind === 'printer' ? [machine.id] : [])));
    expect(printers[0]).toEqual([window.id]);
    expect(new Set(printers.slice(1).flat())).toEqual(new Set(['printer-1']));
  });
});

describe('presses that heat each at its own rate', () => {
  const [quick, slow] = presses(2).presses as [Press, Press];
  const unlike = (hours: number): Station => ({
    ...twoPrinters,
    presses: [
      { ...slow, warmUp: asSeconds(hours * HOUR) },
      { ...quick, warmUp: asSeconds(60) },
    ],
  });
  const heated = (entries: readonly Entry[]) =>
    entries.flatMap(({ takes, job, state }) =>
      takes.flatMap((take) => (take.worker === 'press' ? [{ ...take, job, state }] : [])),
    );

  it('are used as soon as each is hot, and not when the slowest is', () => {
    const { entries } = planned(bothOn(book, unlike(3)), unlike(3));
    const at = (unit: number) => heated(entries).filter((take) => take.unit === unit);
    expect(Math.min(...at(1).map(({ from }) => from))).toBeLessThan(10 * HOUR);
    for (const { from } of at(0)) expect(from).toBeGreaterThanOrEqual(12 * HOUR);
  });

  it('are as warm as what was done with each of them left it, the other warming up meanwhile', () => {
    const done = [BEGUN, 'powder/0', 'cure/0'];
    const station = unlike(1);
    const settings = (now: number) => {
      const open = [openRun(book, one, station, done), openRun(book, two, station)];
      const { work } = dayWork(open, { station, origin: ORIGIN, now, runOrder: [] });
      return work.problem.resources[work.workers.indexOf('press')]?.units.map(({ setting, warmed }) => ({
        setting,
        warmed,
      }));
    };
    const cure = Math.round(startingCure('press').temperature / 10);
    expect(settings(9.5 * HOUR)).toEqual([
      { setting: null, warmed: HOUR / 2 },
      { setting: cure, warmed: 0 },
    ]);
  });

  it('are as warm as what was done with the one that is said to have done it, and that one is told', () => {
    const station = unlike(1);
    const done = openRun(book, one, station, [BEGUN, 'powder/0', 'cure/0']);
    const onOther = { ...done, on: new Map([['cure/0', slow.id as string]]) };
    const settings = (own: OpenRun) => {
      const { work } = dayWork([own], { station, origin: ORIGIN, now: 9.5 * HOUR, runOrder: [] });
      return work.problem.resources[work.workers.indexOf('press')]?.units.map(({ setting }) => setting);
    };
    const cure = Math.round(startingCure('press').temperature / 10);
    expect([settings(done), settings(onOther)]).toEqual([
      [null, cure],
      [cure, null],
    ]);
    const told = (own: OpenRun) =>
      planned([own], station, 9.5 * HOUR)
        .entries.find(({ job }) => job.key === 'cure/0')
        ?.takes.flatMap(({ machine }) => machine?.id ?? []);
    expect([told(done), told(onOther)]).toEqual([[], [slow.id]]);
  });

  it('warm up anew the next morning, however long they were on the day before', () => {
    const station = unlike(1);
    const open = bothOn(book, station).map(({ laid }) => openRun(book, laid.id, station, [BEGUN]));
    const now = 16.75 * HOUR;
    const { entries } = planned(open, station, now);
    const tomorrow = heated(entries).filter(({ from, unit }) => from > 24 * HOUR && unit === 0);
    for (const { from } of tomorrow) expect(from).toBeGreaterThanOrEqual(33 * HOUR);
  });
});

describe('trays of the shop', () => {
  /** The most spans that lie powdered at once: from their powder until they are laid down for the cure. */
  const mostPowdered = (entries: readonly Entry[], load: number) => {
    const powders = entries.filter(({ job }) => job.kind === 'powder');
    const freeAt = ({ job: { run, spans } }: Entry) =>
      (entries.find(
        ({ job }) => job.kind === 'cure' && job.run.id === run.id && job.spans.includes(spans[0] ?? -1),
      )?.start ?? 0) + load;
    return Math.max(
      ...powders.map(
        ({ start }) => powders.filter((own) => own.start <= start && freeAt(own) > start).length,
      ),
    );
  };

  it.each([1, 2, 3])('%i in all are shared by all runs of the day', (trays) => {
    // The press is cold for long: film piles up meanwhile.
    const cold = presses(1, { warmUp: asSeconds(2 * HOUR) });
    const station: Station = { ...twoPrinters, ...cold, trays, allowance: 0 };
    for (const own of [book, onTwo]) {
      const { entries } = planned(bothOn(own, station), station);
      expect(new Set(entries.map(({ job }) => job.run.id)).size).toBe(2);
      expect(mostPowdered(entries, station.handling.load)).toBeLessThanOrEqual(trays);
    }
  });

  it('hold what is powdered already, of whichever run', () => {
    const cold = presses(1, { warmUp: asSeconds(2 * HOUR) });
    const station: Station = { ...twoPrinters, ...cold, trays: 3, allowance: 0 };
    const [here, there] = bothOn(onTwo, station).map(({ laid }) =>
      openRun(onTwo, laid.id, station, [BEGUN, 'powder/0']),
    );
    const { entries } = planned([here ?? expect.fail(), there ?? expect.fail()], station, 9.1 * HOUR);
    const powders = entries.filter(({ job }) => job.kind === 'powder');
    expect(powders.filter(({ state }) => state === 'done')).toHaveLength(2);
    expect(mostPowdered(entries, station.handling.load)).toBe(3);
  });
});

const side = fc.integer({ min: 90, max: 600 }).map(fromMm);
const anyPress = fc.record({ width: side, length: side, caps: fc.boolean() });
const capped = edited(onTwo, (draft) => {
  const [first] = Object.values(draft.transfer);
  if (first) first.name = 'badge, cap';
});

describe('presses and ovens that are not alike', () => {
  it('each take what they can: what lies on its platen, and caps where one is made for them', () => {
    const one_ = presses(1).presses[0] ?? expect.fail();
    fc.assert(
      fc.property(
        fc.array(anyPress, { minLength: 1, maxLength: 3 }),
        fc.array(fc.record({ width: side, length: side }), { minLength: 1, maxLength: 3 }),
        fc.constantFrom('press' as const, 'oven' as const),
        (platens, beds, curer) => {
          const own: Press[] = platens.map(({ caps, ...platen }, at) => ({
            ...one_,
            id: asId(`p${at}`),
            platen,
            caps,
          }));
          const station: Station = {
            ...twoPrinters,
            curer,
            presses: own,
            ovens: beds.map((bed, at) => ({ ...startingOven(asId(`o${at}`)), bed })),
          };
          const open = bothOn(capped, station);
          const { entries, work } = planned(open, station);
          const copies = new Map(
            open.flatMap(({ laid }) => laid.copies.map((copy) => [copy.id as string, { copy, laid }])),
          );
          const said = new Set(
            work.tooLarge.flatMap((large) => ('transfer' in large ? [large.transfer.id as string] : [])),
          );
          for (const { job, takes } of entries) {
            if (job.kind !== 'press') continue;
            const press = own[takes.find(({ worker }) => worker === 'press')?.unit ?? -1] ?? expect.fail();
            for (const id of job.copies) {
              const { copy, laid } = copies.get(id) ?? expect.fail();
              const size = { width: copy.transfer.width, length: copy.transfer.height };
              const can = (each: Press) =>
                fitsOn(size, each.platen) && (each.caps || !isOnCap(laid.view, copy));
              // What no press takes is told, and planned all the same.
              expect(can(press) || said.has(copy.transfer.id)).toBe(true);
              expect(said.has(copy.transfer.id)).toBe(!own.some(can));
            }
          }
          for (const { job, takes } of entries) {
            if (job.kind !== 'cure' || work.tooLarge.some(({ kind }) => kind === 'film' || kind === 'span'))
              continue;
            const { unit } = takes.find(({ worker }) => worker === curer) ?? expect.fail();
            const bed = curer === 'press' ? own[unit]?.platen : station.ovens[unit]?.bed;
            for (const span of job.spans) {
              const { laid } = open.find(({ laid: { id } }) => id === job.run.id) ?? expect.fail();
              const { from, to } = laid.spans?.[span] ?? expect.fail();
              const size = { width: laid.film.width, length: fromMm((to - from) / 1000) };
              expect(bed && fitsOn(size, bed)).toBe(true);
            }
          }
        },
      ),
      { numRuns: 40 },
    );
  }, 60_000);

  it('say by its name which of them takes the widest film, where that is not wide enough', () => {
    const wide = edited(book, (draft) => {
      for (const film of Object.values(draft.film)) film.width = fromMm(559);
    });
    const [small, large] = presses(2).presses as [Press, Press];
    const at = (press: Press, length: number, name: string): Press => ({
      ...press,
      name,
      platen: { width: fromMm(380), length: fromMm(length) },
    });
    const told = (station: Station) =>
      dayWork([openRun(wide, one, station)], {
        station,
        origin: ORIGIN,
        now: 0,
        runOrder: [],
      }).work.tooLarge.filter(({ kind }) => kind === 'film');
    const narrow = { ...starting, presses: [at(small, 380, ''), at(large, 508, 'The big one')] };
    expect(told(narrow)).toMatchObject([
      { width: fromMm(559), takes: fromMm(508), machine: { name: 'The big one', number: 2, of: 2 } },
    ]);
    expect(told({ ...starting, presses: [at(small, 380, ''), at(large, 610, '')] })).toEqual([]);
  });
});

describe('people', () => {
  const day = (from: string, to: string): Week => Array.from({ length: 7 }, () => [{ from, to }]);
  const withPeople = (...hours: readonly (Week | null)[]): Station => ({
    ...starting,
    people: hours.map((own, at) => ({ ...startingPerson(asId(`p${at}`)), hours: own })),
  });
  const unitsAt = (station: Station, now?: number) =>
    planned(bothOn(book, station), station, now).entries.flatMap(({ takes, job }) =>
      takes.flatMap((take) =>
        take.worker === 'hands' && !['apart', 'pack'].includes(job.kind) ? [take] : [],
      ),
    );

  it('work in their own hours, and in the breaks and nights of the shop not at all', () => {
    const takes = unitsAt(withPeople(day('10:00', '14:00'), null), 11 * HOUR);
    expect(takes.some(({ unit }) => unit === 0)).toBe(true);
    for (const { unit, from, to } of takes) {
      const at = [from % (24 * HOUR), to % (24 * HOUR)] as const;
      if (unit === 0) expect(at[0] >= 10 * HOUR && at[1] <= 14 * HOUR).toBe(true);
      expect(at[1] <= 12 * HOUR || at[0] >= 12.5 * HOUR).toBe(true);
    }
  });

  it('who have no hours at all are never there', () => {
    const takes = unitsAt(
      withPeople(
        Array.from({ length: 7 }, () => []),
        null,
      ),
    );
    expect(new Set(takes.map(({ unit }) => unit))).toEqual(new Set([1]));
  });

  const named = (station: Station): Station => ({
    ...station,
    people: station.people.map((own, at) => ({ ...own, name: ['Ana', 'Ben', ''][at] ?? '' })),
  });
  const chains: readonly (readonly [Entry['job']['kind'], Entry['job']['kind']])[] = [
    ['cut-off', 'powder'],
    ['powder', 'cure'],
    ['cure', 'apart'],
  ];
  /** How often someone else goes on with a span, of all times that one step of it follows another. */
  const changesIn = (entries: readonly Entry[]) => {
    const handsAt = (kind: Entry['job']['kind'], of: Entry) =>
      entries
        .filter(
          ({ job }) =>
            job.kind === kind && job.run.id === of.job.run.id && job.spans.includes(of.job.spans[0] ?? -1),
        )
        .flatMap(({ takes }) => takes.flatMap(({ worker, unit }) => (worker === 'hands' ? [unit] : [])));
    const steps = entries
      .filter(({ job }) => job.kind === 'print')
      .flatMap((print) =>
        chains.map(([one, next]) => [handsAt(one, print).at(-1), handsAt(next, print)[0]] as const),
      );
    return { changes: steps.filter(([a, b]) => a !== b).length, steps: steps.length };
  };

  it('are told by name at what they do ahead, and not at all where nobody has a name', () => {
    const station = withPeople(null, null, null);
    const told = (own: Station, done: readonly string[] = []) =>
      planned([openRun(book, one, own, done), openRun(book, two, own)], own).entries;
    const namesOf = (entries: readonly Entry[]) =>
      entries.flatMap(({ takes }) =>
        takes.flatMap(({ machine }) => (machine?.kind === 'person' ? [machine] : [])),
      );
    expect(namesOf(told(station))).toEqual([]);
    const entries = told(named(station), [BEGUN, 'powder/0']);
    expect(new Set(namesOf(entries).map(({ name, number }) => name || number))).toEqual(
      new Set(['Ana', 'Ben', 3]),
    );
    // Who did what is done is told by ticks, whoever was meant to.
    expect(namesOf(entries.filter(({ state }) => state === 'done'))).toEqual([]);
    for (const { takes } of entries.filter(({ state }) => state === 'ahead'))
      for (const { worker, machine } of takes) expect(worker === 'hands').toBe(machine?.kind === 'person');
  });

  it.each([
    { of: 'one printer, cured by presses', own: book, curer: 'press' },
    { of: 'one printer, cured in an oven', own: book, curer: 'oven' },
    { of: 'two printers, cured by presses', own: onTwo, curer: 'press' },
    { of: 'two printers, cured in an oven', own: onTwo, curer: 'oven' },
  ] as const)('go on with what they began, with few exceptions: $of', ({ own, curer }) => {
    const { printers } = twoPrinters;
    const station = { ...withPeople(null, null), printers, curer, ...presses(2) };
    const { changes, steps } = changesIn(planned(bothOn(own, station), station).entries);
    expect(steps).toBeGreaterThan(10);
    expect(changes).toBeLessThanOrEqual(2);
  });

  it('do all at the time it is planned for, each one thing at a time and in their own hours', () => {
    const hour = fc.integer({ min: 8, max: 14 });
    const week = fc
      .tuple(hour, fc.integer({ min: 2, max: 8 }))
      .map(([from, length]) =>
        day(
          `${String(from).padStart(2, '0')}:00`,
          `${String(Math.min(23, from + length)).padStart(2, '0')}:00`,
        ),
      );
    fc.assert(
      fc.property(
        fc.array(fc.option(week), { minLength: 1, maxLength: 2 }),
        fc.constantFrom(book, onTwo),
        (hours, own) => {
          const station: Station = {
            ...withPeople(null, ...hours),
            printers: twoPrinters.printers,
            ...presses(2),
          };
          const { work } = dayWork(bothOn(own, station), {
            station,
            origin: ORIGIN,
            now: 9 * HOUR,
            runOrder: [],
          });
          const scheduler = createScheduler(work.problem, { seed: 1, cycle: 5, earlier: null });
          scheduler.step(5);
          const schedule = scheduler.best();
          const units = withSteadyHands(work, schedule);
          expect(validateSchedule(work.problem, { ...schedule, units })).toEqual([]);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('end the day sooner where there are two of them, and begin it later where the only one comes later', () => {
    const endOf = (station: Station) => planned(bothOn(book, station), station, 8 * HOUR).end;
    expect(endOf(withPeople(null, null))).toBeLessThan(endOf(withPeople(null)));
    expect(endOf(withPeople(day('13:00', '17:00')))).toBeGreaterThan(endOf(withPeople(null)));
    const late = unitsAt(withPeople(day('13:00', '17:00')), 8 * HOUR);
    expect(Math.min(...late.map(({ from }) => from))).toBeGreaterThanOrEqual(13 * HOUR);
    expect(sum(late.map(({ to, from }) => to - from))).toBeGreaterThan(0);
  });
});
