import { type ScheduleProblem, validateSchedule } from '../../src/pressing/schedule';

/**
 * The shortest makespan of a small problem by trying every start time of every task and every unit; knows nothing of
 * priority lists. Tasks must come after those that they wait for.
 */
export function shortestOf(problem: ScheduleProblem, horizon: number): number {
  const { tasks, resources } = problem;
  let best = horizon + 1;
  const starts: number[] = [];
  const units: number[][] = [];
  const isSound = () => {
    const part = { ...problem, tasks: tasks.slice(0, starts.length) };
    const ends = starts.map((start, index) => start + (tasks[index]?.duration ?? 0));
    return validateSchedule(part, { starts, ends, units }).length === 0;
  };
  const go = (index: number, reached: number): void => {
    const task = tasks[index];
    if (!task) {
      best = Math.min(best, reached);
      return;
    }
    const choices = task.uses.reduce<number[][]>(
      (lists, { resource }) =>
        lists.flatMap((list) => (resources[resource]?.units ?? []).map((_, unit) => [...list, unit])),
      [[]],
    );
    for (let start = 0; start + task.duration < best; start += 1) {
      for (const choice of choices) {
        starts.push(start);
        units.push(choice);
        if (isSound()) go(index + 1, Math.max(reached, start + task.duration));
        starts.pop();
        units.pop();
      }
    }
  };
  go(0, 0);
  return best;
}
