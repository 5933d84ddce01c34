import { proxy, type Remote, wrap } from 'comlink';
import type { Idea, Plan, Problem } from '..';
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

const engines: Remote<Engine>[] = [];
let comparer: Remote<Engine> | null = null;

const startEngine = (): Remote<Engine> =>
  wrap<Engine>(new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' }));

/** Workers are kept: starting one takes longer than a first layout. */
function engine(index: number): Remote<Engine> {
  const running = engines[index];
  if (running) return running;
  const started = startEngine();
  engines[index] = started;
  return started;
}

/**
 * Plans in workers, each with a seed of its own, which share the best, and hands on the best of all.
 * @returns whether the last plan handed on is proven best, and what a later search can go on from; rejects if a worker fails
 */
export async function planInWorkers(
  problem: Problem,
  { seconds, seed, workers, idea, signal, onBetter, onProgress }: PlanningOptions,
): Promise<{ proven: boolean; idea: Idea | null }> {
  let best = Number.POSITIVE_INFINITY;
  let found: Pick<Report, 'proven' | 'idea'> = { proven: false, idea };
  const own = Array.from({ length: workers }, (_, index) => engine(index));
  const stop = () => {
    for (const remote of own) void remote.stop();
  };
  const hear = (report: Report, from: Remote<Engine>): void => {
    if (signal.aborted || report.cost >= best) return;
    best = report.cost;
    found = report;
    onBetter(report.plan);
    if (report.finished) stop();
    else for (const other of own) if (other !== from && report.idea) void other.take(report.idea);
  };
  const began = performance.now();
  const timer = setInterval(
    () => onProgress(Math.min(1, (performance.now() - began) / (1000 * seconds))),
    PROGRESS_EVERY,
  );
  signal.addEventListener('abort', stop);
  try {
    await Promise.all(
      own.map(async (remote, index) => {
        const told = (report: Report) => hear(report, remote);
        told(await remote.plan(problem, { seconds, seed: seed + index, idea }, proxy(told)));
      }),
    );
    return found;
  } finally {
    clearInterval(timer);
    signal.removeEventListener('abort', stop);
  }
}

/**
 * Builds so many layouts of a problem in a worker of its own, beside any search that goes on.
 * @param onProgress told how much of it is done, from 0 to 1
 * @returns the best plan; `null` if it was stopped
 */
export async function buildInWorker(
  problem: Problem,
  {
    layouts,
    seed,
    signal,
    onProgress,
  }: {
    readonly layouts: number;
    readonly seed: number;
    readonly signal: AbortSignal;
    readonly onProgress: (share: number) => void;
  },
): Promise<Plan | null> {
  comparer ??= startEngine();
  const own = comparer;
  const stop = () => void own.stop();
  signal.addEventListener('abort', stop);
  try {
    return signal.aborted ? null : await own.build(problem, { layouts, seed }, proxy(onProgress));
  } finally {
    signal.removeEventListener('abort', stop);
  }
}
