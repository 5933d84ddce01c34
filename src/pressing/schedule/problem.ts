/**
 * A schedule in general terms: tasks with precedence over resources of several units, some of which must be set up between
 * tasks, and each of which may be away for a time. All times are whole seconds from the start of the schedule. Plain data, so that
 * it can be handed to a worker.
 */
export interface ScheduleProblem {
  /** Nothing that is not fixed begins before. */
  readonly now: number;
  readonly tasks: readonly Task[];
  readonly resources: readonly Resource[];
  readonly chains: readonly Chain[];
  readonly waits: readonly Wait[];
  readonly lanes: readonly Lane[];
  readonly shelves: readonly Shelf[];
  readonly stints: readonly Stint[];
  readonly dues: readonly Due[];
}

export interface Task {
  readonly duration: number;
  readonly uses: readonly Use[];
  /** Tasks that end before this one begins, and how long after them it waits at the least. */
  readonly after: readonly { readonly task: number; readonly lag: number }[];
  /** It may be left and gone on with where its unit is away meanwhile; only where it has a single use, all the time. */
  readonly pauses: boolean;
  /** When it was begun and done, or will be done, if it is begun already. */
  readonly fixed: { readonly start: number; readonly end: number } | null;
}

/** A unit of a resource held for a part of a task: `from` and `to` count from the task's start. */
export interface Use {
  readonly resource: number;
  readonly from: number;
  readonly to: number;
  /** Which units of the resource may take it, by their places, at least one; `null` for any. */
  readonly units: readonly number[] | null;
  /** What the unit must be set to; only where the units have a {@link Setup}. */
  readonly setting: number;
}

export interface Resource {
  readonly units: readonly Available[];
}

/** When a unit can be had, and what it takes to set it up. */
export interface Available {
  /** Taken until then. */
  readonly free: number;
  /** `null` where it need not be set up. */
  readonly setup: Setup | null;
  /** What it is set to at first; `null` if it is cold. */
  readonly setting: number | null;
  /** For so long it has been warming up, if it is cold at first. */
  readonly warmed: number;
  /** The earliest first, none touching another. */
  readonly away: readonly Away[];
}

/** When a unit cannot be had. */
export interface Away {
  readonly from: number;
  readonly to: number;
  /** It is switched off meanwhile, and must be set up anew. */
  readonly cold: boolean;
}

/** How long it takes to bring a unit from one setting to another, in which it can do nothing else. */
export interface Setup {
  /** From cold, to any setting. */
  readonly cold: number;
  /** For each step up and down. */
  readonly rise: number;
  readonly fall: number;
}

/** Tasks that follow one another closely: from the end of the first to the start of the last no more than `limit` should pass. */
export interface Chain {
  readonly tasks: readonly number[];
  readonly limit: number;
}

/** From the end of one task to the start of another no more than `limit` should pass; tasks of others may come between. */
export interface Wait {
  readonly from: number;
  readonly to: number;
  readonly limit: number;
}

/**
 * Tasks on a resource that no other lane's of it come between, none of them fixed: a lane is through to its last before another's
 * first begins. Lanes of two resources have nothing to do with each other.
 */
export interface Lane {
  readonly resource: number;
  readonly first: number;
  readonly last: number;
  /** Lanes of a lower rank come first; the order of those of one rank is free. */
  readonly rank: number;
}

/** Places in which what tasks leave behind lies until others take it up. */
export interface Shelf {
  readonly places: number;
  readonly loads: readonly ShelfLoad[];
}

/** What is taken up at once: it has a place for each of its tasks from the start of that one on, and waits for no load behind it. */
export interface ShelfLoad {
  /** No more than there are places; no two in one chain. */
  readonly fills: readonly number[];
  /** The task that takes it up, behind all of them: its places are free so long after the start of that one. */
  readonly clearedBy: number;
  readonly lag: number;
}

/**
 * What is done at one go: once the first task has begun, all others should begin before its unit is switched off. Where that cannot be
 * the first begins when the unit is on again, unless it is in vain then too.
 */
export interface Stint {
  readonly first: number;
  readonly tasks: readonly number[];
}

/** When a task should be done; each second later counts `weight` times. */
export interface Due {
  readonly task: number;
  /** `null`: as soon as it can be without making late what has a time. */
  readonly at: number | null;
  readonly weight: number;
}

/** When each task begins and ends, and which unit each of its uses takes. */
export interface Schedule {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly units: readonly (readonly number[])[];
  /** The order in which the blocks were given their times. */
  readonly sequence: readonly number[];
  /** When the last task ends. */
  readonly makespan: number;
  /** Seconds by which chains and waits take longer than they should, and tasks end after they are due, weighted. */
  readonly overLimit: number;
  readonly late: number;
  /** What the search makes small. */
  readonly cost: number;
}

/** How long it takes to set a unit up for what it does first. */
export function firstSetup(
  { setup, setting, warmed }: Pick<Available, 'setup' | 'setting' | 'warmed'>,
  to: number,
): number {
  if (setup === null) return 0;
  return setting === null ? Math.max(0, setup.cold - warmed) : setupTime(setup, setting, to);
}

/** Whether a unit of its resource may take a use. */
export const mayTake = ({ units }: Use, unit: number): boolean => units === null || units.includes(unit);

export const setupTime = (setup: Setup, from: number | null, to: number): number =>
  from === null ? setup.cold : to > from ? (to - from) * setup.rise : (from - to) * setup.fall;
