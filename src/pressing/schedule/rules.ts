import { type Block, inTurn } from './blocks';
import { type Decoder, dispatch } from './decode';
import { pathsOf } from './paths';
import type { ScheduleProblem } from './problem';

type Key = (block: number) => readonly number[];

/** Whether a block's key is the smaller one. */
function byKey(blocks: readonly Block[], keyOf: Key): (a: number, b: number) => boolean {
  const keys = blocks.map((_, index) => keyOf(index));
  return (a, b) => {
    const own = keys[a] ?? [];
    const other = keys[b] ?? [];
    for (let at = 0; at < own.length; at += 1) {
      const difference = (own[at] ?? 0) - (other[at] ?? 0);
      if (difference !== 0) return difference < 0;
    }
    return a < b;
  };
}

/** Blocks in the order of a key, the smallest first, each after those that it waits for. */
export function inOrder(blocks: readonly Block[], keyOf: Key): number[] {
  const isSooner = byKey(blocks, keyOf);
  return inTurn(blocks, (ready) =>
    ready.reduce((best, block, at) => (isSooner(block, ready[best] ?? 0) ? at : best), 0),
  );
}

/** The setting that is asked for the longest; 0 if none is. */
function mostUsed(tasks: ScheduleProblem['tasks']): number {
  const times = new Map<number, number>([[0, 0]]);
  for (const { setting, from, to } of tasks.flatMap(({ uses }) => uses)) {
    if (setting > 0) times.set(setting, (times.get(setting) ?? 0) + to - from);
  }
  return [...times].reduce((most, each) => (each[1] > most[1] ? each : most))[0];
}

/** Sequences by priority rules (Kolisch 1996): longest way to go, soonest due, soonest possible, longest first, like settings together. */
export function* starts(decoder: Decoder): Generator<number[]> {
  const { problem, blocks } = decoder;
  const { tasks, dues } = problem;
  const { heads, tails, order } = pathsOf(problem);
  const due = tasks.map(() => Number.POSITIVE_INFINITY);
  for (const { task, at } of dues) due[task] = Math.min(due[task] ?? at, at);
  for (const index of order.toReversed()) {
    for (const { task: before } of tasks[index]?.after ?? []) {
      due[before] = Math.min(due[before] ?? 0, due[index] ?? 0);
    }
  }
  const of = (pick: (task: number) => number) => (block: number) => {
    const own = blocks[block]?.tasks ?? [];
    return Math.min(...own.map(pick));
  };
  const head = of((task) => heads[task] ?? 0);
  const toGo = of((task) => -((tasks[task]?.duration ?? 0) + (tails[task] ?? 0)));
  const soonest = of((task) => Math.min(due[task] ?? 0, 1e9));
  const longest = of((task) => -(tasks[task]?.duration ?? 0));
  const setting = of((task) => tasks[task]?.uses.find((use) => use.setting > 0)?.setting ?? 0);
  const usual = mostUsed(tasks);
  const rules: readonly Key[] = [
    (block) => [toGo(block)],
    (block) => [soonest(block), toGo(block)],
    (block) => [head(block), toGo(block)],
    (block) => [soonest(block), setting(block), toGo(block)],
    (block) => [setting(block), soonest(block), toGo(block)],
    (block) => [setting(block) === usual ? 0 : setting(block), toGo(block)],
    (block) => [longest(block), toGo(block)],
    (block) => [head(block) + toGo(block)],
  ];
  for (const rule of rules) {
    yield inOrder(blocks, rule);
    yield dispatch(decoder, byKey(blocks, rule));
  }
}
