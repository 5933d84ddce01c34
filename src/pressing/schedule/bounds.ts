import { pathsOf } from './paths';
import { type ScheduleProblem, setupTime } from './problem';

/** No schedule ends sooner, and why: one path of tasks is as long, or one resource has as much to do. */
export interface ScheduleBound {
  readonly seconds: number;
  readonly by:
    | { readonly kind: 'path'; readonly tasks: readonly number[] }
    | { readonly kind: 'resource'; readonly resource: number };
}

/** A use as the bound sees it: when it can begin at the soonest, how long it is, and what must come after its end. */
interface Load {
  readonly head: number;
  readonly length: number;
  readonly tail: number;
  readonly setting: number;
}

/**
 * The most loaded subset of a resource's uses: least head + work over the units + least tail. The subsets that matter are those
 * of all uses with a head, and a tail, of at least some value; on one unit this is the bound of Jackson's preemptive schedule
 * (Carlier, European Journal of Operational Research 11(1), 42-47, 1982). One unit must also be brought from the lowest to
 * the highest setting of the subset, or back.
 */
function loadBound(loads: readonly Load[], units: number, perStep: number): number {
  const byTail = loads.toSorted((a, b) => b.tail - a.tail);
  const heads = [...new Set(loads.map(({ head }) => head))];
  let most = 0;
  for (const least of heads) {
    let work = 0;
    let lowest = Number.POSITIVE_INFINITY;
    let highest = Number.NEGATIVE_INFINITY;
    for (const { head, length, tail, setting } of byTail) {
      if (head < least) continue;
      work += length;
      lowest = Math.min(lowest, setting);
      highest = Math.max(highest, setting);
      const change = units === 1 ? perStep * (highest - lowest) : 0;
      most = Math.max(most, least + Math.ceil(work / units) + change + tail);
    }
  }
  return most;
}

/** The longest path: the last task of it has no tail, and each waits for the one before. */
function longestPath(problem: ScheduleProblem, heads: readonly number[], tails: readonly number[]): number[] {
  const { tasks } = problem;
  const through = (index: number) =>
    (heads[index] ?? 0) + (tasks[index]?.duration ?? 0) + (tails[index] ?? 0);
  const path: number[] = [];
  let at = -1;
  tasks.forEach((_, index) => {
    const isEnd = tails[index] === 0;
    if (isEnd && (at < 0 || through(index) > through(at))) at = index;
  });
  while (at >= 0) {
    path.unshift(at);
    const task = tasks[at];
    const head = heads[at] ?? 0;
    at =
      task?.after.find(
        ({ task: before, lag }) =>
          (tasks[before]?.fixed?.end ?? (heads[before] ?? 0) + (tasks[before]?.duration ?? 0)) + lag === head,
      )?.task ?? -1;
  }
  return path;
}

/** A proven lower bound on the end of any schedule, and what it comes from. */
export function scheduleBound(problem: ScheduleProblem): ScheduleBound {
  const { tasks, resources, now } = problem;
  const { heads, tails } = pathsOf(problem);
  let bound: ScheduleBound = { seconds: now, by: { kind: 'path', tasks: [] } };
  tasks.forEach(({ duration, fixed }, index) => {
    const end = (fixed?.end ?? (heads[index] ?? 0) + duration) + (tails[index] ?? 0);
    if (end > bound.seconds) bound = { seconds: end, by: { kind: 'path', tasks: [] } };
  });
  resources.forEach(({ units, setup }, resource) => {
    const loads = tasks.flatMap(({ uses, fixed, duration }, index): Load[] =>
      uses.flatMap((use): Load[] => {
        const { from, to, setting } = use;
        if (use.resource !== resource) return [];
        const tail = Math.max(0, (fixed ? fixed.end - fixed.start : duration) - to) + (tails[index] ?? 0);
        if (fixed) {
          const begin = Math.max(now, fixed.start + from);
          const length = Math.min(fixed.end, fixed.start + to) - begin;
          return length > 0 ? [{ head: begin, length, tail, setting }] : [];
        }
        const ready = Math.min(
          ...units.map(
            ({ free, setting: first }) =>
              Math.max(free, now) + (setup ? setupTime(setup, first, setting) : 0),
          ),
        );
        return [{ head: Math.max((heads[index] ?? 0) + from, ready), length: to - from, tail, setting }];
      }),
    );
    const seconds = loadBound(loads, units.length, setup ? Math.min(setup.rise, setup.fall) : 0);
    if (seconds > bound.seconds) bound = { seconds, by: { kind: 'resource', resource } };
  });
  return bound.by.kind === 'path'
    ? { ...bound, by: { kind: 'path', tasks: longestPath(problem, heads, tails) } }
    : bound;
}
