import type { LaidRun } from '../layout';
import { runStates, type Station } from '../model';
import { byHand } from './builder';
import { type AwayTimes, awayTimes, longestOpen } from './calendar';
import type { Job, JobKind, Work, Worker } from './jobs';
import { BEGUN } from './keys';
import type { Available, Chain, Due, Lane, Resource, Task, Wait } from './schedule';
import { asWarm, fixTicked, printedBefore } from './ticks';
import { type WorkProblem, workOf } from './work';

/** A run that is not closed, what it is made with, and when each of its subjects was ticked. */
export interface OpenRun {
  readonly laid: LaidRun;
  readonly station: Station;
  readonly done: ReadonlyMap<string, string>;
}

/** What a day is planned by. */
export interface DayTerms {
  /** What there is in the shop, and when it is open. */
  readonly station: Station;
  /** Midnight at which the day begins; its seconds are counted from it. */
  readonly origin: Date;
  /** Seconds from the origin. */
  readonly now: number;
  /** Runs that shall come first, in their order. */
  readonly runOrder: readonly string[];
}

/** All that is still to be done in the shop. */
export interface DayWork {
  readonly work: Work;
  /** Each run that is planned, as it is by itself. */
  readonly runs: readonly { readonly run: Job['run']; readonly work: Work }[];
  /** Runs that cannot be planned, and why. */
  readonly without: readonly { readonly run: Job['run']; readonly problems: readonly WorkProblem[] }[];
}

/** What is done when a run has come to a state, told by hand and not by ticks. */
const doneIn: Partial<Record<(typeof runStates)[number], readonly JobKind[]>> = {
  printed: ['print'],
  cured: ['cure', 'line'],
  pressed: ['apart', 'press', 'again'],
};

const secondsFrom = (origin: Date, instant: string): number =>
  Math.round((Date.parse(instant) - origin.getTime()) / 1000);

/** When what is done of a run was done, by its key, in seconds from the origin: before the day is at its start. */
function doneBy({ laid, done }: OpenRun, work: Work, origin: Date): Map<string, number> {
  const found = new Map(printedBefore(work, laid));
  const reached = runStates.indexOf(laid.state);
  for (const { state, at } of laid.view.run.history) {
    if (runStates.indexOf(state) > reached) continue;
    for (const { key, kind } of work.jobs) {
      if (doneIn[state]?.includes(kind)) found.set(key, Math.max(0, secondsFrom(origin, at)));
    }
  }
  for (const [subject, at] of done) found.set(subject, Math.max(0, secondsFrom(origin, at)));
  return found;
}

/** Whether hands are at work on a run: it is begun, or a part of it is done. */
const isBegun = ({ laid, done }: OpenRun): boolean =>
  done.has(BEGUN) || laid.printedTo > 0 || runStates.indexOf(laid.state) > runStates.indexOf('locked');

const atPrinter: readonly JobKind[] = ['ready', 'print', 'cut-off'];

/** The tasks of a run that hold the printer and are still ahead. */
const printingOf = ({ jobs }: Work, tasks: readonly Task[]): number[] =>
  jobs.flatMap(({ kind }, index) => (atPrinter.includes(kind) && !tasks[index]?.fixed ? [index] : []));

/** The run that the printer is at: of those that are begun and not printed to the end, the one that was begun last. */
function runAtPrinter(runs: readonly { own: OpenRun; work: Work; done: ReadonlyMap<string, number> }[]) {
  return runs
    .filter(({ own: { done }, work, done: times }) => {
      const left = work.jobs.some(({ key, kind }) => kind === 'print' && !times.has(key));
      return done.has(BEGUN) && left;
    })
    .sort((a, b) => (a.done.get(BEGUN) ?? 0) - (b.done.get(BEGUN) ?? 0))
    .at(-1)?.own;
}

/** Who does the work of the day, and when each is there. */
function resourcesOf(station: Station, workers: readonly Worker[], away: AwayTimes): Resource[] {
  const { hands, press, printer } = station;
  const units = (count: number, own: Available['away']) =>
    Array.from({ length: count }, () => ({ free: 0, setting: null, away: own }));
  const of: Readonly<Record<Worker, Resource>> = {
    printer: { units: units(1, away.machines), setup: { cold: printer.warmUp, rise: 0, fall: 0 } },
    hands: { units: units(hands, away.hands), setup: null },
    press: {
      units: units(Math.max(1, press.count), away.machines),
      setup: { cold: press.warmUp, rise: press.rise, fall: press.fall },
    },
    oven: { units: units(1, away.machines), setup: null },
  };
  return workers.map((worker) => of[worker]);
}

