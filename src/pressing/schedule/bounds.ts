import { awayBetween, endOfWork } from './away';
import { type Paths, pathsOf } from './paths';
import { Placing } from './placing';
import { type Away, mayTake, type Resource, type ScheduleProblem, type Shelf, type Use } from './problem';
import { standstillOf } from './standstill';

/** No schedule ends sooner, and why: one path of tasks is as long, or one resource or shelf has as much to do. */
export interface ScheduleBound {
  readonly seconds: number;
  readonly by:
    | { readonly kind: 'path'; readonly tasks: readonly number[] }
    | { readonly kind: 'resource'; readonly resource: number }
    | { readonly kind: 'shelf'; readonly shelf: number };
}

/** A use as the bound sees it: when it can begin at the soonest, how long it is, and what must come after its end. */
interface Load {
  readonly head: number;
  readonly length: number;
  readonly tail: number;
  readonly setting: number;
}

/** So many pairs of a head and a use are looked at: of a very large day only some heads, each of which gives a bound. */
const PAIRS = 300_000;

/** All of a few numbers, of more some that are spread over them, the first among them. */
const someOf = (values: readonly number[], most: number): readonly number[] =>
  values.length <= most
    ? values
    : Array.from({ length: most }, (_, at) => values[Math.floor((at * values.length) / most)] ?? 0);

/**
 * The most loaded subset of a resource's uses: least head + work over the units while they are there + least tail. The subsets that
 * matter are those of all uses with a head, and a tail, of at least some value; on one unit this is the bound of Jackson's preemptive
 * schedule (Carlier, European Journal of Operational Research 11(1), 42-47, 1982). One unit must also be brought from the lowest to
 * the highest setting of the subset, or back, as far as it is not done while it is away.
 */
function loadBound(loads: readonly Load[], { units }: Resource): number {
  const byTail = loads.toSorted((a, b) => b.tail - a.tail);
  const heads = someOf(
    [...new Set(loads.map(({ head }) => head))].sort((a, b) => a - b),
    Math.ceil(PAIRS / Math.max(1, loads.length)),
  );
  const end = endOfWork(units.map(({ away }) => away));
  const [only] = units;
  const changeBetween = (low: number, high: number, from: number, to: number) => {
    if (!only?.setup || units.length > 1) return 0;
    const { cold, rise, fall } = only.setup;
    const change = Math.min(cold, Math.min(rise, fall) * (high - low));
    return Math.max(0, change - awayBetween(only.away, from, to));
  };
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
      const done = end(least, work);
      most = Math.max(most, done + changeBetween(lowest, highest, least, done) + tail);
    }
  }
  return most;
}

/** Sets of units of a resource, by their places, that have work of their own: all of them, and those that alone may take some use. */
function unitSets({ units }: Resource, uses: readonly Use[]): number[][] {
  const all = units.map((_, place) => place);
  const sets = [all, ...uses.map((use) => all.filter((place) => mayTake(use, place)))];
  return [...new Map(sets.map((places) => [places.join(), places])).values()];
}

/** The longest path: the last task of it has no tail, and each waits for the one before. */
function longestPath({ tasks, now }: ScheduleProblem, { ends, tails }: Paths): number[] {
  const through = (index: number) => (ends[index] ?? 0) + (tails[index] ?? 0);
  const path: number[] = [];
  let at = -1;
  tasks.forEach((_, index) => {
    const isEnd = tails[index] === 0;
    if (isEnd && (at < 0 || through(index) > through(at))) at = index;
  });
  while (at >= 0) {
    path.unshift(at);
    const task = tasks[at];
    const before = (task?.after ?? []).map(({ task: other, lag }) => ({
      other,
      end: (ends[other] ?? 0) + lag,
    }));
    at = before.reduce((last, each) => (each.end > last.end ? each : last), { other: -1, end: now }).other;
  }
  return path;
}

