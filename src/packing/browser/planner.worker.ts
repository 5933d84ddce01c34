import { expose } from 'comlink';
import { nextTask } from '../../units/browser/next-task';
import { createPlanner, type Idea, type Plan, type Planner, type Problem } from '..';

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
  readonly idea: Idea | null;
}

/** Layouts that fill the next slice, by how long so many took. */
const nextSlice = (layouts: number, took: number): number =>
  Math.max(1, Math.min(layouts * 4, Math.floor((layouts * SLICE) / Math.max(took, 0.01))));

let planner: Planner | null = null;

const engine = {
  /** Plans for some seconds, or until nothing better is left to find; the first plan is told at once. */
  async plan(
    problem: Problem,
    { seconds, seed, idea }: { seconds: number; seed: number; idea: Idea | null },
    onBetter: (report: Report) => void,
  ): Promise<Report> {
    const began = performance.now();
    const own = createPlanner(problem, seed);
    planner = own;
    const report = (): Report => ({
      plan: own.best(),
      cost: own.cost(),
      proven: own.proven(),
      finished: own.finished(),
      idea: own.idea(),
    });
    let told = own.cost();
    let toldAt = performance.now();
    onBetter(report());
    told = own.cost();
    if (idea) own.take(idea);
    let slice = 1;
    while (performance.now() - began < seconds * 1000 && !own.finished()) {
      const from = performance.now();
      own.step(slice);
      const took = performance.now() - from;
      slice = nextSlice(slice, took);
      if (own.cost() < told && performance.now() - toldAt >= TELL_EVERY) {
        told = own.cost();
        toldAt = performance.now();
        onBetter(report());
      }
      await nextTask();
    }
    return report();
  },
  /** Builds so many layouts, or fewer if none can be better, and tells the best. */
  async build(
    problem: Problem,
    { layouts, seed }: { layouts: number; seed: number },
    onProgress: (share: number) => void,
  ): Promise<Plan> {
    const own = createPlanner(problem, seed);
    let slice = 1;
    while (own.iterations < layouts && !own.finished()) {
      const from = performance.now();
      own.step(Math.min(slice, layouts - own.iterations));
      slice = nextSlice(slice, performance.now() - from);
      onProgress(Math.min(1, own.iterations / layouts));
      await nextTask();
    }
    return own.best();
  },
  /** Goes on from what another worker has found. */
  take(idea: Idea): void {
    planner?.take(idea);
  },
};

export type Engine = typeof engine;

expose(engine);
