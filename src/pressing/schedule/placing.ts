import type { Block } from './blocks';
import { Delays } from './delays';
import { mayTake, type Schedule, type ScheduleProblem, type Task } from './problem';
import { Shelves } from './shelves';
import { Unit } from './unit';

/** A use made ready: thousands of times a second it is asked for the units that may take it. */
interface Hold {
  readonly from: number;
  readonly to: number;
  readonly setting: number;
  /** Where it is noted which unit it takes: a place of its own among all uses. */
  readonly slot: number;
  /** The units that may take it, those that the fewest uses are bound to first, and their places among those of the resource. */
  readonly units: readonly Unit[];
  readonly places: readonly number[];
  /** Whether one of several units is chosen by what it takes to set it up. */
  readonly isChosenBySetup: boolean;
}

/** A task made ready. */
interface Ready {
  readonly duration: number;
  readonly pauses: boolean;
  readonly holds: readonly Hold[];
  readonly after: Task['after'];
  /** Whether it puts something on a shelf, or takes it up. */
  readonly isShelved: boolean;
}

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

/** All units of a problem, each of which is taken by every use of its resource at the most. */
function unitsOf({ tasks, resources, now }: ScheduleProblem): Unit[][] {
  const uses = resources.map(() => 0);
  for (const task of tasks) for (const { resource } of task.uses) uses[resource] = (uses[resource] ?? 0) + 1;
  return resources.map(({ units }, resource) =>
    units.map((unit) => new Unit({ ...unit, free: Math.max(unit.free, now) }, uses[resource] ?? 0)),
  );
}

/**
 * Times for the tasks of a problem, given block by block. One is made for a problem and used again for each of its schedules:
 * thousands are built in a second.
 */
export class Placing {
  readonly starts: Float64Array;
  readonly ends: Float64Array;
  /** Which of the units that may take it each use takes, by its slot: uses are counted through all tasks. */
  readonly taken: Int32Array;
  private readonly problem: ScheduleProblem;
  private readonly units: readonly Unit[];
  private readonly tasks: readonly Ready[];
  private readonly shelves: Shelves;
  private readonly delays: Delays;
  /** Tasks that are begun and not done yet. */
  private readonly begun: readonly number[];

  /** @throws RangeError if no unit may take a use */
  constructor(problem: ScheduleProblem) {
    const { tasks, resources, now } = problem;
    const units = unitsOf(problem);
    const byNeed = placesByNeed(problem);
    let slots = 0;
    this.problem = problem;
    this.units = units.flat();
    this.shelves = new Shelves(problem);
    this.delays = new Delays(problem);
    this.tasks = tasks.map(({ duration, pauses, uses, after }, index) => ({
      duration,
      pauses,
      after,
      isShelved: this.shelves.isFor(index),
      holds: uses.map((use): Hold => {
        const { resource, from, to, setting } = use;
        const places = (byNeed[resource] ?? []).filter((place) => mayTake(use, place));
        if (places.length === 0)
          throw new RangeError(`no unit of resource ${resource} may take what uses it`);
        slots += 1;
        return {
          from,
          to,
          setting,
          slot: slots - 1,
          units: places.flatMap((place) => units[resource]?.[place] ?? []),
          places,
          isChosenBySetup:
            places.length > 1 && places.some((place) => resources[resource]?.units[place]?.setup),
        };
      }),
    }));
    this.starts = Float64Array.from(tasks, ({ fixed }) => fixed?.start ?? 0);
    this.ends = Float64Array.from(tasks, ({ fixed }) => fixed?.end ?? 0);
    this.taken = new Int32Array(slots);
    this.begun = tasks.flatMap(({ fixed }, index) => (fixed && fixed.end > now ? [index] : []));
    this.clear();
  }

  /** Takes back all that is not fixed. */
  clear(): void {
    this.delays.reset();
    this.takeBack();
  }

