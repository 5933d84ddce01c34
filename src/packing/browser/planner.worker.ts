import { expose } from 'comlink';
import { createPlanner, type Plan, type Problem } from '..';

/** A slice of work between two looks at the message queue, in milliseconds. */
const SLICE = 30;
/** Better plans are told no more often than this, in milliseconds. */
const TELL_EVERY = 120;

/** What a worker tells of its best plan so far. Costs of one problem compare across workers; smaller is better. */
export interface Report {
  readonly plan: Plan;
  readonly cost: number;
  readonly proven: boolean;
  readonly finished: boolean;
}

let running = 0;

/** Lets messages in: a macrotask of its own, without the delay of nested timers. */
const breathe = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });

const engine = {
  /** Plans for some seconds, until nothing better is left to find, or until told to stop; the first plan is told at once. */
  async plan(
    problem: Problem,
    { seconds, seed }: { seconds: number; seed: number },
    onBetter: (report: Report) => void,
  ): Promise<Report> {
    running += 1;
    const own = running;
    const began = performance.now();
    const planner = createPlanner(problem, seed);
    const report = (): Report => ({
      plan: planner.best(),
      cost: planner.cost(),
      proven: planner.proven(),
      finished: planner.finished(),
    });
    let told = planner.cost();
    let toldAt = performance.now();
    onBetter(report());
    told = planner.cost();
    let slice = 1;
    while (own === running && performance.now() - began < seconds * 1000 && !planner.finished()) {
      const from = performance.now();
      planner.step(slice);
      const took = performance.now() - from;
      slice = Math.max(1, Math.min(slice * 4, Math.floor((slice * SLICE) / Math.max(took, 0.01))));
      if (planner.cost() < told && performance.now() - toldAt >= TELL_EVERY) {
        told = planner.cost();
        toldAt = performance.now();
        onBetter(report());
      }
      await breathe();
    }
    return report();
  },
  stop(): void {
    running += 1;
  },
};

export type Engine = typeof engine;

expose(engine);
