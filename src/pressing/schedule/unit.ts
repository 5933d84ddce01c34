import { type Setup, setupTime } from './problem';

/** When one unit of a resource is taken, ascending, and what it is set to each time. */
export class Unit {
  private readonly from: number[] = [];
  private readonly to: number[] = [];
  private readonly settings: number[] = [];

  private readonly free: number;
  private readonly first: number | null;
  private readonly setup: Setup | null;

  /** Taken until `free`; what it is set to then, or cold. */
  constructor(free: number, first: number | null, setup: Setup | null) {
    this.free = free;
    this.first = first;
    this.setup = setup;
  }

  private change(before: number | null, after: number): number {
    return this.setup === null ? 0 : setupTime(this.setup, before, after);
  }

  /** The first stretch that ends after a time. */
  private after(time: number): number {
    let low = 0;
    let high = this.to.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.to[middle] ?? 0) > time) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  /** The earliest time from `time` on at which the unit is free for so long, set up before and after. */
  earliest(time: number, length: number, setting: number): number {
    const count = this.to.length;
    for (let next = this.after(time); ; next += 1) {
      const freeFrom = next === 0 ? this.free : (this.to[next - 1] ?? 0);
      const before = next === 0 ? this.first : (this.settings[next - 1] ?? 0);
      const start = Math.max(time, freeFrom + this.change(before, setting));
      if (next === count) return start;
      if (start + length + this.change(setting, this.settings[next] ?? 0) <= (this.from[next] ?? 0)) {
        return start;
      }
    }
  }

  /** How long the unit is set up before a stretch that would begin at a time. */
  setupBefore(time: number, setting: number): number {
    const next = this.after(time);
    return this.change(next === 0 ? this.first : (this.settings[next - 1] ?? 0), setting);
  }

  take(from: number, to: number, setting: number): void {
    const next = this.after(from);
    this.from.splice(next, 0, from);
    this.to.splice(next, 0, to);
    this.settings.splice(next, 0, setting);
  }
}