  /**
   * Takes back all where a stint would go on while its unit is switched off, and lets that one begin later.
   * @returns whether there was one: then all must be placed anew
   */
  putOff(): boolean {
    const isLater = this.delays.putOff(this.starts);
    if (isLater) this.takeBack();
    return isLater;
  }

  /** Whether a stint begins later than it could. */
  isPutOff(): boolean {
    return this.delays.isSome();
  }

  private takeBack(): void {
    for (const unit of this.units) unit.clear();
    this.shelves.reset();
    for (const index of this.begun) this.keep(index);
  }

  /** What is begun and not done yet keeps its units to its end. */
  private keep(index: number): void {
    const { now } = this.problem;
    const [start, last] = [this.starts[index] ?? 0, this.ends[index] ?? 0];
    for (const { from, to, setting, slot, units } of this.tasks[index]?.holds ?? []) {
      const begin = Math.max(now, start + from);
      const end = Math.min(last, Math.max(begin, start + to));
      const free = Math.max(
        0,
        units.findIndex((unit) => unit.isFree(begin, end)),
      );
      units[free]?.take(begin, end, setting);
      this.taken[slot] = free;
    }
  }

  /** The earliest time from one on at which a use of a task that would begin then is free; notes the unit. */
  private earliestOf({ from, to, setting, slot, units }: Hold, time: number, pauses: boolean): number {
    let earliest = Number.POSITIVE_INFINITY;
    for (let at = 0; at < units.length; at += 1) {
      const own = (units[at]?.earliest(time + from, to - from, setting, pauses) ?? 0) - from;
      if (own >= earliest) continue;
      earliest = own;
      this.taken[slot] = at;
      if (own <= time) return time;
    }
    return earliest;
  }

  /** The earliest time from a time on at which all uses of a task are free together. */
  private earliest({ holds, pauses }: Ready, time: number): number {
    let start = time;
    let agreed = 0;
    for (let at = 0; agreed < holds.length; at = at + 1 < holds.length ? at + 1 : 0) {
      const hold = holds[at];
      const earliest = hold ? this.earliestOf(hold, start, pauses) : start;
      agreed = earliest > start ? 1 : agreed + 1;
      start = earliest;
    }
    return start;
  }

  /** When a task that pauses ends the soonest from a time on, and when it then begins; notes the unit. */
  private setPausing(index: number, duration: number, hold: Hold, time: number): void {
    this.ends[index] = Number.POSITIVE_INFINITY;
    for (let at = 0; at < hold.units.length; at += 1) {
      const unit = hold.units[at];
      if (!unit) continue;
      const start = unit.earliest(time, duration, hold.setting, true);
      const end = unit.endOf(start, duration);
      if (end >= (this.ends[index] ?? 0)) continue;
      this.starts[index] = start;
      this.ends[index] = end;
      this.taken[hold.slot] = at;
    }
  }

  /** Gives a task the earliest times from a time on, with what is taken so far; notes which units it takes but for those chosen by set-up. */
  private setTask(index: number, task: Ready, time: number): void {
    const [only] = task.holds;
    if (task.pauses && only) this.setPausing(index, task.duration, only, time);
    else {
      const start = this.earliest(task, time);
      this.starts[index] = start;
      this.ends[index] = start + task.duration;
    }
  }

  /** The least time at which a task may begin and that at which it may end from a time on, with what is taken so far. */
  soonest(index: number, time: number): { start: number; end: number } {
    const task = this.tasks[index];
    if (!task) return { start: time, end: time };
    this.setTask(index, task, time);
    return { start: this.earliest(task, time), end: this.ends[index] ?? 0 };
  }

  /** Gives a block's tasks the earliest times, one after the other, from a time on. */
  private setFrom(block: Block, from: number): void {
    let reached = from;
    for (const index of block.tasks) {
      const task = this.tasks[index];
      if (!task) continue;
      let earliest = task.isShelved ? Math.max(reached, this.shelves.freeFrom(index)) : reached;
      for (const { task: before, lag } of task.after) {
        const ready = (this.ends[before] ?? 0) + lag;
        if (ready > earliest) earliest = ready;
      }
      this.setTask(index, task, earliest);
      reached = this.ends[index] ?? 0;
    }
  }

