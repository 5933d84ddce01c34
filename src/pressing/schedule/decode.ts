import type { Block } from './blocks';
import type { Schedule, ScheduleProblem, Task } from './problem';
import { Unit } from './unit';

/**
 * What a second of each fault costs beside a second of the whole: wet print left too long is spoiled, lateness is worse than
 * a long day, and of equal days the one that has its orders done sooner is better.
 */
const WEIGHT = { overLimit: 10_000, late: 100, meanDue: 0.01 };

/** The time and units a task would take; nothing is taken yet. */
interface Slot {
  readonly start: number;
  readonly units: readonly number[];
}

/** The earliest slot of a task from a time on: all its uses must be free together. */
function slotOf(units: readonly (readonly Unit[])[], task: Task, time: number): Slot {
  let start = time;
  for (let moved = true; moved; ) {
    moved = false;
    for (const { resource, from, to, setting } of task.uses) {
      let earliest = Number.POSITIVE_INFINITY;
      for (const unit of units[resource] ?? []) {
        earliest = Math.min(earliest, unit.earliest(start + from, to - from, setting) - from);
        if (earliest <= start) break;
      }
      if (earliest > start) {
        start = earliest;
        moved = true;
      }
    }
  }
  const chosen = task.uses.map(({ resource, from, to, setting }) => {
    let best = 0;
    let least = Number.POSITIVE_INFINITY;
    (units[resource] ?? []).forEach((unit, index) => {
      if (unit.earliest(start + from, to - from, setting) > start + from) return;
      const setup = unit.setupBefore(start + from, setting);
      if (setup < least) {
        least = setup;
        best = index;
      }
    });
    return best;
  });
  return { start, units: chosen };
}

/**
 * Gives every task the earliest time at which it can be done, blocks in the order of a sequence (the serial generation scheme:
 * Kolisch, European Journal of Operational Research 90(2), 320-333, 1996). A chain whose wait would be too long begins later.
 * @param sequence blocks, each after those that it waits for
 */
export function decode(
  problem: ScheduleProblem,
  blocks: readonly Block[],
  sequence: readonly number[],
): Schedule {
  const { tasks, now } = problem;
  const units = problem.resources.map(({ units: own, setup }) =>
    own.map(({ free, setting }) => new Unit(Math.max(free, now), setting, setup)),
  );
  const starts = tasks.map(({ fixed }) => fixed?.start ?? 0);
  const ends = tasks.map(({ fixed }) => fixed?.end ?? 0);
  const taken: (readonly number[])[] = tasks.map(({ uses }) => uses.map(() => 0));

  const take = (index: number, { start, units: chosen }: Slot) => {
    const task = tasks[index];
    if (!task) return;
    starts[index] = start;
    ends[index] = start + task.duration;
    taken[index] = chosen;
    task.uses.forEach(({ resource, from, to, setting }, use) => {
      units[resource]?.[chosen[use] ?? 0]?.take(start + from, start + to, setting);
    });
  };

  // What is begun and not done yet keeps its units to its end.
  tasks.forEach(({ fixed, uses }, index) => {
    if (!fixed || fixed.end <= now) return;
    taken[index] = uses.map(({ resource, from, to, setting }) => {
      const begin = Math.max(now, fixed.start + from);
      const end = Math.min(fixed.end, Math.max(begin, fixed.start + to));
      const own = units[resource] ?? [];
      const free = own.findIndex((unit) => unit.earliest(begin, end - begin, setting) <= begin);
      own[Math.max(0, free)]?.take(begin, end, setting);
      return Math.max(0, free);
    });
  });

  for (const number of sequence) {
    const block = blocks[number];
    if (!block) continue;
    let from = now;
    for (;;) {
      const slots: Slot[] = [];
      let reached = from;
      let least = 0;
      block.tasks.forEach((index, at) => {
        const task = tasks[index];
        if (!task) return;
        let earliest = at === 0 ? from : now;
        for (const { task: before, lag } of task.after) {
          const inBlock = block.tasks.indexOf(before);
          const slot = inBlock >= 0 ? slots[inBlock] : undefined;
          const end = slot ? slot.start + (tasks[before]?.duration ?? 0) : (ends[before] ?? 0);
          earliest = Math.max(earliest, end + lag);
        }
        if (at > 0) earliest = Math.max(earliest, reached);
        const slot = slotOf(units, task, earliest);
        slots.push(slot);
        reached = slot.start + task.duration;
        if (at > 0 && at < block.tasks.length - 1) least += task.duration;
      });
      const [first] = slots;
      const last = slots.at(-1);
      if (!first || !last) break;
      const wait = last.start - first.start - (tasks[block.tasks[0] ?? 0]?.duration ?? 0);
      if (block.limit === null || wait <= Math.max(block.limit, least)) {
        block.tasks.forEach((index, at) => {
          const slot = slots[at];
          if (slot) take(index, slot);
        });
        break;
      }
      from = first.start + wait - Math.max(block.limit, least);
    }
  }
  return { starts, ends, units: taken, sequence, ...judge(problem, starts, ends) };
}

/** How good a schedule is. */
function judge(
  { tasks, chains, dues, now }: ScheduleProblem,
  starts: readonly number[],
  ends: readonly number[],
): Pick<Schedule, 'makespan' | 'overLimit' | 'late' | 'cost'> {
  let makespan = now;
  for (const end of ends) makespan = Math.max(makespan, end);
  let overLimit = 0;
  for (const { tasks: chained, limit } of chains) {
    const last = chained.at(-1) ?? 0;
    // What has been powdered already cannot be powdered sooner.
    if (tasks[last]?.fixed) continue;
    overLimit += Math.max(0, (starts[last] ?? 0) - (ends[chained[0] ?? 0] ?? 0) - limit);
  }
  let late = 0;
  let sum = 0;
  for (const { task, at, weight } of dues) {
    const end = ends[task] ?? 0;
    late += weight * Math.max(0, end - at);
    sum += end;
  }
  const cost =
    WEIGHT.overLimit * overLimit +
    WEIGHT.late * late +
    makespan +
    (WEIGHT.meanDue * sum) / Math.max(1, dues.length);
  return { makespan, overLimit, late, cost };
}
