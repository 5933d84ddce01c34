import { expose } from 'comlink';
import { nextTask } from '../../units/browser/next-task';
import {
  createScheduler,
  type Schedule,
  type ScheduleBound,
  type ScheduleProblem,
  sequencesFor,
} from '../schedule';

/** A slice of work between two looks at the message queue, in milliseconds. */
const SLICE = 30;

/** The best schedule so far. */
export interface Found {
  readonly schedule: Schedule;
  readonly bound: ScheduleBound;
}

const engine = {
  /** Tries so many sequences, fewer of a very large day, in turn with what else is asked for, and tells the best. */
  async find(
    problem: ScheduleProblem,
    {
      seed,
      iterations,
      earlier,
    }: { seed: number; iterations: number; earlier: Pick<Schedule, 'starts'> | null },
  ): Promise<Found> {
    const sequences = sequencesFor(problem, iterations);
    const scheduler = createScheduler(problem, { seed, cycle: sequences, earlier });
    for (let left = sequences; left > 0 && !scheduler.finished(); ) {
      const until = performance.now() + SLICE;
      while (left > 0 && performance.now() < until) {
        scheduler.step(1);
        left -= 1;
      }
      await nextTask();
    }
    return { schedule: scheduler.best(), bound: scheduler.bound };
  },
};

export type Engine = typeof engine;

expose(engine);