  /** Whether a block finds the places that it needs on shelves, once what has its times already is taken up. */
  mayTake({ tasks }: Block): boolean {
    for (const index of tasks) {
      if (this.tasks[index]?.isShelved && !this.shelves.mayTake(index)) return false;
    }
    return true;
  }

  /**
   * Gives a block's tasks the earliest times; nothing is taken yet. A chain whose wait would be too long begins later.
   * @returns when its first task begins
   */
  set(block: Block): number {
    const { limit, between, tasks } = block;
    const first = tasks[0] ?? 0;
    const last = tasks[tasks.length - 1] ?? first;
    const longest = limit === null ? Number.POSITIVE_INFINITY : Math.max(limit, between);
    for (let from = this.delays.of(first); ; ) {
      this.setFrom(block, from);
      const start = this.starts[first] ?? 0;
      const wait = last === first ? 0 : (this.starts[last] ?? 0) - (this.ends[first] ?? 0);
      if (wait <= longest) return start;
      from = start + wait - longest;
    }
  }

  /** Of the units that may take a use and are free then the one that takes least to set up. */
  private chooseBySetup({ from, to, setting, slot, units }: Hold, start: number, pauses: boolean): void {
    let least = Number.POSITIVE_INFINITY;
    for (let at = 0; at < units.length; at += 1) {
      const unit = units[at];
      if (!unit || unit.earliest(start + from, to - from, setting, pauses) > start + from) continue;
      const setup = unit.setupBefore(start + from, setting);
      if (setup >= least) continue;
      least = setup;
      this.taken[slot] = at;
    }
  }

  private unitOf({ slot, units }: Hold): Unit | undefined {
    return units[this.taken[slot] ?? 0];
  }

  /**
   * Takes the units of a block at the times that are set just before.
   * @returns whether others may now begin sooner: a unit was set up, or places of a shelf were given back
   */
  take(block: Block): boolean {
    let isEased = false;
    for (const index of block.tasks) {
      const task = this.tasks[index];
      if (!task) continue;
      const start = this.starts[index] ?? 0;
      // All are chosen before the first is taken: two uses may be of one resource, one behind the other.
      for (const hold of task.holds) {
        const { setting, from, isChosenBySetup } = hold;
        if (isChosenBySetup && !task.pauses) this.chooseBySetup(hold, start, task.pauses);
        isEased ||= setting > 0 && (this.unitOf(hold)?.setupBefore(start + from, setting) ?? 0) > 0;
      }
      this.takeNoted(task, start, this.ends[index] ?? 0);
      if (task.isShelved && this.shelves.take(index, start)) isEased = true;
    }
    return isEased;
  }

  /** Takes the units that are noted for a task; one that pauses keeps its unit to the end. */
  private takeNoted({ holds, pauses }: Ready, start: number, end: number): void {
    for (const hold of holds) {
      this.unitOf(hold)?.take(start + hold.from, pauses ? end : start + hold.to, hold.setting);
    }
  }

  /** Takes for a block what it had in another schedule of the same problem. */
  takeAs(block: Block, { starts, ends, taken }: Pick<Placing, 'starts' | 'ends' | 'taken'>): void {
    for (const index of block.tasks) {
      const task = this.tasks[index];
      if (!task) continue;
      const start = starts[index] ?? 0;
      const end = ends[index] ?? 0;
      this.starts[index] = start;
      this.ends[index] = end;
      for (const { slot } of task.holds) this.taken[slot] = taken[slot] ?? 0;
      this.takeNoted(task, start, end);
      if (task.isShelved) this.shelves.take(index, start);
    }
  }

  /** The places of the units that the uses of each task take. */
  placesOf(taken: Int32Array): Schedule['units'] {
    return this.tasks.map(({ holds }) => holds.map(({ slot, places }) => places[taken[slot] ?? 0] ?? 0));
  }
}
