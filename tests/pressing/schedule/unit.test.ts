import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setupTime } from '../../../src/pressing/schedule/problem';
import { Unit } from '../../../src/pressing/schedule/unit';

const setup = { cold: 4, rise: 1, fall: 2 };

/** The earliest time by looking at every second: free, and set up from what is before and for what comes behind. */
function earliestByTrying(
  taken: readonly { from: number; to: number; setting: number }[],
  time: number,
  length: number,
  setting: number,
): number {
  for (let start = time; ; start += 1) {
    const before = taken.filter(({ from }) => from < start).at(-1);
    const behind = taken.find(({ from }) => from >= start);
    const isFree = start >= (before?.to ?? 0) + setupTime(setup, before?.setting ?? null, setting);
    const isOver = !behind || start + length + setupTime(setup, setting, behind.setting) <= behind.from;
    if (isFree && isOver) return start;
  }
}

describe('a unit', () => {
  it('is free as soon as by looking at every second, whatever was taken before', () => {
    const asked = fc.record({
      time: fc.nat(30),
      length: fc.integer({ min: 1, max: 5 }),
      setting: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(fc.array(asked, { maxLength: 12 }), (all) => {
        const unit = new Unit(0, null, setup, all.length);
        const taken: { from: number; to: number; setting: number }[] = [];
        for (const { time, length, setting } of all) {
          const start = unit.earliest(time, length, setting);
          expect(start).toBe(earliestByTrying(taken, time, length, setting));
          unit.take(start, start + length, setting);
          taken.push({ from: start, to: start + length, setting });
          taken.sort((a, b) => a.from - b.from);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('is as at first when all is given back', () => {
    const unit = new Unit(2, 1, setup, 3);
    unit.take(5, 9, 1);
    unit.clear();
    expect(unit.earliest(0, 10, 1)).toBe(2);
  });
});
