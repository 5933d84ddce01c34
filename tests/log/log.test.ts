import { describe, expect, it } from 'vitest';
import { addDemoWeeks } from '../../src/demo';
import { lockRun, setPlaces } from '../../src/editing';
import {
  filmByWeek,
  logRows,
  median,
  planAndFact,
  spoiledByHumidity,
  spoiledByLot,
  spoiledByReason,
  wasteTogether,
} from '../../src/log';
import { plausibleTime } from '../../src/log/proposal';
import { tickedTime } from '../../src/log/work-time';
import type { Book, Closing, Id, Instant } from '../../src/model';
import type { Work } from '../../src/pressing';
import { leftOfFilm, sumsOf } from '../../src/stock';
import { asSeconds, fromMm, type LocalDate, UPRIGHT } from '../../src/units';
import { closeIt, edited, freshIds, NOW, smallBook } from '../editing/book';

const { book: empty } = smallBook();
const run = Object.keys(empty.run)[0] as Id<'run'>;
const pressed = edited(empty, (draft) => {
  const copies = Object.values(draft.copy).slice(0, 3);
  setPlaces(
    draft,
    run,
    copies.map(({ id }, at) => [
      id,
      { x: fromMm(5), y: fromMm(10 + 90 * at), angle: UPRIGHT, pinned: false },
    ]),
  );
  lockRun(draft, run, freshIds());
  const record = draft.run[run];
  if (record && record.state !== 'draft') record.state = 'pressed';
});
const template = closeIt(pressed, run, freshIds()).closing[run] as Closing;

/** A closed run of 3 copies of 80 cm2 on 330 x 280 mm, but for what is told. */
const closed = (id: string, day: string, fields: Partial<Closing> = {}): Closing => ({
  ...template,
  id: id as Closing['id'],
  day: day as LocalDate,
  at: `${day}T15:00:00.000Z` as Instant,
  ...fields,
});
const rowsOf = (...closings: Closing[]) =>
  logRows(Object.fromEntries(closings.map((each) => [each.id, each])));
const withFilm = (mm: number): Partial<Closing> => ({ actual: { ...template.actual, film: fromMm(mm) } });

describe('the log', () => {
  it('is told the latest first, with the waste of what was used and of what was planned', () => {
    const rows = rowsOf(closed('a', '2026-11-02'), closed('b', '2026-11-09', withFilm(560)));
    expect(rows.map(({ closing }) => closing.id)).toEqual(['b', 'a']);
    expect(rows[1]?.waste).toBeCloseTo(1 - 24_000 / (330 * 280), 9);
    expect(rows[0]?.waste).toBeCloseTo(1 - 24_000 / (330 * 560), 9);
    expect(rows[0]?.plannedWaste).toBeCloseTo(1 - 24_000 / (330 * 280), 9);
    // Together it is the waste of all their film, not the mean of two shares.
    expect(wasteTogether(rows)).toBeCloseTo(1 - 48_000 / (330 * 840), 9);
  });

  it('has no waste where there was no film', () => {
    expect(rowsOf(closed('a', '2026-11-02', withFilm(0)))[0]?.waste).toBe(0);
    expect(wasteTogether([])).toBe(0);
  });

  // ISO 8601: weeks begin on Monday. 2026-11-01 is a Sunday, 2026-11-02 a Monday.
  it('sums film by weeks from Monday on, weeks without a run too', () => {
    const rows = rowsOf(
      closed('a', '2026-11-01', withFilm(100)),
      closed('b', '2026-11-02', withFilm(200)),
      closed('c', '2026-11-08', withFilm(300)),
      closed('d', '2026-11-16', withFilm(400)),
    );
    expect(filmByWeek(rows)).toEqual([
      { monday: '2026-10-26', film: 100_000, runs: 1 },
      { monday: '2026-11-02', film: 500_000, runs: 2 },
      { monday: '2026-11-09', film: 0, runs: 0 },
      { monday: '2026-11-16', film: 400_000, runs: 1 },
    ]);
    expect(filmByWeek([])).toEqual([]);
  });

  it('counts spoiled copies by stage and reason, however it is written', () => {
    const spoiled = (reason: string, copies: number, stage: 'press' | 'cure' = 'press') => ({
      spoiled: [{ stage, reason, copies, garments: 0 }],
    });
    const rows = rowsOf(
      closed('a', '2026-11-01', spoiled('crooked', 1)),
      closed('b', '2026-11-02', spoiled(' Crooked', 2)),
      closed('c', '2026-11-03', spoiled('grainy', 2, 'cure')),
    );
    expect(spoiledByReason(rows)).toMatchObject([
      { copies: 3, runs: 2, stage: 'press' },
      { reason: 'grainy', copies: 2, runs: 1, stage: 'cure' },
    ]);
  });

  it('compares only what was planned and measured', () => {
    const unmeasured = { actual: { ...template.actual, white: null } };
    const rows = rowsOf(closed('a', '2026-11-01'), closed('b', '2026-11-02', unmeasured));
    expect(planAndFact(rows, 'white').map(({ closing }) => closing.id)).toEqual(['a']);
    expect(planAndFact(rows, 'film')).toHaveLength(2);
    expect(planAndFact(rows, 'hands')).toEqual([]);
  });

  it('tells spoilage beside humidity and lots', () => {
    const spoiled = [{ stage: 'cure' as const, reason: 'x', copies: 1, garments: 0 }];
    const lots = { film: 'F', white: 'W', colour: '', powder: '' };
    const rows = rowsOf(
      closed('a', '2026-11-01', { air: { temperature: null, humidity: 0.7 }, spoiled, lots }),
      closed('b', '2026-11-02', { lots }),
    );
    expect(spoiledByHumidity(rows)).toMatchObject([{ humidity: 0.7, share: 1 / 3 }]);
    expect(spoiledByLot(rows)).toEqual([
      { kind: 'film', lot: 'F', runs: 2, copies: 6, spoiled: 1 },
      { kind: 'white', lot: 'W', runs: 2, copies: 6, spoiled: 1 },
    ]);
  });

  it.each([
    [[], 0],
    [[3], 3],
    [[5, 1, 3], 3],
    [[4, 1, 3, 2], 2.5],
  ] as const)('has the middle of %j: %d', (values, middle) => {
    expect(median(values)).toBe(middle);
  });
});

