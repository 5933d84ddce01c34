import type { Block } from './blocks';
import type { Schedule, ScheduleProblem, Task, Use } from './problem';
import { Unit } from './unit';

const NONE: Pick<Task, 'uses' | 'pauses'> = { uses: [], pauses: false };

/**
 * Times for the tasks of a problem, given block by block. One is made for a problem and used again for each of its schedules:
 * thousands are built in a second.
 */
export class Placing {
  readonly starts: number[];
  readonly ends: number[];
  /** Which unit each use of each task takes. */
  readonly taken: (readonly number[])[];
  private readonly problem: ScheduleProblem;
  private readonly units: readonly (readonly Unit[])[];

  constructor(problem: ScheduleProblem) {
    const { tasks, resources, now } = problem;
    const uses = resources.map(() => 0);
    for (const task of tasks)
      for (const { resource } of task.uses) uses[resource] = (uses[resource] ?? 0) + 1;
    this.problem = problem;
    this.units = resources.map(({ units, setup }, resource) =>
      units.map((unit) => new Unit({ ...unit, free: Math.max(unit.free, now) }, setup, uses[resource] ?? 0)),
    );
    this.starts = tasks.map(({ fixed }) => fixed?.start ?? 0);
    this.ends = tasks.map(({ fixed }) => fixed?.end ?? 0);
    this.taken = tasks.map((task) => task.uses.map(() => 0));
    this.clear();
  }

  /** Takes back all that is not fixed. */
  clear(): void {
    for (const own of this.units) for (const unit of own) unit.clear();
    for (const [index, task] of this.problem.tasks.entries()) this.hold(task, index);
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
        own.findIndex((unit) => unit.isFree(begin, end)),
      );
      own[free]?.take(begin, end, setting);
      return free;
    });
  }

  /** The earliest time from a time on at which all uses of a task are free together. */
  private earliest({ uses, pauses }: Task, time: number): number {
    let start = time;
    for (let moved = true; moved; ) {
      moved = false;
      for (const { resource, from, to, setting } of uses) {
        let earliest = Number.POSITIVE_INFINITY;
        for (const unit of this.units[resource] ?? []) {
          earliest = Math.min(earliest, unit.earliest(start + from, to - from, setting, pauses) - from);
          if (earliest <= start) break;
        }
        if (earliest > start) {
          start = earliest;
          moved = true;
        }
      }
    }
    return start;
  }

  /** Of a resource's units that are free at a time the one that takes least to set up. */
  private unitFor({ resource, from, to, setting }: Use, start: number, pauses: boolean): number {
    const own = this.units[resource] ?? [];
    if (own.length === 1) return 0;
    let best = 0;
    let least = Number.POSITIVE_INFINITY;
    own.forEach((unit, index) => {
      if (unit.earliest(start + from, to - from, setting, pauses) > start + from) return;
      const setup = unit.setupBefore(start + from, setting);
      if (setup < least) {
        least = setup;
        best = index;
      }
    });
    return best;
  }

  /** When a task ends that begins at a time at which its units are free. */
  private endOf({ duration, uses: [only], pauses }: Task, start: number): number {
    if (!pauses || !only) return start + duration;
    const own = this.units[only.resource] ?? [];
    return own[this.unitFor(only, start, pauses)]?.endOf(start, duration) ?? start + duration;
  }

  /** When a task begins and ends at the soonest from a time on, with what is taken so far. */
  soonest(task: Task, time: number): { start: number; end: number } {
    const start = this.earliest(task, time);
    const { duration, uses, pauses } = task;
    const [only] = uses;
    if (!pauses || !only) return { start, end: start + duration };
    const ends = (this.units[only.resource] ?? []).map((unit) =>
      unit.endOf(unit.earliest(time, duration, only.setting, pauses), duration),
    );
    return { start, end: Math.min(...ends) };
  }

  /** Gives a block's tasks the earliest times, one after the other, from a time on. */
  private setFrom(block: Block, from: number): void {
    const { tasks, now } = this.problem;
    let reached = Math.max(now, from);
    for (const index of block.tasks) {
      const task = tasks[index];
      if (!task) continue;
      let earliest = reached;
      for (const { task: before, lag } of task.after) {
        earliest = Math.max(earliest, (this.ends[before] ?? 0) + lag);
      }
      const start = this.earliest(task, earliest);
      reached = this.endOf(task, start);
      this.starts[index] = start;
      this.ends[index] = reached;
    }
  }

  /**
   * Gives a block's tasks the earliest times; nothing is taken yet. A chain whose wait would be too long begins later.
   * @returns when its first task begins
   */
  set(block: Block): number {
    const { limit, between } = block;
    const [first = 0] = block.tasks;
    const last = block.tasks.at(-1) ?? first;
    const longest = limit === null ? Number.POSITIVE_INFINITY : Math.max(limit, between);
    for (let from = this.problem.now; ; ) {
      this.setFrom(block, from);
      const start = this.starts[first] ?? 0;
      const wait = last === first ? 0 : (this.starts[last] ?? 0) - (this.ends[first] ?? 0);
      if (wait <= longest) return start;
      from = start + wait - longest;
    }
  }

  /**
   * Takes the units of a block at the times that are set.
   * @returns whether one had to be set up for it
   */
  take(block: Block): boolean {
    let isSetUp = false;
    for (const index of block.tasks) {
      const { uses, pauses } = this.problem.tasks[index] ?? NONE;
      const start = this.starts[index] ?? 0;
      const taken = uses.map((use) => this.unitFor(use, start, pauses));
      this.taken[index] = taken;
      // All are chosen before the first is taken: two uses may be of one resource, one behind the other.
      for (const [use, { resource, from, setting }] of uses.entries()) {
        const unit = this.units[resource]?.[taken[use] ?? 0];
        isSetUp ||= setting > 0 && (unit?.setupBefore(start + from, setting) ?? 0) > 0;
      }
      this.takeAt(index, start, this.ends[index] ?? 0);
    }
    return isSetUp;
  }

  /** Takes the units that are chosen for a task; one that pauses keeps its unit to the end. */
  private takeAt(index: number, start: number, end: number): void {
    const { uses, pauses } = this.problem.tasks[index] ?? NONE;
    for (const [use, { resource, from, to, setting }] of uses.entries()) {
      const unit = this.units[resource]?.[this.taken[index]?.[use] ?? 0];
      unit?.take(start + from, pauses ? end : start + to, setting);
    }
  }

  /** Takes for a block what it has in a schedule of the same problem. */
  takeAs(block: Block, { starts, ends, units }: Pick<Schedule, 'starts' | 'ends' | 'units'>): void {
    for (const index of block.tasks) {
      const start = starts[index] ?? 0;
      this.starts[index] = start;
      this.ends[index] = ends[index] ?? 0;
      this.taken[index] = units[index] ?? [];
      this.takeAt(index, start, ends[index] ?? 0);
    }
  }
}
