import { runTask, type TaskWorker, taskWorker } from '../../workers/browser';
import type { Schedule, ScheduleProblem } from '../schedule';
import type { Engine, Found } from './scheduler.worker';

const scheduler = (): TaskWorker<Engine> =>
  taskWorker(() => new Worker(new URL('./scheduler.worker.ts', import.meta.url), { type: 'module' }));

/** Workers are kept: starting one takes longer than a schedule. */
const planner = scheduler();
const asker = scheduler();

/**
 * Looks for a schedule in a worker.
 * @param earlier a schedule of the same tasks to begin with
 * @throws {WorkerFailed} if the worker fails; the signal's reason if it is stopped
 */
export const findSchedule = (
  problem: ScheduleProblem,
  {
    signal,
    ...options
  }: { seed: number; iterations: number; earlier: Pick<Schedule, 'starts'> | null; signal: AbortSignal },
): Promise<Found> => runTask(planner, (remote) => remote.find(problem, options), { signal });

/**
 * Tells how many seconds the tasks of a problem would take, in a worker of its own beside the schedules that are looked for.
 * @throws {WorkerFailed} if the worker fails; the signal's reason if it is stopped
 */
export async function findMakespan(
  problem: ScheduleProblem,
  { signal, ...options }: { seed: number; iterations: number; signal: AbortSignal },
): Promise<number> {
  const { schedule } = await runTask(asker, (remote) => remote.find(problem, { ...options, earlier: null }), {
    signal,
  });
  return schedule.makespan;
}

export type { Found };
