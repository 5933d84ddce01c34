import type { Remote } from 'comlink';
import type { Idea, Plan, Problem } from '../../packing';
import { runTask, type TaskWorker, taskWorker } from '../../workers/browser';
import type { Engine, Report } from './planner.worker';

/** How long, and by how many workers, a layout is looked for. */
export interface PlanningOptions {
  readonly seconds: number;
  readonly seed: number;
  readonly workers: number;
  /** What to go on from, if anything. */
  readonly idea: Idea | null;
  readonly signal: AbortSignal;
  /** Told of the first plan and of each better one. */
  readonly onBetter: (plan: Plan) => void;
  /** Told a few times a second how much of the time is over, from 0 to 1. */
  readonly onProgress: (fraction: number) => void;
}

const PROGRESS_EVERY = 100;

const planner = (): TaskWorker<Engine> =>
  taskWorker(() => new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' }));

/** Workers are kept: starting one takes longer than a first layout. */
const planners: TaskWorker<Engine>[] = [];
const comparer = planner();

/**
 * Plans in workers, each with a seed of its own, which share the best, and hands on the best of all.
 * @param options.signal ends it with what was found by then
 * @returns whether the last plan handed on is proven best, and what a later search can go on from
 * @throws {WorkerFailed} if a worker fails; the others are ended then
 */
export async function planInWorkers(
  problem: Problem,
  { seconds, seed, workers, idea, signal, onBetter, onProgress }: PlanningOptions,
): Promise<{ proven: boolean; idea: Idea | null }> {
  while (planners.length < workers) planners.push(planner());
  const own = planners.slice(0, workers);
  const atWork = new Map<TaskWorker<Engine>, Remote<Engine>>();
  const over = new AbortController();
  let best = Number.POSITIVE_INFINITY;
  let found: Pick<Report, 'proven' | 'idea'> = { proven: false, idea };
  const hear = (report: Report, from: TaskWorker<Engine>): void => {
    if (over.signal.aborted || report.cost >= best) return;
    best = report.cost;
    found = report;
    onBetter(report.plan);
    if (report.finished) over.abort();
    else
      for (const [other, remote] of atWork) if (other !== from && report.idea) void remote.take(report.idea);
  };
  const plan = async (each: TaskWorker<Engine>, index: number): Promise<void> => {
    const told = (report: Report) => hear(report, each);
    const last = await runTask<Engine, Report, Report>(
      each,
      (remote, onReport) => {
        atWork.set(each, remote);
        return remote.plan(problem, { seconds, seed: seed + index, idea }, onReport);
      },
      { signal: over.signal, onProgress: told },
    ).finally(() => atWork.delete(each));
    told(last);
  };
  const began = performance.now();
  const timer = setInterval(
    () => onProgress(Math.min(1, (performance.now() - began) / (1000 * seconds))),
    PROGRESS_EVERY,
  );
  const stop = () => over.abort();
  signal.addEventListener('abort', stop);
  if (signal.aborted) stop();
  try {
    await Promise.all(own.map(plan));
  } catch (error) {
    const isStopped = over.signal.aborted;
    stop();
    if (!isStopped) throw error;
  } finally {
    clearInterval(timer);
    signal.removeEventListener('abort', stop);
  }
  return found;
}

/**
 * Builds so many layouts of a problem in a worker of its own, beside any search that goes on.
 * @param onProgress told how much of it is done, from 0 to 1
 * @returns the best plan
 * @throws {WorkerFailed} if the worker fails; the signal's reason if it is stopped
 */
export const buildInWorker = (
  problem: Problem,
  {
    layouts,
    seed,
    ...options
  }: {
    readonly layouts: number;
    readonly seed: number;
    readonly signal: AbortSignal;
    readonly onProgress: (share: number) => void;
  },
): Promise<Plan> =>
  runTask<Engine, Plan, number>(
    comparer,
    (remote, told) => remote.build(problem, { layouts, seed }, told),
    options,
  );
