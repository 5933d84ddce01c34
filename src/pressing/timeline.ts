import { sum } from '../units';
import type { Job, JobKind, Machine, Work, Worker } from './jobs';
import { withSteadyHands } from './people';
import type { Schedule, ScheduleBound } from './schedule';

/** A job with its times, in seconds from the start. */
export interface Entry {
  readonly job: Job;
  readonly task: number;
  readonly start: number;
  readonly end: number;
  readonly state: 'done' | 'begun' | 'ahead';
  /** What it takes, and which of several. */
  readonly takes: readonly {
    readonly worker: Worker;
    readonly unit: number;
    /** Which of several it is; `null` where there is no other, and for people of whom none has a name. */
    readonly machine: Machine | null;
    readonly from: number;
    readonly to: number;
  }[];
  /** In whole degrees Celsius; `null` where nothing is heated for it. */
  readonly degrees: number | null;
}

/** When an order is packed, with its copies of all runs. */
interface OrderTime {
  readonly order: NonNullable<Job['order']>;
  /** Its runs, the one that is packed last at the end. */
  readonly runs: readonly Job['run'][];
  readonly end: number;
  readonly due: number | null;
  /** Seconds after it is due; 0 if it is in time. */
  readonly late: number;
}

/** When a run is begun and done. */
interface RunTime {
  readonly run: Job['run'];
  readonly start: number;
  readonly end: number;
  /** When its first film is printed; `null` if all of it is. */
  readonly print: number | null;
}

/** What holds the day up: the longest way of tasks, or what has the most to do. */
export type Bottleneck =
  | { readonly kind: 'path'; readonly through: readonly JobKind[] }
  | { readonly kind: 'trays' }
  | {
      readonly kind: 'worker';
      readonly worker: Worker;
      readonly machine: Machine | null;
      readonly busy: number;
    };

/** The schedule in the bench's own terms. */
export interface Timeline {
  readonly entries: readonly Entry[];
  /** By the time at which they are done. */
  readonly orders: readonly OrderTime[];
  /** In the order in which they are printed. */
  readonly runs: readonly RunTime[];
  readonly end: number;
  /** No schedule ends sooner. */
  readonly least: number;
  readonly bottleneck: Bottleneck;
  /** Seconds by which wet print, and powdered film, wait longer than they should, in all. */
  readonly overWet: number;
  readonly overPowdered: number;
  /** When film is powdered that lies wet while the shop is closed, the first of it; `null` where none does. */
  readonly wetOverClosing: number | null;
  /** How often a press is brought to another temperature. */
  readonly changes: number;
}

/** One of some machines, where it must be told which one it is; people are told once any of them has a name. */
const toldOf = (machines: readonly Machine[] | undefined, at: number): Machine | null => {
  const machine = machines?.[at];
  if (!machine || machine.of < 2) return null;
  const isTold = machine.kind !== 'person' || machines.some(({ name }) => name !== '');
  return isTold ? machine : null;
};

/** Tells a schedule in the terms of the work it is of. */
export function timelineOf(work: Work, schedule: Schedule, bound: ScheduleBound): Timeline {
  const { problem, jobs, workers, machines } = work;
  const { tasks, now, dues } = problem;
  const taken = withSteadyHands(work, schedule);
  const entries = jobs
    .map((job, task): Entry => {
      const start = schedule.starts[task] ?? 0;
      const end = schedule.ends[task] ?? 0;
      const own = tasks[task];
      const heated =
        own?.uses.find(({ resource, setting }) => workers[resource] === 'press' && setting > 0)?.setting ??
        null;
      const state = own?.fixed ? (end <= now ? 'done' : 'begun') : 'ahead';
      return {
        job,
        task,
        start,
        end,
        state,
        takes: (own?.uses ?? []).map(({ resource, from, to, units }, use) => {
          const unit = taken[task]?.[use] ?? 0;
          const worker = workers[resource] ?? 'hands';
          // Who did what is done, and on which of several machines, its tick tells.
          const isKnown = worker !== 'hands' && (machines[resource]?.length === 1 || units?.length === 1);
          return {
            worker,
            unit,
            machine: state === 'done' && !isKnown ? null : toldOf(machines[resource], unit),
            from: start + from,
            to: Math.min(end, start + to),
          };
        }),
        degrees: heated,
      };
    })
    .sort((a, b) => a.start - b.start || a.task - b.task);
  const { by } = bound;
  const worker = by.kind === 'resource' ? workers[by.resource] : undefined;
  // Printers stand for themselves, all else for all of its kind.
  const busy = by.kind === 'resource' ? machines[by.resource] : undefined;
  const machine = busy?.length === 1 ? toldOf(busy, 0) : null;
  const busyOf = (held: Worker) =>
    sum(
      entries.flatMap(({ takes }) =>
        takes.flatMap((take) =>
          take.worker === held && (machine === null || take.machine?.id === machine.id)
            ? [take.to - take.from]
            : [],
        ),
      ),
    );
  const bottleneck: Bottleneck =
    by.kind === 'resource' && worker
      ? { kind: 'worker', worker, machine, busy: busyOf(worker) }
      : by.kind === 'shelf'
        ? { kind: 'trays' }
        : {
            kind: 'path',
            through: by.kind === 'path' ? by.tasks.flatMap((task) => jobs[task]?.kind ?? []) : [],
          };
  return {
    entries,
    orders: orderTimes(entries, new Map(dues.flatMap(({ task, at }) => (at === null ? [] : [[task, at]])))),
    runs: runTimes(entries),
    end: schedule.makespan,
    least: bound.seconds,
    bottleneck,
    ...overOf(work, schedule),
    changes: changesOf(entries),
  };
}

