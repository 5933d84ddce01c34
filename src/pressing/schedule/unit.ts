import { type Setup, setupTime } from './problem';

/** When one unit of a resource is taken, ascending, and what it is set to each time. */
export class Unit {
  private count = 0;
  private readonly from: Float64Array;
  private readonly to: Float64Array;
  private readonly settings: Float64Array;

  private readonly free: number;
  private readonly first: number | null;
  private readonly setup: Setup | null;

  /** Taken until `free`; what it is set to then, or cold. It is taken `most` times at the most. */
  constructor(free: number, first: number | null, setup: Setup | null, most: number) {
    this.free = free;
    this.first = first;
    this.setup = setup;
    this.from = new Float64Array(most);
    this.to = new Float64Array(most);
    this.settings = new Float64Array(most);
  }

  private change(before: number | null, after: number): number {
    return this.setup === null ? 0 : setupTime(this.setup, before, after);
  }

  /** The first stretch that ends after a time. */
  private after(time: number): number {
    let low = 0;
    let high = this.count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.to[middle] ?? 0) > time) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  /** The earliest time from `time` on at which the unit is free for so long, set up before and after. */
  earliest(time: number, length: number, setting: number): number {
    for (let next = this.after(time); ; next += 1) {
      const freeFrom = next === 0 ? this.free : (this.to[next - 1] ?? 0);
      const before = next === 0 ? this.first : (this.settings[next - 1] ?? 0);
      const start = Math.max(time, freeFrom + this.change(before, setting));
      if (next === this.count) return start;
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

  /** Takes the unit, which must be free. What touches a stretch of the same setting makes it longer: few are left to look at. */
  take(from: number, to: number, setting: number): void {
    const next = this.after(from);
    const isBefore = next > 0 && this.to[next - 1] === from && this.settings[next - 1] === setting;
    const isBehind = next < this.count && this.from[next] === to && this.settings[next] === setting;
    if (isBefore && isBehind) {
      this.to[next - 1] = this.to[next] ?? 0;
      this.shift(next + 1, next);
    } else if (isBefore) {
      this.to[next - 1] = to;
    } else if (isBehind) {
      this.from[next] = from;
    } else {
      this.shift(next, next + 1);
      this.from[next] = from;
      this.to[next] = to;
      this.settings[next] = setting;
    }
  }

  /** Moves all stretches from one place on to another. */
  private shift(place: number, target: number): void {
    if (place < this.count) {
      this.from.copyWithin(target, place, this.count);
      this.to.copyWithin(target, place, this.count);
      this.settings.copyWithin(target, place, this.count);
    }
    this.count += target - place;
  }

  /** Gives back all that was taken. */
  clear(): void {
    this.count = 0;
  }
}