describe('time by ticks', () => {
  const at = (minute: number) => new Date(Date.UTC(2026, 10, 25, 9, minute)).toISOString();
  const task = (...resources: number[]) => ({
    duration: 60,
    uses: resources.map((resource) => ({ resource, from: 0, to: 60, setting: 0 })),
  });
  const job = (key: string, kind: Work['jobs'][number]['kind']) => ({ key, kind });
  const work = {
    jobs: [
      job('ready', 'ready'),
      job('print/0', 'print'),
      job('powder/0', 'powder'),
      job('cure/0', 'cure'),
      job('press/a', 'press'),
    ],
    problem: { tasks: [task(0), task(0), task(1), task(2), task(1, 2)] },
    workers: ['printer', 'hands', 'press'],
  } as unknown as Work;

  it('is from tick to tick for hands and press, and to the last span for the printer', () => {
    const done = new Map([
      ['begun', at(0)],
      ['print/0', at(20)],
      ['powder/0', at(24)],
      ['cure/0', at(28)],
      ['press/a', at(40)],
    ]);
    expect(tickedTime(work, done, 1)).toEqual({
      printer: asSeconds(20 * 60),
      hands: asSeconds(40 * 60),
      press: asSeconds((4 + 12) * 60),
      oven: 0,
    });
    // Of two pairs of hands, ticks tell no more than what hour it is.
    expect(tickedTime(work, done, 2).hands).toBeNull();
  });

  it('is not known where all was ticked at once, or long after', () => {
    const planned = { printer: 7200, hands: 3000, press: 600, oven: 0 };
    const times = (printer: number | null, hands: number | null, press: number | null) =>
      ({ printer, hands, press, oven: 0 }) as ReturnType<typeof tickedTime>;
    const held = (told: ReturnType<typeof tickedTime>) =>
      plausibleTime(told, planned as Parameters<typeof plausibleTime>[1]);
    expect(held(times(6, 6, 6))).toEqual(times(null, null, null));
    expect(held(times(2400, 9000, 599))).toEqual(times(2400, 9000, 599));
    expect(held(times(2399, 9001, null))).toEqual(times(null, null, null));
  });

  it('is not known without ticks', () => {
    expect(tickedTime(work, new Map(), 1)).toEqual({ printer: null, hands: null, press: null, oven: 0 });
    expect(tickedTime(work, new Map([['begun', at(0)]]), 1)).toMatchObject({ printer: null, hands: null });
  });
});

describe('the demo weeks', () => {
  const same = <Key extends string>() =>
    new Proxy({}, { get: (_, name) => String(name) }) as Record<Key, string>;
  const words = {
    ...same<'colour' | 'white' | 'powder'>(),
    usedRoll: { mm: 'used', in: 'used' },
    order: { white: '', powder: '' },
    run: (number: number) => `Run ${number}`,
    tee: { style: 'T-shirt', colour: 'navy' },
    reasons: same(),
  } as Parameters<typeof addDemoWeeks>[1]['words'];
  const dayFrom = (days: number) =>
    new Date(Date.parse(NOW) + days * 86_400_000).toISOString().slice(0, 10) as LocalDate;
  const demo: Book = edited(empty, (draft) => addDemoWeeks(draft, { words, dayFrom }, freshIds()));

  it('have a log worth looking at and a ledger that sums to what there is', () => {
    expect(Object.keys(demo.closing).length).toBeGreaterThan(20);
    const sums = sumsOf(demo.entry);
    for (const film of Object.values(demo.film)) expect(sums.get(film.id)).toBe(leftOfFilm(film));
    for (const item of Object.values(demo.item)) expect(sums.get(item.id) ?? 0).toBeGreaterThan(0);
    expect(spoiledByReason(logRows(demo.closing)).length).toBeGreaterThan(2);
  });
});
