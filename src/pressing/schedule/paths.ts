import type { ScheduleProblem } from './problem';

/** The longest paths through the tasks; of resources no more is taken into account than when each can be had. */
export interface Paths {
  /** Tasks in an order in which each comes after those that it waits for. */
  readonly order: readonly number[];
  /** The earliest start of each task, and its end then. */
  readonly heads: readonly number[];
  readonly ends: readonly number[];
  /** The least time from the end of each task to the end of all that waits for it. */
  readonly tails: readonly number[];
}

/**
 * For each task those that wait for it, and how long after it at the least.
 * @throws RangeError if a task waits for one that is not there
 */
export function followersOf(tasks: ScheduleProblem['tasks']): { task: number; lag: number }[][] {
  const followers: { task: number; lag: number }[][] = tasks.map(() => []);
  tasks.forEach(({ after }, index) => {
    for (const { task, lag } of after) {
      if (!tasks[task]) throw new RangeError(`task ${index} waits for task ${task}, which is not there`);
      followers[task]?.push({ task: index, lag });
    }
  });
  return followers;
}

/** When a task begins and ends at the soonest from a time on. */
type Soonest = (index: number, time: number) => { readonly start: number; readonly end: number };

/**
 * Heads and tails of all tasks.
 * @throws RangeError if tasks wait for one another in a circle, or for one that is not there
 */
export function pathsOf({ tasks, now }: ScheduleProblem, soonest?: Soonest): Paths {
  const waiting = tasks.map(({ after }) => after.length);
  const followers = followersOf(tasks);
  const order = tasks.flatMap((_, index) => (waiting[index] === 0 ? [index] : []));
  for (let at = 0; at < order.length; at += 1) {
    for (const { task } of followers[order[at] ?? 0] ?? []) {
      waiting[task] = (waiting[task] ?? 0) - 1;
      if (waiting[task] === 0) order.push(task);
    }
  }
  if (order.length < tasks.length) throw new RangeError('tasks wait for one another in a circle');
  const heads = tasks.map(({ fixed }) => fixed?.start ?? now);
  const ends = tasks.map(({ fixed, duration }) => fixed?.end ?? now + duration);
  const tails = tasks.map(() => 0);
  for (const index of order) {
    const task = tasks[index];
    if (!task || task.fixed) continue;
    for (const { task: before, lag } of task.after) {
      heads[index] = Math.max(heads[index] ?? 0, (ends[before] ?? 0) + lag);
    }
    const head = heads[index] ?? 0;
    const { start, end } = soonest?.(index, head) ?? { start: head, end: head + task.duration };
    heads[index] = start;
    ends[index] = end;
  }
  for (const index of order.toReversed()) {
    for (const { task, lag } of followers[index] ?? []) {
      if (tasks[task]?.fixed) continue;
      const through = lag + (tasks[task]?.duration ?? 0) + (tails[task] ?? 0);
      tails[index] = Math.max(tails[index] ?? 0, through);
    }
  }
  return { order, heads, ends, tails };
}
