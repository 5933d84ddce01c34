import { type Remote, wrap } from 'comlink';
import type { Schedule, ScheduleProblem } from '../schedule';
import type { Engine, Found } from './scheduler.worker';

let engine: Remote<Engine> | null = null;

/** The worker is kept: starting one takes longer than a schedule. */
function running(): Remote<Engine> {
  engine ??= wrap<Engine>(new Worker(new URL('./scheduler.worker.ts', import.meta.url), { type: 'module' }));
  return engine;
}

/**
 * Looks for a schedule in a worker.
 * @param earlier a schedule of the same tasks to begin with
 */
export const findSchedule = (
  problem: ScheduleProblem,
  options: { seed: number; iterations: number; earlier: Pick<Schedule, 'starts'> | null },
): Promise<Found> => running().find(problem, options);

export type { Found };
