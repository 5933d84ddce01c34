import type { ScheduleProblem } from './problem';

/** What is given its times in one go: a chain, or a task that is in none. Fixed tasks are in no block. */
export interface Block {
  readonly tasks: readonly number[];
  /** Of the chain; `null` for a single task. */
  readonly limit: number | null;
  /** How long its tasks between the first and the last take. */
  readonly between: number;
  /** Blocks that come before and after it. */
  readonly before: readonly number[];
  readonly after: readonly number[];
}

/**
 * Lists blocks, each after those that it waits for.
 * @param next which of those that may come next does, by its place among them
 */
export function inTurn(blocks: readonly Block[], next: (ready: readonly number[]) => number): number[] {
  const waiting = blocks.map(({ before }) => before.length);
  const ready = blocks.flatMap((_, index) => (waiting[index] === 0 ? [index] : []));
  const sequence: number[] = [];
  while (ready.length > 0) {
    const chosen = ready.splice(next(ready), 1);
    sequence.push(...chosen);
    for (const follower of chosen.flatMap((block) => blocks[block]?.after ?? [])) {
      waiting[follower] = (waiting[follower] ?? 0) - 1;
      if (waiting[follower] === 0) ready.push(follower);
    }
  }
  return sequence;
}

/** Parts the tasks that are not fixed into blocks. A chain that has begun goes on as single tasks, its last ones first in line. */
export function blocksOf({ tasks, chains }: ScheduleProblem): Block[] {
  const groups: { tasks: number[]; limit: number | null }[] = [];
  const blockOf = new Array<number>(tasks.length).fill(-1);
  const add = (group: { tasks: number[]; limit: number | null }) => {
    for (const task of group.tasks) blockOf[task] = groups.length;
    groups.push(group);
  };
  for (const { tasks: chained, limit } of chains) {
    if (chained.every((task) => tasks[task]?.fixed === null)) add({ tasks: [...chained], limit });
  }
  tasks.forEach((task, index) => {
    if (task.fixed === null && blockOf[index] === -1) add({ tasks: [index], limit: null });
  });
  const before = groups.map(() => new Set<number>());
  const after = groups.map(() => new Set<number>());
  tasks.forEach(({ after: predecessors }, index) => {
    const own = blockOf[index] ?? -1;
    for (const { task } of predecessors) {
      const other = blockOf[task] ?? -1;
      if (own >= 0 && other >= 0 && own !== other) {
        before[own]?.add(other);
        after[other]?.add(own);
      }
    }
  });
  return groups.map((group, index) => ({
    ...group,
    between: group.tasks.slice(1, -1).reduce((sum, task) => sum + (tasks[task]?.duration ?? 0), 0),
    before: [...(before[index] ?? [])],
    after: [...(after[index] ?? [])],
  }));
}
