import { allAway } from './away';
import type { Away, ScheduleProblem, Task } from './problem';

/** When a resource can do nothing of some of its tasks, since others are away who must follow, or help. */
export interface Standstill {
  readonly away: readonly Away[];
  readonly isHeld: (task: number) => boolean;
}

/** Whether a task needs another resource as long as it has one. */
const needsAlong = ({ uses, pauses }: Task, resource: number, other: number): boolean =>
  !pauses &&
  uses
    .filter((use) => use.resource === resource)
    .every(({ from, to }) =>
      uses.some((use) => use.resource === other && use.from <= from && use.to >= to && use.to > use.from),
    );

/**
 * When a resource must stand still while another is away. What begins a chain and ends while those are away who go on with it must
 * end so late that the chain is done within its limit once they are back: it cannot have begun yet; and what needs the other all along
 * cannot be done either. Holds for schedules whose chains are within their limits, as all are that are decoded.
 */
export function standstillOf(
  { tasks, chains, resources }: ScheduleProblem,
  resource: number,
  other: number,
): Standstill {
  const gaps = allAway(resources[other]?.units.map(({ away }) => away) ?? [[]]);
  /** How long before the other is back each chain's first task must begin, if it ends while that one is away. */
  const leads = new Map<number, number>();
  for (const { tasks: chained, limit } of chains) {
    const [first = -1, ...behind] = chained;
    const waits = behind.findIndex((task) =>
      tasks[task]?.uses.some((use) => use.resource === other && use.from === 0 && use.to > 0),
    );
    const own = tasks[first];
    if (!own || own.pauses || waits < 0 || chained.some((task) => tasks[task]?.fixed)) continue;
    const lengthOf = (some: readonly number[]) =>
      some.reduce((sum, task) => sum + (tasks[task]?.duration ?? 0), 0);
    const longest = Math.max(limit, lengthOf(behind.slice(0, -1)));
    leads.set(first, Math.max(0, longest - lengthOf(behind.slice(waits, -1))) + own.duration);
  }
  const held = tasks.map(
    (task, index) =>
      task.fixed === null &&
      task.uses.some((use) => use.resource === resource) &&
      (leads.has(index) || needsAlong(task, resource, other)),
  );
  const lead = Math.max(0, ...tasks.flatMap((_, index) => (held[index] ? (leads.get(index) ?? 0) : [])));
  return {
    away: gaps.flatMap(({ from, to }) => (to - lead > from ? [{ from, to: to - lead, cold: false }] : [])),
    isHeld: (task) => held[task] ?? false,
  };
}
