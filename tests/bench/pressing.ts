import { demo } from '../../app/words/en/demo';
import { addDemoDay } from '../../src/demo';
import { applyEdit, setPlaces } from '../../src/editing';
import { layRun, placesOf, problemOf } from '../../src/layout';
import { asId, type Book, type Hours, runOf, type Station } from '../../src/model';
import { createPlanner } from '../../src/packing';
import { asTicked, startingStation, type Work, workOf } from '../../src/pressing';
import { type AwayTimes, awayTimes } from '../../src/pressing/calendar';
import {
  type Away,
  type Chain,
  createScheduler,
  type Lane,
  type ScheduleProblem,
  type Setup,
  type Task,
  type Use,
} from '../../src/pressing/schedule';
import { fromMm, type LocalDate, seededRandom } from '../../src/units';
import { context, NOW, smallBook } from '../editing/book';
import { people, presses } from '../pressing/stations';
import { printTable } from './table';

/** Sequences that are tried for a good schedule, and for a first one and one after a tick as in the app. */
const ITERATIONS = { good: 1000, first: 200, again: 80 };

/** The demo day on a roll cut into spans, laid out once. */
function demoBook(): Book {
  const ids = context();
  const { book: small } = smallBook();
  const { book } = applyEdit(
    { ...small, order: {}, transfer: {}, copy: {} },
    (draft) => {
      const dayFrom = (days: number) => `2026-11-${String(25 + Math.min(5, days))}` as LocalDate;
      addDemoDay(
        draft,
        { dayFrom, unit: 'mm', words: demo, typed: (length) => `${length / 1000} mm` },
        { ...ids, newId: <Kind extends string>() => asId<Kind>(`demo ${ids.newId()}`) },
      );
      for (const film of Object.values(draft.film)) if (film.kind === 'roll') film.spanMax = fromMm(480);
    },
    NOW,
  );
  const open = runOf(book, null);
  if (!open) throw new Error('no run');
  const own = problemOf(book, open.run, open.film, 'pinned');
  const planner = createPlanner(own.problem, 1);
  planner.step(3000);
  return applyEdit(
    book,
    (draft) => setPlaces(draft, open.run.id, placesOf(planner.best(), own, open.film)),
    NOW,
  ).book;
}

/** The work of the demo day with some equipment. */
export function demoWork(station: Partial<Station> = {}): Work {
  const book = demoBook();
  const open = runOf(book, null);
  const laid = open && layRun(book, open.run);
  if (!laid) throw new Error('no run');
  const own = { ...startingStation('C'), ...station };
  const work = workOf(laid, own, new Date('2026-11-25T08:00:00'));
  if (!work.ok) throw new Error(work.problem.join());
  return work.value;
}

/** A day made by code: runs of so many spans, and the equipment. */
interface MadeDay {
  readonly runs: number;
  readonly spans: number;
  readonly lots: number;
  readonly hands: number;
  readonly presses: number;
  /** When hands and machines are away, in seconds from the start. */
  readonly away: AwayTimes;
}

/**
 * Runs whose spans are printed, cut off, powdered, cured under a press and cut apart, and some lots of each pressed, then an order for
 * every other span packed; garments of two temperatures. Times are those of a desktop printer's day, scattered.
 */
function madeDay({ runs, spans, lots, hands: handCount, presses, away }: MadeDay): ScheduleProblem {
  const random = seededRandom(200);
  const between = (least: number, most: number) => least + Math.floor(random() * (most - least + 1));
  const [printer, hands, press] = [0, 1, 2];
  const tasks: Task[] = [];
  const chains: Chain[] = [];
  const lanes: Lane[] = [];
  const add = (duration: number, uses: readonly Use[], after: readonly number[], pauses = false): number => {
    tasks.push({ duration, uses, after: after.map((task) => ({ task, lag: 0 })), pauses, fixed: null });
    return tasks.length - 1;
  };
  const use = (resource: number, from: number, to: number, setting = 0): Use => ({
    resource,
    from,
    to,
    units: null,
    setting,
  });
  for (let run = 0; run < runs; run += 1) {
    let before: number[] = [];
    const first = tasks.length;
    let pressed: number[] = [];
    for (let span = 0; span < spans; span += 1) {
      const time = between(500, 700);
      const print = add(time, [use(printer, 0, time)], before);
      const cut = add(30, [use(printer, 0, 30), use(hands, 0, 30)], [print]);
      const powder = add(75, [use(hands, 0, 75)], [cut]);
      const cure = add(190, [use(press, 0, 190, 157), use(hands, 0, 20), use(hands, 170, 190)], [powder]);
      const apartTime = between(60, 120);
      const apart = add(apartTime, [use(hands, 0, apartTime)], [cure], true);
      for (let lot = 0; lot < lots; lot += 1) {
        const pressing = between(60, 140);
        const setting = span % 4 === 3 ? 132 : 157;
        pressed.push(add(pressing, [use(hands, 0, pressing), use(press, 0, pressing, setting)], [apart]));
      }
      if (span % 2 === 1) {
        const packing = between(120, 240);
        add(packing, [use(hands, 0, packing)], pressed, true);
        pressed = [];
      }
      chains.push({ tasks: [print, cut, powder], limit: 300 });
      before = [cut];
    }
    lanes.push({ resource: printer, first, last: before[0] ?? first, rank: 0 });
  }
  const units = (count: number, own: readonly Away[], setup: Setup | null = null) =>
    Array.from({ length: count }, () => ({ free: 0, setup, setting: null, warmed: 0, away: own }));
  return {
    now: 0,
    tasks,
    resources: [
      { units: units(1, away.machines) },
      { units: units(handCount, away.hands) },
      { units: units(presses, away.machines, { cold: 720, rise: 3, fall: 8 }) },
    ],
    chains,
    waits: [],
    lanes: runs > 1 ? lanes : [],
    shelves: [],
    stints: [],
    dues: [],
  };
}

