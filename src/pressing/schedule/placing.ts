import type { Block } from './blocks';
import { mayTake, type Schedule, type ScheduleProblem, type Task, type Use } from './problem';
import { Unit } from './unit';

const NONE: Pick<Task, 'uses' | 'pauses'> = { uses: [], pauses: false };

/** The places of each resource's units, those first to which the fewest uses are bound: the others are left to these. */
function placesByNeed({ tasks, resources }: ScheduleProblem): number[][] {
  const need = resources.map(() => new Map<number, number>());
  for (const { resource, units, from, to } of tasks.flatMap(({ uses }) => uses)) {
    for (const place of units ?? [])
      need[resource]?.set(place, (need[resource].get(place) ?? 0) + (to - from) / (units?.length ?? 1));
  }
  return resources.map(({ units }, resource) => {
    const needOf = (place: number) => need[resource]?.get(place) ?? 0;
    return units.map((_, place) => place).sort((a, b) => needOf(a) - needOf(b));
  });
}

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
  /** The places of each resource's units, those that the fewest uses are bound to first. */
  private readonly places: readonly (readonly number[])[];

  /** @throws RangeError if no unit may take a use */
  constructor(problem: ScheduleProblem) {
    const { tasks, resources, now } = problem;
    const uses = resources.map(() => 0);
    for (const task of tasks)
      for (const { resource } of task.uses) uses[resource] = (uses[resource] ?? 0) + 1;
    this.problem = problem;
    this.units = resources.map(({ units, setup }, resource) =>
      units.map((unit) => new Unit({ ...unit, free: Math.max(unit.free, now) }, setup, uses[resource] ?? 0)),
    );
    this.places = placesByNeed(problem);
    for (const { uses } of tasks) {
      for (const use of uses)
        if (this.placesFor(use).length === 0)
          throw new RangeError(`no unit of resource ${use.resource} may take what uses it`);
    }
    this.starts = tasks.map(({ fixed }) => fixed?.start ?? 0);
    this.ends = tasks.map(({ fixed }) => fixed?.end ?? 0);
    this.taken = tasks.map((task) => task.uses.map(() => 0));
    this.clear();
  }

  /** The places of the units that may take a use. */
  private placesFor(use: Use): number[] {
    return (this.places[use.resource] ?? []).filter((place) => mayTake(use, place));
  }

  /** The units that may take a use. */
  private unitsFor({ resource, units }: Use): readonly Unit[] {
    const own = this.units[resource] ?? [];
    return units === null ? own : units.flatMap((place) => own[place] ?? []);
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
    this.taken[index] = uses.map((use) => {
      const { resource, from, to, setting } = use;
      const begin = Math.max(now, fixed.start + from);
      const end = Math.min(fixed.end, Math.max(begin, fixed.start + to));
      const own = this.units[resource] ?? [];
      const places = this.placesFor(use);
      const free = places.find((place) => own[place]?.isFree(begin, end)) ?? places[0] ?? 0;
      own[free]?.take(begin, end, setting);
      return free;
    });
  }

  /** The earliest time from a time on at which all uses of a task are free together. */
  private earliest({ uses, pauses }: Task, time: number): number {
    let start = time;
    for (let moved = true; moved; ) {
      moved = false;
      for (const use of uses) {
        const { from, to, setting } = use;
        let earliest = Number.POSITIVE_INFINITY;
        for (const unit of this.unitsFor(use)) {
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

  /** Of the units that may take a use and are free at a time the one that takes least to set up, or of what pauses ends it soonest. */
  private unitFor(use: Use, start: number, pauses: boolean): number {
    const { resource, from, to, setting } = use;
    const own = this.units[resource] ?? [];
    if (own.length === 1) return 0;
    const places = this.placesFor(use);
    let [best = 0] = places;
    let least = Number.POSITIVE_INFINITY;
    for (const place of places) {
      const unit = own[place];
      if (!unit || unit.earliest(start + from, to - from, setting, pauses) > start + from) continue;
      const cost = pauses ? unit.endOf(start, to) : unit.setupBefore(start + from, setting);
      if (cost < least) {
        least = cost;
        best = place;
      }
    }
    return best;
  }

  /** When a task that pauses ends the soonest, and when it then begins. */
  private soonestEnd({ duration }: Task, use: Use, time: number): { start: number; end: number } {
    let best = { start: time, end: Number.POSITIVE_INFINITY };
    for (const unit of this.unitsFor(use)) {
      const start = unit.earliest(time, duration, use.setting, true);
      const end = unit.endOf(start, duration);
      if (end < best.end) best = { start, end };
    }
    return best;
  }

  /** When a task begins and ends from a time on, with what is taken so far. */
  private timesOf(task: Task, time: number): { start: number; end: number } {
    const [only] = task.uses;
    if (task.pauses && only) return this.soonestEnd(task, only, time);
    const start = this.earliest(task, time);
    return { start, end: start + task.duration };
  }

  /** The least time at which a task may begin and that at which it may end from a time on, with what is taken so far. */
  soonest(task: Task, time: number): { start: number; end: number } {
    return { start: this.earliest(task, time), end: this.timesOf(task, time).end };
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
      const { start, end } = this.timesOf(task, earliest);
      reached = end;
      this.starts[index] = start;
      this.ends[index] = end;
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
