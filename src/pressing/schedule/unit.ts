import { endOver, isColdBetween } from './away';
import { type Available, firstSetup, type Setup, setupTime } from './problem';

/** When one unit of a resource is taken, ascending, and what it is set to each time. */
export class Unit {
  private count = 0;
  private readonly from: Float64Array;
  private readonly to: Float64Array;
  private readonly settings: Float64Array;

  private readonly own: Available;
  private readonly away: Available['away'];
  private readonly setup: Setup | null;

  /** It is taken `most` times at the most. */
  constructor(own: Available, most: number) {
    this.own = own;
    this.away = own.away;
    this.setup = own.setup;
    this.from = new Float64Array(most);
    this.to = new Float64Array(most);
    this.settings = new Float64Array(most);
  }

  /** The first stretch that ends after a time. */
  private after(time: number): number {
    const { count, to } = this;
    // Most is added behind all the rest.
    if (count === 0 || (to[count - 1] ?? 0) <= time) return count;
    let low = 0;
    let high = count - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((to[middle] ?? 0) > time) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  private freeFrom(next: number): number {
    return next === 0 ? this.own.free : (this.to[next - 1] ?? 0);
  }

  /** How long it takes to set the unit up behind what comes before a stretch, if it is not switched off meanwhile. */
  private changeFrom(next: number, setting: number): number {
    if (this.setup === null) return 0;
    if (next === 0) return firstSetup(this.own, setting);
    return setupTime(this.setup, this.settings[next - 1] ?? 0, setting);
  }

  /** The earliest start from one on behind what ends at a time, past all that the unit is away. */
  private pastAway(start: number, freeFrom: number, length: number, setting: number): number {
    let past = start;
    for (const { from, to, cold } of this.away) {
      if (to <= freeFrom) continue;
      if (from >= past + length) break;
      const on = cold && this.setup !== null ? to + setupTime(this.setup, null, setting) : to;
      if (on > past) past = on;
    }
    return past;
  }

  /** How long it takes to set the unit up from what ends at a time for the stretch behind it; one that was switched off between them is set up anyhow. */
  private changeBehind(end: number, setting: number, next: number): number {
    if (this.setup === null || isColdBetween(this.away, end, this.from[next] ?? 0)) return 0;
    return setupTime(this.setup, setting, this.settings[next] ?? 0);
  }

  /**
   * The earliest time from `time` on at which the unit is there and free for so long, set up before and after.
   * @param pauses what is done may be left while the unit is away
   */
  earliest(time: number, length: number, setting: number, pauses: boolean): number {
    for (let next = this.after(time); ; next += 1) {
      const freeFrom = this.freeFrom(next);
      const setUp = freeFrom + this.changeFrom(next, setting);
      const soonest = Math.max(setUp, time);
      // Whoever is away for good would never come back to it: what may be left needs no more than a moment.
      const start = this.pastAway(soonest, freeFrom, pauses ? 1 : length, setting);
      if (next === this.count) return start;
      const end = pauses ? this.endOf(start, length) : start + length;
      const begin = this.from[next] ?? 0;
      if (end <= begin && end + this.changeBehind(end, setting, next) <= begin) return start;
    }
  }

  /** Whether nothing takes the unit between two times, whatever it is set to. */
  isFree(from: number, to: number): boolean {
    const next = this.after(from);
    return from >= this.own.free && (next === this.count || (this.from[next] ?? 0) >= to);
  }

  /** When something ends that is left while the unit is away. */
  endOf(start: number, length: number): number {
    return endOver(this.away, start, length);
  }

  /** How long the unit is set up before a stretch that would begin at a time. */
  setupBefore(time: number, setting: number): number {
    if (this.setup === null) return 0;
    const next = this.after(time);
    if (isColdBetween(this.away, this.freeFrom(next), time)) return setupTime(this.setup, null, setting);
    return this.changeFrom(next, setting);
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
