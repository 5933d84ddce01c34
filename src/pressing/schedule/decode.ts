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

/** Times for the tasks of a problem, given block by block. */
class Placing {
  readonly starts: number[];
  readonly ends: number[];
  readonly taken: (readonly number[])[];
  private readonly problem: ScheduleProblem;
  private readonly units: readonly (readonly Unit[])[];

  constructor(problem: ScheduleProblem) {
    const { tasks, resources, now } = problem;
    this.problem = problem;
    this.units = resources.map(({ units, setup }) =>
      units.map(({ free, setting }) => new Unit(Math.max(free, now), setting, setup)),
    );
    this.starts = tasks.map(({ fixed }) => fixed?.start ?? 0);
    this.ends = tasks.map(({ fixed }) => fixed?.end ?? 0);
    this.taken = tasks.map(({ uses }) => uses.map(() => 0));
    for (const [index, task] of tasks.entries()) this.hold(task, index);
  }

  /** What is begun and not done yet keeps its units to its end. */
  private hold({ fixed, uses }: Task, index: number): void {
    const { now } = this.problem;
    if (!fixed || fixed.end <= now) return;
    this.taken[index] = uses.map(({ resource, from, to, setting }) => {
      const begin = Math.max(now, fixed.start + from);
      const end = Math.min(fixed.end, Math.max(begin, fixed.start + to));
      const own = this.units[resource] ?? [];
      const free = Math.max(
        0,
        own.findIndex((unit) => unit.earliest(begin, end - begin, setting) <= begin),
      );
      own[free]?.take(begin, end, setting);
      return free;
    });
  }

  /** The slots of a block's tasks, one after the other, at the earliest from a time on. */
  private slotsFrom(block: Block, from: number): Slot[] {
    const { tasks, now } = this.problem;
    const slots: Slot[] = [];
    let reached = from;
    for (const index of block.tasks) {
      const task = tasks[index];
      if (!task) continue;
      let earliest = Math.max(now, reached);
      for (const { task: before, lag } of task.after) {
        const slot = slots[block.tasks.indexOf(before)];
        const end = slot ? slot.start + (tasks[before]?.duration ?? 0) : (this.ends[before] ?? 0);
        earliest = Math.max(earliest, end + lag);
      }
      const slot = slotOf(this.units, task, earliest);
      slots.push(slot);
      reached = slot.start + task.duration;
    }
    return slots;
  }

  /** The earliest slots of a block. A chain whose wait would be too long begins later. */
  slots(block: Block): Slot[] {
    const { tasks, now } = this.problem;
    const lengths = block.tasks.map((index) => tasks[index]?.duration ?? 0);
    const between = lengths.slice(1, -1).reduce((sum, length) => sum + length, 0);
    const limit = block.limit === null ? Number.POSITIVE_INFINITY : Math.max(block.limit, between);
    for (let from = now; ; ) {
      const slots = this.slotsFrom(block, from);
      const first = slots[0]?.start ?? 0;
      const wait = (slots.at(-1)?.start ?? 0) - first - (lengths[0] ?? 0);
      if (wait <= limit) return slots;
      from = first + wait - limit;
    }
  }

  take(block: Block, slots: readonly Slot[]): void {
    block.tasks.forEach((index, at) => {
      const task = this.problem.tasks[index];
      const slot = slots[at];
      if (!task || !slot) return;
      this.starts[index] = slot.start;
      this.ends[index] = slot.start + task.duration;
      this.taken[index] = slot.units;
      task.uses.forEach(({ resource, from, to, setting }, use) => {
        this.units[resource]?.[slot.units[use] ?? 0]?.take(slot.start + from, slot.start + to, setting);
      });
    });
  }
}

/**
 * Gives every task the earliest time at which it can be done, blocks in the order of a sequence (the serial generation scheme:
 * Kolisch, European Journal of Operational Research 90(2), 320-333, 1996).
 * @param sequence blocks, each after those that it waits for
 */
export function decode(
  problem: ScheduleProblem,
  blocks: readonly Block[],
  sequence: readonly number[],
): Schedule {
  const placing = new Placing(problem);
  for (const number of sequence) {
    const block = blocks[number];
    if (block) placing.take(block, placing.slots(block));
  }
  const { starts, ends, taken } = placing;
  return { starts, ends, units: taken, sequence, ...judge(problem, starts, ends) };
}

/**
 * A sequence in which what can begin soonest comes next, of several the one with the smaller key (the parallel generation scheme,
 * ibid.): no worker waits while there is something to do.
 */
export function dispatch(
  problem: ScheduleProblem,
  blocks: readonly Block[],
  isSooner: (a: number, b: number) => boolean,
): number[] {
  const placing = new Placing(problem);
  const waiting = blocks.map(({ before }) => before.length);
  const ready = blocks.flatMap((_, index) => (waiting[index] === 0 ? [index] : []));
  const sequence: number[] = [];
  while (ready.length > 0) {
    let chosen = { at: 0, slots: [] as Slot[], start: Number.POSITIVE_INFINITY };
    ready.forEach((number, at) => {
      const block = blocks[number];
      if (!block) return;
      const slots = placing.slots(block);
      const start = slots[0]?.start ?? 0;
      const isNext =
        start < chosen.start || (start === chosen.start && isSooner(number, ready[chosen.at] ?? 0));
      if (isNext) chosen = { at, slots, start };
    });
    const [number = 0] = ready.splice(chosen.at, 1);
    const block = blocks[number];
    if (!block) break;
    placing.take(block, chosen.slots);
    sequence.push(number);
    for (const follower of block.after) {
      waiting[follower] = (waiting[follower] ?? 0) - 1;
      if (waiting[follower] === 0) ready.push(follower);
    }
  }
  return sequence;
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