const HOUR = 3600;
const always: AwayTimes = { hands: [], machines: [] };
const withBreak: AwayTimes = { hands: [{ from: 4 * HOUR, to: 4.5 * HOUR, cold: false }], machines: [] };
const weekday: Hours['week'][number] = [
  { from: '08:00', to: '12:00' },
  { from: '12:30', to: '17:00' },
];
/** A shop's week from a Monday at 8:00. */
const inHours = awayTimes(
  { week: [weekday, weekday, weekday, weekday, weekday, [], []], closed: [] },
  new Date('2026-11-23T08:00:00'),
);

const madeDays: readonly (readonly [string, MadeDay])[] = [
  [
    'one run, one press, one pair of hands',
    { runs: 1, spans: 20, lots: 5, hands: 1, presses: 1, away: always },
  ],
  [
    'three runs, two presses, two pairs of hands, a break',
    { runs: 3, spans: 11, lots: 4, hands: 2, presses: 2, away: withBreak },
  ],
  [
    'three runs, two presses, one pair of hands, a break',
    { runs: 3, spans: 11, lots: 4, hands: 1, presses: 2, away: withBreak },
  ],
  [
    'three runs, two presses, one pair of hands, over a night',
    { runs: 3, spans: 14, lots: 4, hands: 1, presses: 2, away: inHours },
  ],
];

/** What it takes: by the clock, and of the processor, which other work on the machine changes less. */
function timed<Made>(make: () => Made): { made: Made; took: string } {
  const began = performance.now();
  const before = process.cpuUsage();
  const made = make();
  const { user, system } = process.cpuUsage(before);
  return {
    made,
    took: `${(performance.now() - began).toFixed(0)} / ${((user + system) / 1000).toFixed(0)} ms`,
  };
}

/** How good and how quick schedules of days made by code are, and new ones after a tick. */
function benchMadeDays(): void {
  const rows = madeDays.map(([name, made]) => {
    const problem = madeDay(made);
    const { made: scheduler, took } = timed(() => {
      const own = createScheduler(problem, { seed: 1, cycle: ITERATIONS.first, earlier: null });
      own.step(ITERATIONS.first);
      return own;
    });
    const best = scheduler.best();
    const first = best.starts.indexOf(0);
    const end = problem.tasks[first]?.duration ?? 0;
    const ticked = {
      ...problem,
      now: end,
      lanes: [],
      shelves: [],
      stints: [],
      tasks: problem.tasks.map((task, index) =>
        index === first ? { ...task, fixed: { start: 0, end } } : task,
      ),
    };
    const again = timed(() =>
      createScheduler(ticked, { seed: 1, cycle: ITERATIONS.again, earlier: best }).step(ITERATIONS.again),
    );
    return [
      name,
      problem.tasks.length,
      `${(100 * (best.makespan / scheduler.bound.seconds - 1)).toFixed(2)}%`,
      `${best.overLimit} s`,
      took,
      again.took,
    ];
  });
  printTable(
    `Days made by code, ${ITERATIONS.first} sequences, after a tick ${ITERATIONS.again}, seed 1; by the clock / of the processor`,
    ['day', 'tasks', 'over bound', 'too wet', 'took', 're-planned in'],
    rows,
  );
}

/** How good and how quick schedules of the demo day are, with several sets of equipment. */
export function benchPressing(): void {
  const kinds: readonly (readonly [string, Partial<Station>])[] = [
    ['one press for all', {}],
    ['an oven', { curer: 'oven' }],
    ['two presses', presses(2)],
    ['two pairs of hands', people(2)],
    ['two and an oven', { ...people(2), curer: 'oven' }],
    ['a shaker line', { curer: 'line' }],
    ['cut before powder', { cutApart: 'before-powder' }],
  ];
  const rows = kinds.map(([name, station]) => {
    const work = demoWork(station);
    const { made: scheduler, took: began } = timed(() =>
      createScheduler(work.problem, { seed: 1, cycle: ITERATIONS.good, earlier: null }),
    );
    const firstEnd = scheduler.best().makespan;
    const { took } = timed(() => scheduler.step(ITERATIONS.good));
    const best = scheduler.best();
    const tick = asTicked(work, new Map([['cut-off/0', 2000]]), 2000);
    const { made: again, took: tookAgain } = timed(() => {
      const own = createScheduler(tick.problem, { seed: 1, cycle: ITERATIONS.again, earlier: best });
      own.step(ITERATIONS.again);
      return own;
    });
    const minutes = (seconds: number) => (seconds / 60).toFixed(1);
    return [
      name,
      work.jobs.length,
      minutes(firstEnd),
      minutes(best.makespan),
      minutes(scheduler.bound.seconds),
      `${(100 * (best.makespan / scheduler.bound.seconds - 1)).toFixed(2)}%`,
      `${best.overLimit} s`,
      minutes(best.late),
      began,
      took,
      `${minutes(again.best().makespan)}`,
      tookAgain,
    ];
  });
  printTable(
    `The demo day from print to bag, ${ITERATIONS.good} sequences, after a tick ${ITERATIONS.again}, seed 1, minutes; by the clock / of the processor`,
    [
      'equipment',
      'tasks',
      'by rules',
      'searched',
      'bound',
      'over bound',
      'too wet',
      'late',
      'rules took',
      'search took',
      're-planned',
      'took',
    ],
    rows,
  );
  benchMadeDays();
}
