import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Away, setupTime } from '../../../src/pressing/schedule/problem';
import { Unit } from '../../../src/pressing/schedule/unit';
import { unit as always, gaps } from '../shops';

const setup = { cold: 4, rise: 1, fall: 2 };

/** The earliest time by looking at every second: there and free, and set up from what is before and for what comes behind. */
function earliestByTrying(
  taken: readonly { from: number; to: number; setting: number }[],
  away: readonly Away[],
  time: number,
  length: number,
  setting: number,
): number {
  for (let start = time; ; start += 1) {
    const before = taken.filter(({ from }) => from < start).at(-1);
    const behind = taken.find(({ from }) => from >= start);
    const night = away.findLast(
      ({ to, cold }) =>
        cold && to <= start && to > (before?.to ?? 0) && (behind === undefined || to <= behind.from),
    );
    const isFree = night
      ? start >= night.to + setup.cold
      : start >= (before?.to ?? 0) + setupTime(setup, before?.setting ?? null, setting);
    const isOff = away.some(({ to, cold }) => cold && behind && to > start + length && to <= behind.from);
    const change = isOff || !behind ? 0 : setupTime(setup, setting, behind.setting);
    const isOver = !behind || start + length + change <= behind.from;
    const isThere = away.every(({ from, to }) => to <= start || from >= start + length);
    if (isFree && isOver && isThere) return start;
  }
}

describe('a unit', () => {
  it('is free as soon as by looking at every second, whatever was taken before and whenever it is away', () => {
    const asked = fc.record({
      time: fc.nat(30),
      length: fc.integer({ min: 1, max: 5 }),
      setting: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(fc.array(asked, { maxLength: 12 }), gaps(15, 6), (all, away) => {
        const unit = new Unit({ ...always, setup, away }, all.length);
        const taken: { from: number; to: number; setting: number }[] = [];
        for (const { time, length, setting } of all) {
          const start = unit.earliest(time, length, setting, false);
          expect(start).toBe(earliestByTrying(taken, away, time, length, setting));
          unit.take(start, start + length, setting);
          taken.push({ from: start, to: start + length, setting });
          taken.sort((a, b) => a.from - b.from);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('is as at first when all is given back', () => {
    const unit = new Unit({ ...always, setup, free: 2, setting: 1 }, 3);
    unit.take(5, 9, 1);
    unit.clear();
    expect(unit.earliest(0, 10, 1, false)).toBe(2);
  });
});
