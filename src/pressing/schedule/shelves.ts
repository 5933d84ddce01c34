import type { ScheduleProblem, Shelf, ShelfLoad } from './problem';

/** A load on its shelf, and how many of the places there it has. */
interface Filling {
  readonly places: Places;
  readonly load: ShelfLoad;
  filled: number;
}

/** The places of one shelf while loads come and go: what is not cleared yet keeps its places for good. */
class Places {
  /** How many no open load has. */
  private left: number;
  private readonly count: number;
  /** Of the load that needs most. */
  private readonly largest: number;
  /** When each place that was given back is free, ascending. */
  private freed: number[] = [];
  /** Loads that have places and are not cleared. */
  private readonly open = new Set<Filling>();

  constructor({ places, loads }: Shelf) {
    this.count = places;
    this.left = places;
    this.largest = Math.max(0, ...loads.map(({ fills }) => fills.length));
  }

  reset(): void {
    this.left = this.count;
    this.freed = [];
    this.open.clear();
  }

  /**
   * Whether a load may have one more place: all that are open can still be filled and cleared, one after the other (the banker's
   * algorithm: E. W. Dijkstra, EWD 623, 1977).
   */
  mayFill(filling: Filling): boolean {
    let free = this.left - 1;
    if (free < 0) return false;
    if (free >= this.largest - 1) return true;
    const needs = [...new Set(this.open).add(filling)]
      .map((own) => {
        const filled = own === filling ? own.filled + 1 : own.filled;
        return { filled, missing: own.load.fills.length - filled };
      })
      .sort((a, b) => a.missing - b.missing);
    return needs.every(({ filled, missing }) => {
      const isEnough = missing <= free;
      free += filled;
      return isEnough;
    });
  }

  /** From when on one of the places that no open load has is free. */
  freeFrom(): number {
    return this.left > 0 ? (this.freed[this.freed.length - this.left] ?? 0) : 0;
  }

  fill(filling: Filling): void {
    filling.filled += 1;
    this.left -= 1;
    this.open.add(filling);
  }

  empty(filling: Filling, time: number): void {
    this.open.delete(filling);
    this.left += filling.filled;
    let at = this.freed.length;
    while (at > 0 && (this.freed[at - 1] ?? 0) > time) at -= 1;
    this.freed.splice(at, 0, ...Array.from({ length: filling.filled }, () => time));
  }
}

/** What lies on the shelves of a problem while its tasks are given their times. */
export class Shelves {
  private readonly problem: ScheduleProblem;
  private readonly places: readonly Places[];
  private readonly fillings: readonly Filling[];
  /** For each task the load that it puts something of on a shelf, and that which it takes down. */
  private readonly fills: (Filling | null)[];
  private readonly clears: (Filling | null)[];

  constructor(problem: ScheduleProblem) {
    const { shelves } = problem;
    this.problem = problem;
    this.fills = problem.tasks.map(() => null);
    this.clears = problem.tasks.map(() => null);
    this.places = shelves.map((shelf) => new Places(shelf));
    this.fillings = shelves.flatMap(({ loads }, shelf) =>
      loads.flatMap((load): Filling[] => {
        const places = this.places[shelf];
        return places ? [{ places, load, filled: 0 }] : [];
      }),
    );
    for (const filling of this.fillings) {
      for (const task of filling.load.fills) this.fills[task] = filling;
      this.clears[filling.load.clearedBy] = filling;
    }
  }

  /** Whether a task puts something on a shelf, or takes it up. */
  isFor(task: number): boolean {
    return Boolean(this.fills[task] ?? this.clears[task]);
  }

  /** Takes all down that is not there by what is fixed. */
  reset(): void {
    for (const places of this.places) places.reset();
    const { tasks } = this.problem;
    for (const filling of this.fillings) {
      filling.filled = 0;
      const { fills, clearedBy, lag } = filling.load;
      for (const task of fills) if (tasks[task]?.fixed) filling.places.fill(filling);
      const cleared = tasks[clearedBy]?.fixed;
      if (cleared) filling.places.empty(filling, cleared.start + lag);
    }
  }

  /** Whether there is a place for what a task puts on a shelf, or will be by what has its times already. */
  mayTake(task: number): boolean {
    const filling = this.fills[task] ?? null;
    return filling === null || filling.places.mayFill(filling);
  }

  /** The earliest time at which a task finds a place for what it puts on a shelf. */
  freeFrom(task: number): number {
    return this.fills[task]?.places.freeFrom() ?? 0;
  }

  /**
   * Notes what a task puts on a shelf, or takes down, where it begins at a time.
   * @returns whether places were given back
   */
  take(task: number, start: number): boolean {
    const [filling, cleared] = [this.fills[task], this.clears[task]];
    if (filling) filling.places.fill(filling);
    if (cleared) cleared.places.empty(cleared, start + cleared.load.lag);
    return Boolean(cleared);
  }
}
