import { soonestDues } from './dues';
import { pathsOf } from './paths';
import type { Lane, Schedule, ScheduleProblem } from './problem';

/** So many lanes of one rank are tried in every order; of more, only orders near that of their dues. */
const ALL_ORDERS = 4;
/** So many orders of lanes of several resources are tried with one another; of more, those of one resource at a time. */
const ALL_TOGETHER = 24;

/** Every order of a few things. */
function permutations<Item>(items: readonly Item[]): Item[][] {
  if (items.length < 2) return [[...items]];
  return items.flatMap((item, at) =>
    permutations([...items.slice(0, at), ...items.slice(at + 1)]).map((rest) => [item, ...rest]),
  );
}

/** An order, and each in which two of it are exchanged. */
function nearBy<Item>(items: readonly Item[]): Item[][] {
  const exchanged = items.flatMap((one, at) =>
    items
      .slice(at + 1)
      .map((other) => items.map((each) => (each === one ? other : each === other ? one : each))),
  );
  return [[...items], ...exchanged];
}

/** For each lane when the soonest of all that waits for it is due. */
function duesOf(problem: ScheduleProblem): Map<Lane, number> {
  const due = soonestDues(problem, pathsOf(problem));
  return new Map(problem.lanes.map((lane) => [lane, due[lane.first] ?? Number.POSITIVE_INFINITY]));
}

/** The lanes of each resource. */
const byResource = (lanes: readonly Lane[]): Lane[][] =>
  [...new Set(lanes.map(({ resource }) => resource))].map((resource) =>
    lanes.filter((lane) => lane.resource === resource),
  );

/** The orders in which lanes of one resource may come, that by their ranks and dues first. */
function ordersOf(lanes: readonly Lane[], due: ReadonlyMap<Lane, number>): Lane[][] {
  const ranks = [...new Set(lanes.map(({ rank }) => rank))].sort((a, b) => a - b);
  return ranks.reduce<Lane[][]>(
    (orders, rank) => {
      const own = lanes
        .filter((lane) => lane.rank === rank)
        // Of two that are due at one time, and of those without a date, the one that is told first.
        .sort((a, b) => Math.min(due.get(a) ?? 0, 1e12) - Math.min(due.get(b) ?? 0, 1e12));
      const ways = own.length > ALL_ORDERS ? nearBy(own) : permutations(own);
      return ways.flatMap((way) => orders.map((order) => [...order, ...way]));
    },
    [[]],
  );
}

/** The orders in which the lanes of a problem may come, each resource's in one of its own; that by their ranks and dues first. */
export function laneOrders(problem: ScheduleProblem): Lane[][] {
  const due = duesOf(problem);
  const all = byResource(problem.lanes).map((lanes) => ordersOf(lanes, due));
  if (all.reduce((product, orders) => product * orders.length, 1) <= ALL_TOGETHER) {
    return all.reduce<Lane[][]>(
      (together, orders) => orders.flatMap((order) => together.map((others) => [...others, ...order])),
      [[]],
    );
  }
  const soonest = all.map(([first = []]) => first);
  return [
    soonest.flat(),
    ...all.flatMap((orders, at) => orders.slice(1).map((order) => soonest.with(at, order).flat())),
  ];
}

/** The order in which the lanes come in a schedule of the same tasks. */
export const laneOrderOf = ({ lanes }: ScheduleProblem, { starts }: Pick<Schedule, 'starts'>): Lane[] =>
  lanes.toSorted((a, b) => a.rank - b.rank || (starts[a.first] ?? 0) - (starts[b.first] ?? 0));

/** The problem with the lanes of each resource one behind the other: each waits for the one before. */
export function inLaneOrder(problem: ScheduleProblem, order: readonly Lane[]): ScheduleProblem {
  const before = new Map(
    byResource(order).flatMap((lanes) =>
      lanes.slice(1).map((lane, at) => [lane.first, lanes[at]?.last ?? lane.first] as const),
    ),
  );
  return {
    ...problem,
    tasks: problem.tasks.map((task, index) => {
      const last = before.get(index);
      return last === undefined ? task : { ...task, after: [...task.after, { task: last, lag: 0 }] };
    }),
  };
}