/** By how much film waits too long: wet where it waits for its powder, powdered where it waits for its cure; and whether it does wet over closing time. */
function overOf(
  { jobs, problem: { tasks, chains, waits, resources } }: Work,
  { starts, ends }: Schedule,
): Pick<Timeline, 'overWet' | 'overPowdered' | 'wetOverClosing'> {
  const all = [
    ...chains.map((chain) => ({
      from: chain.tasks[0] ?? 0,
      to: chain.tasks.at(-1) ?? 0,
      limit: chain.limit,
    })),
    ...waits,
  ];
  const over = (kind: JobKind) =>
    sum(
      all.map(({ from, to, limit }) =>
        jobs[to]?.kind !== kind || tasks[to]?.fixed
          ? 0
          : Math.max(0, (starts[to] ?? 0) - (ends[from] ?? 0) - limit),
      ),
    );
  const overClosing = all.flatMap(({ from, to }) => {
    const [printed, powdered] = [ends[from] ?? 0, starts[to] ?? 0];
    const isWet = jobs[to]?.kind === 'powder' && !tasks[to]?.fixed;
    // The printer is switched off when the shop closes.
    const [printer] = resources[tasks[from]?.uses[0]?.resource ?? -1]?.units ?? [];
    const isClosed = printer?.away.some((gap) => gap.to > printed && gap.to <= powdered) ?? false;
    return isWet && isClosed ? [powdered] : [];
  });
  return {
    overWet: over('powder'),
    overPowdered: over('cure'),
    wetOverClosing: overClosing.length > 0 ? Math.min(...overClosing) : null,
  };
}

/** @param due when tasks are due */
function orderTimes(entries: readonly Entry[], due: ReadonlyMap<number, number>): OrderTime[] {
  const times = new Map<string, OrderTime>();
  for (const { job, end, task } of entries.toSorted((a, b) => a.end - b.end)) {
    if (job.kind !== 'pack' || !job.order) continue;
    const known = times.get(job.order.id);
    const at = due.get(task) ?? known?.due ?? null;
    const late = at === null ? 0 : Math.max(0, end - at);
    times.set(job.order.id, {
      order: job.order,
      runs: [...(known?.runs ?? []), job.run],
      end,
      due: at,
      late,
    });
  }
  return [...times.values()].sort((a, b) => a.end - b.end);
}

function runTimes(entries: readonly Entry[]): RunTime[] {
  const byRun = new Map<string, Entry[]>();
  for (const entry of entries) {
    const own = byRun.get(entry.job.run.id);
    if (own) own.push(entry);
    else byRun.set(entry.job.run.id, [entry]);
  }
  const times = [...byRun.values()].flatMap((own): RunTime[] => {
    const [first] = own;
    const print = own.find(({ job, state }) => job.kind === 'print' && state !== 'done');
    const run = first?.job.run;
    if (!first || !run) return [];
    return [
      { run, start: first.start, end: Math.max(...own.map(({ end }) => end)), print: print?.start ?? null },
    ];
  });
  return times.sort((a, b) => (a.print ?? -1) - (b.print ?? -1) || a.end - b.end);
}

function changesOf(entries: readonly Entry[]): number {
  const last = new Map<number, number>();
  let changes = 0;
  const heated = entries
    .flatMap(({ takes, degrees }) =>
      takes.flatMap(({ worker, unit, from }) =>
        worker === 'press' && degrees !== null ? [{ unit, from, degrees }] : [],
      ),
    )
    .sort((a, b) => a.from - b.from);
  for (const { unit, degrees } of heated) {
    const before = last.get(unit);
    if (before !== undefined && before !== degrees) changes += 1;
    last.set(unit, degrees);
  }
  return changes;
}
