import { expose } from 'comlink';
import { type Idea, type Plan, type Planner, type Problem, Telling } from '../../packing';
import { nextTask } from '../../units/browser/next-task';
import { createPlanner } from '..';

/** A slice of work between two looks at the message queue, in milliseconds. */
const SLICE = 30;

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

let atWork: { readonly planner: Planner; readonly telling: Telling } | null = null;

const engine = {
  /** Plans for some seconds, or until nothing better is left to find; the first plan is told at once. */
  async plan(
    problem: Problem,
    { seconds, seed, idea }: { seconds: number; seed: number; idea: Idea | null },
    onBetter: (report: Report) => void,
  ): Promise<Report> {
    const began = performance.now();
    const own = createPlanner(problem, seed);
    const telling = new Telling();
    atWork = { planner: own, telling };
    const report = (): Report => ({
      plan: own.best(),
      cost: own.cost(),
      proven: own.proven(),
      finished: own.finished(),
      idea: own.idea(),
    });
    const tell = (): void => {
      const from = performance.now();
      const made = report();
      telling.wasTold(made.cost, from, performance.now());
      onBetter(made);
    };
    tell();
    if (idea) own.take(idea);
    let slice = 1;
    while (performance.now() - began < seconds * 1000 && !own.finished()) {
      const from = performance.now();
      own.step(slice);
      const took = performance.now() - from;
      slice = nextSlice(slice, took);
      if (telling.isDue(own.cost(), performance.now())) tell();
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
    if (atWork?.planner.take(idea)) atWork.telling.isKnown(atWork.planner.cost());
  },
};

export type Engine = typeof engine;

expose(engine);
