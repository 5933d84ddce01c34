import { allAway, switchedOff } from './away';
import type { Away, ScheduleProblem, Stint } from './problem';

/** How often the beginning of a stint is put off before it is left to lie over closing after all. */
const MOST = 3;

/** A stint with what its beginning depends on. */
interface Own {
  readonly stint: Stint;
  /** When all that its first task may be on are switched off. */
  readonly nights: readonly Away[];
  putOff: number;
}

/** When the stints of a problem may begin at the soonest, while its tasks are given their times again and again. */
export class Delays {
  private readonly stints: readonly Own[];
  private readonly now: number;
  private readonly soonest: Float64Array;

  constructor({ tasks, resources, stints, now }: ScheduleProblem) {
    this.now = now;
    this.soonest = new Float64Array(tasks.length).fill(now);
    this.stints = stints.flatMap((stint): Own[] => {
      const task = tasks[stint.first];
      const units = resources[task?.uses[0]?.resource ?? -1]?.units;
      if (!task || task.fixed || !units) return [];
      return [{ stint, nights: switchedOff(allAway(units.map(({ away }) => away))), putOff: 0 }];
    });
  }

  /** Nothing is put off. */
  reset(): void {
    for (const own of this.stints) own.putOff = 0;
    this.soonest.fill(this.now);
  }

  /** When a task may begin at the soonest. */
  of(task: number): number {
    return this.soonest[task] ?? this.now;
  }

  /** Whether anything is put off. */
  isSome(): boolean {
    return this.stints.some(({ putOff }) => putOff > 0);
  }

  /**
   * Puts off the stint that begins last of those that go on over a night; one that was put off too often begins when it likes.
   * @param starts when each task begins
   * @returns whether there was one: then all must be given their times anew
   */
  putOff(starts: Float64Array): boolean {
    let chosen: Own | null = null;
    let until = 0;
    for (const own of this.stints) {
      if (own.putOff > MOST) continue;
      const { first, tasks } = own.stint;
      const begin = starts[first] ?? 0;
      const last = Math.max(...tasks.map((task) => starts[task] ?? 0));
      const night = own.nights.find(({ to }) => to > begin);
      if (!night || night.to > last) continue;
      if (chosen && begin < (starts[chosen.stint.first] ?? 0)) continue;
      chosen = own;
      until = night.to;
    }
    if (!chosen) return false;
    chosen.putOff += 1;
    this.soonest[chosen.stint.first] = chosen.putOff > MOST ? this.now : until;
    return true;
  }
}