/** What some uses ask of the units that they are on. */
function loadsOf(
  { tasks, now }: ScheduleProblem,
  { heads, tails }: Paths,
  { units }: Resource,
  isOwn: (use: Use, task: number) => boolean,
): Load[] {
  const away = (from: number, to: number) =>
    Math.max(0, ...units.map((unit) => awayBetween(unit.away, from, to)));
  return tasks.flatMap(({ uses, fixed, duration }, index) =>
    uses
      .filter((use) => isOwn(use, index))
      .flatMap(({ from, to, setting }): Load[] => {
        const tail = Math.max(0, (fixed ? fixed.end - fixed.start : duration) - to) + (tails[index] ?? 0);
        if (!fixed) return [{ head: (heads[index] ?? 0) + from, length: to - from, tail, setting }];
        const begin = Math.max(now, fixed.start + from);
        const end = Math.min(fixed.end, fixed.start + to);
        // What is begun may go on while others are away.
        const length = end - begin - away(begin, end);
        return length > 0 ? [{ head: begin, length, tail, setting }] : [];
      }),
  );
}

/** What lies on a shelf: from the start of what fills it until it is cleared at the soonest. */
function lyingOn({ tasks, now }: ScheduleProblem, { heads, tails }: Paths, { loads }: Shelf): Load[] {
  return loads.flatMap(({ fills, clearedBy, lag }) => {
    const clearing = tasks[clearedBy];
    if (!clearing || clearing.fixed) return [];
    const tail = Math.max(0, clearing.duration - lag) + (tails[clearedBy] ?? 0);
    return fills.flatMap((index): Load[] => {
      const task = tasks[index];
      if (!task) return [];
      const least = task.fixed ? (heads[clearedBy] ?? now) - now : task.duration;
      const head = task.fixed ? now : (heads[index] ?? now);
      return [{ head, length: Math.max(0, least + lag), tail, setting: 0 }];
    });
  });
}

/** A resource that is away at other times, too. */
const alsoAway = ({ units }: Resource, more: readonly Away[]): Resource => ({
  units: units.map((unit) => ({ ...unit, away: [...unit.away, ...more] })),
});

/** A proven lower bound on the end of any schedule, and what it comes from. */
export function scheduleBound(problem: ScheduleProblem): ScheduleBound {
  const { tasks, resources, now } = problem;
  const placing = new Placing(problem);
  const paths = pathsOf(problem, (index, time) => placing.soonest(index, time));
  const { ends, tails } = paths;
  let bound: ScheduleBound = { seconds: now, by: { kind: 'path', tasks: [] } };
  tasks.forEach((_, index) => {
    const end = (ends[index] ?? 0) + (tails[index] ?? 0);
    if (end > bound.seconds) bound = { seconds: end, by: { kind: 'path', tasks: [] } };
  });
  const take = (resource: number, seconds: number) => {
    if (seconds > bound.seconds) bound = { seconds, by: { kind: 'resource', resource } };
  };
  resources.forEach((whole, resource) => {
    const uses = tasks.flatMap((task) => task.uses.filter((use) => use.resource === resource));
    for (const places of unitSets(whole, uses)) {
      const own = { ...whole, units: places.flatMap((place) => whole.units[place] ?? []) };
      const isOwn = (use: Use) =>
        use.resource === resource &&
        whole.units.every((_, place) => places.includes(place) || !mayTake(use, place));
      take(resource, loadBound(loadsOf(problem, paths, own, isOwn), own));
      for (const [other] of resources.entries()) {
        if (other === resource) continue;
        const { away, isHeld } = standstillOf(problem, resource, other);
        if (away.length === 0) continue;
        const loads = loadsOf(problem, paths, own, (use, task) => isOwn(use) && isHeld(task));
        take(resource, loadBound(loads, alsoAway(own, away)));
      }
    }
  });
  problem.shelves.forEach((own, shelf) => {
    const place = { free: now, setup: null, setting: null, warmed: 0, away: [] };
    const units = Array.from({ length: own.places }, () => place);
    const seconds = loadBound(lyingOn(problem, paths, own), { units });
    if (seconds > bound.seconds) bound = { seconds, by: { kind: 'shelf', shelf } };
  });
  return bound.by.kind === 'path'
    ? { ...bound, by: { kind: 'path', tasks: longestPath(problem, paths) } }
    : bound;
}
