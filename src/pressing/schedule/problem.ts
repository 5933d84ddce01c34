/**
 * A schedule in general terms: tasks with precedence over resources of several units, some of which must be set up between
 * tasks. All times are whole seconds from the start of the schedule. Plain data, so that it can be handed to a worker.
 */
export interface ScheduleProblem {
  /** Nothing that is not fixed begins before. */
  readonly now: number;
  readonly tasks: readonly Task[];
  readonly resources: readonly Resource[];
  readonly chains: readonly Chain[];
  readonly dues: readonly Due[];
}

export interface Task {
  readonly duration: number;
  readonly uses: readonly Use[];
  /** Tasks that end before this one begins, and how long after them it waits at the least. */
  readonly after: readonly { readonly task: number; readonly lag: number }[];
  /** When it was begun and done, or will be done, if it is begun already. */
  readonly fixed: { readonly start: number; readonly end: number } | null;
}

/** A unit of a resource held for a part of a task: `from` and `to` count from the task's start. */
export interface Use {
  readonly resource: number;
  readonly from: number;
  readonly to: number;
  /** What the unit must be set to; only where the resource has a {@link Setup}. */
  readonly setting: number;
}

export interface Resource {
  readonly units: readonly {
    /** Taken until then. */
    readonly free: number;
    /** What it is set to at first; `null` if it is cold. */
    readonly setting: number | null;
  }[];
  readonly setup: Setup | null;
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

/** When a task should be done; each second later counts `weight` times. */
export interface Due {
  readonly task: number;
  readonly at: number;
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
  /** Seconds by which chains take longer than they should, and tasks end after they are due, weighted. */
  readonly overLimit: number;
  readonly late: number;
  /** What the search makes small. */
  readonly cost: number;
}

export const setupTime = (setup: Setup, from: number | null, to: number): number =>
  from === null ? setup.cold : to > from ? (to - from) * setup.rise : (from - to) * setup.fall;