/** The printer is set up once, not with each run: what is left of making it ready is the check. What no opening is long enough for pauses. */
function inTheDay(
  { jobs, workers }: Work,
  tasks: readonly Task[],
  station: Station,
  opening: number,
): Task[] {
  const check = byHand(station, station.printer.check);
  const printer = workers.indexOf('printer');
  return tasks.map((task, index) => {
    const uses = task.uses.map((use) => (use.resource === printer ? { ...use, setting: 1 } : use));
    if (jobs[index]?.kind === 'ready' && !task.fixed)
      return { ...task, duration: check, uses: uses.map((use) => ({ ...use, from: 0, to: check })) };
    const isLong = task.uses.length === 1 && task.duration > opening;
    return { ...task, uses, pauses: task.pauses || isLong };
  });
}

const known = new WeakMap<LaidRun, { station: Station; origin: number; found: ReturnType<typeof workOf> }>();

/** The work of a run by itself, found once a laid run, equipment and day. */
function workKnown({ laid, station }: OpenRun, origin: Date): ReturnType<typeof workOf> {
  const last = known.get(laid);
  if (last && last.station === station && last.origin === origin.getTime()) return last.found;
  const found = workOf(laid, station, origin);
  known.set(laid, { station, origin: origin.getTime(), found });
  return found;
}

const ALL_WORKERS: readonly Worker[] = ['printer', 'hands', 'press', 'oven'];
/** Behind those at the printer and those that shall come first. */
const ANY_RANK = 1_000_000;

/**
 * The work of all open runs in one: they share machines and hands, and the hours of the shop. What is ticked is done, the run at the
 * printer goes on by itself, and all else begins from now on.
 */
export function dayWork(open: readonly OpenRun[], { station, origin, now, runOrder }: DayTerms): DayWork {
  const without: { run: Job['run']; problems: readonly WorkProblem[] }[] = [];
  const made = open.flatMap((own) => {
    const { laid } = own;
    const found = workKnown(own, origin);
    if (found.ok) return [{ own, work: found.value, done: doneBy(own, found.value, origin) }];
    without.push({ run: { id: laid.id, name: laid.name }, problems: found.problem });
    return [];
  });
  const printing = runAtPrinter(made);
  const used = new Set(made.flatMap(({ work }) => work.workers));
  const workers = ALL_WORKERS.filter((worker) => used.has(worker));
  const printer = workers.indexOf('printer');
  const opening = longestOpen(station.hours);
  const away = awayTimes(station.hours, origin);
  const tasks: Task[] = [];
  const jobs: Job[] = [];
  const chains: Chain[] = [];
  const waits: Wait[] = [];
  const lanes: Lane[] = [];
  const dues: Due[] = [];
  for (const { own, work, done } of made) {
    const base = tasks.length;
    const told = isBegun(own) ? fixTicked(work, done, now, own === printing, away.hands) : work.problem.tasks;
    const resource = (index: number) => workers.indexOf(work.workers[index] ?? 'hands');
    for (const task of inTheDay(work, told, station, opening)) {
      tasks.push({
        ...task,
        uses: task.uses.map((use) => ({ ...use, resource: resource(use.resource) })),
        after: task.after.map((before) => ({ ...before, task: before.task + base })),
      });
    }
    jobs.push(...work.jobs);
    chains.push(
      ...work.problem.chains.map((chain) => ({ ...chain, tasks: chain.tasks.map((task) => task + base) })),
    );
    waits.push(
      ...work.problem.waits.map((wait) => ({ ...wait, from: wait.from + base, to: wait.to + base })),
    );
    dues.push(...work.problem.dues.map((due) => ({ ...due, task: due.task + base })));
    const left = printingOf(work, told);
    const [first] = left;
    const last = left.at(-1);
    const wished = runOrder.indexOf(own.laid.id);
    const rank = own === printing ? 0 : wished < 0 ? ANY_RANK : wished + 1;
    if (first !== undefined && last !== undefined)
      lanes.push({ resource: printer, first: first + base, last: last + base, rank });
  }
  const problem = {
    now,
    tasks,
    resources: resourcesOf(station, workers, away),
    chains,
    waits,
    lanes,
    dues,
  };
  return {
    work: {
      problem: asWarm(problem, begunSince(made, now)),
      jobs,
      workers,
      spans: [],
      tooLarge: made.flatMap(({ work }) => work.tooLarge),
    },
    runs: made.map(({ own: { laid }, work }) => ({ run: { id: laid.id, name: laid.name }, work })),
    without,
  };
}

/** Seconds since hands began today; what was switched on then warms up meanwhile. */
function begunSince(made: readonly { done: ReadonlyMap<string, number> }[], now: number): number {
  const begun = made.flatMap(({ done }) => {
    const at = done.get(BEGUN);
    return at !== undefined && at > 0 ? [at] : [];
  });
  return begun.length === 0 ? 0 : Math.max(0, now - Math.min(...begun));
}
