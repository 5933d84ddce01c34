import type { LaidRun } from '../layout';
import { runStates, type Station } from '../model';
import { byHand } from './builder';
import { type AwayTimes, awayTimes, awayToo, longestOpen } from './calendar';
import { type Crew, crewsBeside, printerAmong, printerFor, setupsOfPresses } from './crews';
import type { Job, JobKind, Work } from './jobs';
import { BEGUN } from './keys';
import {
  type Available,
  type Away,
  allAway,
  type Chain,
  type Due,
  type Lane,
  type Resource,
  type Setup,
  type ShelfLoad,
  type Stint,
  type Task,
  type Use,
  type Wait,
} from './schedule';
import { asWarm, fixTicked, printedBefore } from './ticks';
import { type WorkProblem, workOf } from './work';

/** A run that is not closed, what it is made with, and when each of its subjects was ticked. */
export interface OpenRun {
  readonly laid: LaidRun;
  readonly station: Station;
  readonly done: ReadonlyMap<string, string>;
  /** The machine that each of them was done on, where that was said. */
  readonly on: ReadonlyMap<string, string>;
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

/** The runs that printers are at: of those of each that are begun and not printed to the end, the one that was begun last. */
function runsAtPrinters(
  runs: readonly { own: OpenRun; work: Work; done: ReadonlyMap<string, number> }[],
): ReadonlySet<OpenRun> {
  const printing = runs
    .filter(({ own: { done }, work, done: times }) => {
      const left = work.jobs.some(({ key, kind }) => kind === 'print' && !times.has(key));
      return done.has(BEGUN) && left;
    })
    .sort((a, b) => (a.done.get(BEGUN) ?? 0) - (b.done.get(BEGUN) ?? 0));
  return new Set(new Map(printing.map(({ own, work }) => [printerOfWork(work), own])).values());
}

/** The printer that a run is printed on. */
const printerOfWork = ({ machines, workers }: Work): string | undefined =>
  machines[workers.indexOf('printer')]?.[0]?.id;

/** What does the work of the day: each printer by itself, since film does not move from one to another, then all else. */
function crewsOf(station: Station, printers: ReadonlySet<string>, works: readonly Work[]): Crew[] {
  const own = crewsBeside(station);
  const known = new Set(own.map(({ worker }) => worker));
  // A run of another device may need what is not here.
  const others = works.flatMap(({ workers, machines }) =>
    workers.flatMap((worker, at): Crew[] => {
      if (worker === 'printer' || known.has(worker)) return [];
      known.add(worker);
      return [{ worker, machines: machines[at] ?? [] }];
    }),
  );
  return [
    ...[...printers].map((id): Crew => ({ worker: 'printer', machines: [printerAmong(station, id)] })),
    ...own,
    ...others,
  ];
}

/** When each of those who work here is away. */
const awayOfPeople = ({ people, hours }: Station, away: AwayTimes, origin: Date): (readonly Away[])[] =>
  people.map((person) =>
    person.hours === null ? away.hands : awayToo(away.hands, person.hours, hours.closed, origin),
  );

/** When each of those who do the work of the day is there. */
function resourcesOf(
  station: Station,
  crews: readonly Crew[],
  away: AwayTimes,
  people: readonly (readonly Away[])[],
): Resource[] {
  const unit = (own: Available['away'], setup: Setup | null = null): Available => ({
    free: 0,
    setup,
    setting: null,
    warmed: 0,
    away: own,
  });
  const presses = setupsOfPresses(station);
  return crews.map(({ worker, machines }): Resource => {
    if (worker === 'hands') return { units: people.map((own) => unit(own)) };
    const printer = station.printers.find(({ id }) => id === machines[0]?.id) ?? station.printers[0];
    const setupOf = (at: number): Setup | null => {
      if (worker === 'press') return presses[at] ?? null;
      return worker === 'printer' ? { cold: printer.warmUp, rise: 0, fall: 0 } : null;
    };
    return { units: machines.map((_, at) => unit(away.machines, setupOf(at))) };
  });
}

/** What of the day does the work that is put down for a run's own equipment: its resource, and each of its units. */
interface Place {
  readonly resource: number;
  readonly unitOf: readonly number[];
}

/** Where each resource of a run's work is among those of the day. What the shop does not have by name may be any of its kind. */
const placesIn = (crews: readonly Crew[], { workers, machines }: Work, printer: string): Place[] =>
  workers.map((worker, own) => {
    const resource = crews.findIndex(
      (crew) => crew.worker === worker && (worker !== 'printer' || crew.machines[0]?.id === printer),
    );
    const ids = crews[resource]?.machines.map(({ id }) => id) ?? [];
    return { resource, unitOf: (machines[own] ?? []).map(({ id }) => ids.indexOf(id)) };
  });

function inPlace(use: Use, places: readonly Place[]): Use {
  const place = places[use.resource];
  if (!place) return use;
  const units = use.units?.flatMap((unit) => {
    const found = place.unitOf[unit] ?? -1;
    return found < 0 ? [] : [found];
  });
  return { ...use, resource: place.resource, units: units && units.length > 0 ? units : null };
}

/** What is done, by the machine that is said to have done it. */
function whereDone(task: Task, machine: string | undefined, crews: readonly Crew[]): Task {
  const resource = crews.findIndex(({ machines }) => machines.some(({ id }) => id === machine));
  const crew = crews[resource];
  if (!task.fixed || !crew) return task;
  const units = [crew.machines.findIndex(({ id }) => id === machine)];
  return {
    ...task,
    uses: task.uses.map((use) =>
      crews[use.resource]?.worker === crew.worker ? { ...use, resource, units } : use,
    ),
  };
}

/** The printer is set up once, not with each run: what is left of making it ready is the check. What no opening is long enough for pauses. */
function inTheDay(
  { jobs, workers }: Work,
  tasks: readonly Task[],
  { station, laid }: OpenRun,
  opening: number,
): Task[] {
  const check = byHand(station, printerFor(laid, station).check);
  const printer = workers.indexOf('printer');
  return tasks.map((task, index) => {
    const uses = task.uses.map((use) => (use.resource === printer ? { ...use, setting: 1 } : use));
    if (jobs[index]?.kind === 'ready' && !task.fixed)
      return { ...task, duration: check, uses: uses.map((use) => ({ ...use, from: 0, to: check })) };
    const isLong = task.uses.length === 1 && task.duration > opening;
    return { ...task, uses, pauses: task.pauses || isLong };
  });
}

/** The trays of the shop, which all runs share; a run of another device may need more at once than there are here. */
const traysFor = ({ trays }: Station, powdered: readonly ShelfLoad[]): number =>
  Math.max(trays, ...powdered.map(({ fills }) => fills.length));

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
    const found = workOf(laid, own.station, origin);
    if (found.ok) return [{ own, work: found.value, done: doneBy(own, found.value, origin) }];
    without.push({ run: { id: laid.id, name: laid.name }, problems: found.problem });
    return [];
  });
  const printing = runsAtPrinters(made);
  const printerIn = (work: Work) => printerAmong(station, printerOfWork(work) ?? '').id;
  const works = made.map(({ work }) => work);
  const printedOn = open.flatMap(({ on }) =>
    [...on.values()].filter((machine) => station.printers.some(({ id }) => id === machine)),
  );
  const crews = crewsOf(station, new Set([...works.map(printerIn), ...printedOn]), works);
  const opening = longestOpen(station.hours);
  const away = awayTimes(station.hours, origin);
  const people = awayOfPeople(station, away, origin);
  const alone = allAway(people);
  const tasks: Task[] = [];
  const jobs: Job[] = [];
  const chains: Chain[] = [];
  const waits: Wait[] = [];
  const lanes: Lane[] = [];
  const powdered: ShelfLoad[] = [];
  const stints: Stint[] = [];
  const dues: Due[] = [];
  for (const { own, work, done } of made) {
    const base = tasks.length;
    const told = isBegun(own) ? fixTicked(work, done, now, printing.has(own), alone) : work.problem.tasks;
    const places = placesIn(crews, work, printerIn(work));
    for (const [at, task] of inTheDay(work, told, own, opening).entries()) {
      const here = {
        ...task,
        uses: task.uses.map((use) => inPlace(use, places)),
        after: task.after.map((before) => ({ ...before, task: before.task + base })),
      };
      tasks.push(whereDone(here, own.on.get(work.jobs[at]?.key ?? ''), crews));
    }
    jobs.push(...work.jobs);
    chains.push(
      ...work.problem.chains.map((chain) => ({ ...chain, tasks: chain.tasks.map((task) => task + base) })),
    );
    waits.push(
      ...work.problem.waits.map((wait) => ({ ...wait, from: wait.from + base, to: wait.to + base })),
    );
    powdered.push(
      ...work.problem.shelves.flatMap(({ loads }) =>
        loads.map((load) => ({
          ...load,
          fills: load.fills.map((task) => task + base),
          clearedBy: load.clearedBy + base,
        })),
      ),
    );
    stints.push(
      ...work.problem.stints.map((stint) => ({
        first: stint.first + base,
        tasks: stint.tasks.map((task) => task + base),
      })),
    );
    dues.push(...work.problem.dues.map((due) => ({ ...due, task: due.task + base })));
    const left = printingOf(work, told);
    const [first] = left;
    const last = left.at(-1);
    const wished = runOrder.indexOf(own.laid.id);
    const rank = printing.has(own) ? 0 : wished < 0 ? ANY_RANK : wished + 1;
    if (first !== undefined && last !== undefined)
      lanes.push({
        resource: places[work.workers.indexOf('printer')]?.resource ?? 0,
        first: first + base,
        last: last + base,
        rank,
      });
  }
  const problem = {
    now,
    tasks,
    resources: resourcesOf(station, crews, away, people),
    chains,
    waits,
    lanes,
    shelves: [{ places: traysFor(station, powdered), loads: powdered }],
    stints,
    dues,
  };
  return {
    work: {
      problem: asWarm(problem, begunSince(made, now)),
      jobs,
      workers: crews.map(({ worker }) => worker),
      machines: crews.map(({ machines }) => machines),
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
