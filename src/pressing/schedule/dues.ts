import type { Paths } from './paths';
import type { ScheduleProblem } from './problem';

/** For each task when the soonest of all that waits for it is due: what is urgent now, what has no time never. */
export function soonestDues(
  { tasks, dues, now }: ScheduleProblem,
  { order }: Pick<Paths, 'order'>,
): number[] {
  const due = tasks.map(() => Number.POSITIVE_INFINITY);
  for (const { task, at } of dues) due[task] = Math.min(due[task] ?? now, at ?? now);
  for (const index of order.toReversed()) {
    for (const { task: before } of tasks[index]?.after ?? []) {
      due[before] = Math.min(due[before] ?? now, due[index] ?? now);
    }
  }
  return due;
}
