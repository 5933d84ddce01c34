import { type Schedule, type ScheduleProblem, validateSchedule } from '../../src/pressing/schedule';

/** Times and units of a schedule. */
type Times = Pick<Schedule, 'starts' | 'ends' | 'units'>;

/**
 * The least of a measure over all schedules of a small problem, by trying every start time of every task and every unit; knows
 * nothing of priority lists. Chains are held within their limits, or as near as their tasks allow; no stint goes over a night. Tasks must come after those that
 * they wait for, and none may pause.
 * @param measure never less when a task ends later, or one is added
 */
function leastOf(
  problem: ScheduleProblem,
  horizon: number,
  measure: (times: Times) => number,
  most: number,
): number {
  const { tasks, resources } = problem;
  let best = most;
  const times = { starts: [] as number[], ends: [] as number[], units: [] as number[][] };
  const isSound = () => {
    const count = times.starts.length;
    const isTooLong = problem.chains.some(({ tasks: chained, limit }) => {
      const [first = 0] = chained;
      const last = chained.at(-1) ?? first;
      const between = chained.slice(1, -1).reduce((sum, task) => sum + (tasks[task]?.duration ?? 0), 0);
      return last < count && (times.starts[last] ?? 0) - (times.ends[first] ?? 0) > Math.max(limit, between);
    });
    if (isTooLong) return false;
    const isOverNight = problem.stints.some(({ first, tasks: own }) => {
      const printer = tasks[first]?.uses[0]?.resource ?? 0;
      const begin = times.starts[first] ?? 0;
      return own.some((task) =>
        resources[printer]?.units[0]?.away.some(({ to }) => to > begin && to <= (times.starts[task] ?? 0)),
      );
    });
    if (isOverNight) return false;
    const lanes = problem.lanes.filter(({ first, last }) => first < count && last < count);
    const part = { ...problem, lanes, tasks: tasks.slice(0, count) };
    return validateSchedule(part, times).length === 0;
  };
  const go = (index: number): void => {
    const task = tasks[index];
    if (!task) {
      best = Math.min(best, measure(times));
      return;
    }
    const choices = task.uses.reduce<number[][]>(
      (lists, { resource }) =>
        lists.flatMap((list) => (resources[resource]?.units ?? []).map((_, unit) => [...list, unit])),
      [[]],
    );
    const soonest = Math.max(
      0,
      ...task.after.map(({ task: before, lag }) => (times.ends[before] ?? 0) + lag),
    );
    for (let start = soonest; start + task.duration <= horizon; start += 1) {
      times.starts.push(start);
      times.ends.push(start + task.duration);
      const isWorse = measure(times) >= best;
      for (const choice of isWorse ? [] : choices) {
        times.units.push(choice);
        if (isSound()) go(index + 1);
        times.units.pop();
      }
      times.starts.pop();
      times.ends.pop();
      if (isWorse) break;
    }
  };
  go(0);
  return best;
}

/** The shortest makespan that is no longer than some. */
export const shortestOf = (problem: ScheduleProblem, horizon: number): number =>
  leastOf(problem, horizon, ({ ends }) => Math.max(0, ...ends), horizon + 1);

/** The least weighted lateness of schedules that end by some time, if it is less than `most`. */
export const leastLateOf = (problem: ScheduleProblem, horizon: number, most: number): number =>
  leastOf(
    problem,
    horizon,
    ({ ends }) =>
      problem.dues.reduce(
        (sum, { task, at, weight }) =>
          at === null ? sum : sum + weight * Math.max(0, (ends[task] ?? 0) - at),
        0,
      ),
    most,
  );
