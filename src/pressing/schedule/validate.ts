import { awayBetween, isColdBetween } from './away';
import { firstSetup, mayTake, type Schedule, type ScheduleProblem, setupTime } from './problem';

/** What is wrong with a schedule. */
export type ScheduleFault =
  | { readonly code: 'too-soon'; readonly task: number }
  | { readonly code: 'before-other'; readonly task: number; readonly other: number }
  | { readonly code: 'wrong-length'; readonly task: number }
  | { readonly code: 'at-once'; readonly task: number; readonly other: number; readonly resource: number }
  | { readonly code: 'away' | 'wrong-unit'; readonly task: number; readonly resource: number }
  | { readonly code: 'no-place'; readonly task: number; readonly shelf: number }
  | { readonly code: 'mixed'; readonly task: number; readonly other: number };

/** For how long a task holds a unit. */
interface HeldUse {
  readonly task: number;
  readonly fixed: boolean;
  readonly pauses: boolean;
  readonly setting: number;
  readonly from: number;
  readonly to: number;
}

/**
 * Checks a schedule from its times alone: precedence, lengths, that each use is on a unit that may take it, that no unit does two
 * things at once, without set-up or while it is away, that no lane is mixed with another of its resource, and that no shelf is too full.
 */
export function validateSchedule(
  { tasks, resources, lanes, shelves, now }: ScheduleProblem,
  { starts, ends, units }: Pick<Schedule, 'starts' | 'ends' | 'units'>,
): ScheduleFault[] {
  const faults: ScheduleFault[] = [];
  const awayOf = (task: number, use: number) => {
    const resource = tasks[task]?.uses[use]?.resource ?? -1;
    return resources[resource]?.units[units[task]?.[use] ?? 0]?.away ?? [];
  };
  tasks.forEach(({ duration, uses, after, fixed, pauses }, task) => {
    const start = starts[task] ?? Number.NaN;
    for (const [at, use] of uses.entries()) {
      const { resource } = use;
      if (!mayTake(use, units[task]?.[at] ?? -1)) faults.push({ code: 'wrong-unit', task, resource });
    }
    if (fixed) {
      if (start !== fixed.start || ends[task] !== fixed.end) faults.push({ code: 'wrong-length', task });
      return;
    }
    if (!(start >= now)) faults.push({ code: 'too-soon', task });
    const end = ends[task] ?? Number.NaN;
    const paused = pauses ? awayBetween(awayOf(task, 0), start, end) : 0;
    if (end !== start + duration + paused) faults.push({ code: 'wrong-length', task });
    for (const { task: other, lag } of after) {
      if (start < (ends[other] ?? Number.NaN) + lag) faults.push({ code: 'before-other', task, other });
    }
  });
  for (const [at, one] of lanes.entries()) {
    for (const other of lanes.slice(at + 1)) {
      if (other.resource !== one.resource) continue;
      const isFirst = (ends[one.last] ?? 0) <= (starts[other.first] ?? 0) && one.rank <= other.rank;
      const isSecond = (ends[other.last] ?? 0) <= (starts[one.first] ?? 0) && other.rank <= one.rank;
      if (!isFirst && !isSecond) faults.push({ code: 'mixed', task: one.first, other: other.first });
    }
  }
  shelves.forEach(({ places, loads }, shelf) => {
    const lying = loads.flatMap(({ fills, clearedBy, lag }) =>
      fills.map((task) => ({
        task,
        from: starts[task] ?? Number.NaN,
        to: (starts[clearedBy] ?? Number.NaN) + lag,
        // What is begun already may have been so without regard to places.
        isTold: fills.some((other) => tasks[other]?.fixed),
      })),
    );
    for (const { task, from, isTold } of lying) {
      const count = lying.filter((other) => other.from <= from && other.to > from).length;
      if (!isTold && count > places) faults.push({ code: 'no-place', task, shelf });
    }
  });
  resources.forEach(({ units: own }, resource) => {
    own.forEach((unit, index) => {
      const held: HeldUse[] = [];
      for (const [task, { uses, fixed, pauses }] of tasks.entries()) {
        if (fixed && fixed.end <= now) continue;
        for (const [at, use] of uses.entries()) {
          if (use.resource !== resource || units[task]?.[at] !== index) continue;
          const [start, end] = [starts[task] ?? 0, ends[task] ?? 0];
          const from = start + use.from;
          const to = pauses ? end : Math.min(end, start + use.to);
          if (to > from) held.push({ task, fixed: fixed !== null, pauses, setting: use.setting, from, to });
        }
      }
      held.sort((a, b) => a.from - b.from);
      held.forEach(({ task, from, to, setting, fixed, pauses }, at) => {
        if (fixed) return;
        const before = held[at - 1];
        const end = before?.to ?? Math.max(unit.free, now);
        const isCold = isColdBetween(unit.away, end, from);
        const on = isCold
          ? Math.max(...unit.away.flatMap((gap) => (gap.cold && gap.to <= from ? gap.to : [])))
          : end;
        const changeFrom = (known: number | null) => (unit.setup ? setupTime(unit.setup, known, setting) : 0);
        const change = isCold
          ? changeFrom(null)
          : before
            ? changeFrom(before.setting)
            : firstSetup(unit, setting);
        if (from < on + change) faults.push({ code: 'at-once', task, other: before?.task ?? task, resource });
        if (awayBetween(unit.away, from, pauses ? from + 1 : to) > 0)
          faults.push({ code: 'away', task, resource });
      });
    });
  });
  return faults;
}
