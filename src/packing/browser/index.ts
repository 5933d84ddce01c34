import { proxy, type Remote, wrap } from 'comlink';
import type { Plan, Problem } from '..';
import type { Engine, Report } from './planner.worker';

/** How long, and by how many workers, a layout is looked for. */
export interface PlanningOptions {
  readonly seconds: number;
  readonly seed: number;
  readonly workers: number;
  readonly signal: AbortSignal;
  /** Told of the first plan and of each better one. */
  readonly onBetter: (plan: Plan) => void;
  /** Told a few times a second how much of the time is over, from 0 to 1. */
  readonly onProgress: (fraction: number) => void;
}

const PROGRESS_EVERY = 100;

const engines: Remote<Engine>[] = [];

/** Workers are kept: starting one takes longer than a first layout. */
function engine(index: number): Remote<Engine> {
  const running = engines[index];
  if (running) return running;
  const worker = new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' });
  const started = wrap<Engine>(worker);
  engines[index] = started;
  return started;
}

/**
 * Plans in workers, each with a seed of its own, and hands on the best of all.
 * @returns whether the last plan handed on is proven best; rejects if a worker fails
 */
export async function planInWorkers(
  problem: Problem,
  { seconds, seed, workers, signal, onBetter, onProgress }: PlanningOptions,
): Promise<{ proven: boolean }> {
  let best = Number.POSITIVE_INFINITY;
  let proven = false;
  const own = Array.from({ length: workers }, (_, index) => engine(index));
  const stop = () => {
    for (const remote of own) void remote.stop();
  };
  const hear = (report: Report): void => {
    if (signal.aborted || report.cost >= best) return;
    best = report.cost;
    proven = report.proven;
    onBetter(report.plan);
    if (report.finished) stop();
  };
  const began = performance.now();
  const timer = setInterval(
    () => onProgress(Math.min(1, (performance.now() - began) / (1000 * seconds))),
    PROGRESS_EVERY,
  );
  signal.addEventListener('abort', stop);
  try {
    const last = await Promise.all(
      own.map((remote, index) => remote.plan(problem, { seconds, seed: seed + index }, proxy(hear))),
    );
    for (const report of last) hear(report);
    return { proven };
  } finally {
    clearInterval(timer);
    signal.removeEventListener('abort', stop);
  }
}
