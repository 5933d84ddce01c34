import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Telling } from '../../src/packing';

/** Tells whenever it is due, each plan taking so long to make, and better at every look; returns when each was made. */
function toldAt(takes: number, until: number): number[] {
  const telling = new Telling();
  const told: number[] = [];
  let now = 0;
  for (let cost = 1000; now < until; cost -= 0.01) {
    now += 5;
    if (!telling.isDue(cost, now)) continue;
    told.push(now);
    telling.wasTold(cost, now, now + takes);
    now += takes;
  }
  return told;
}

describe('telling of better plans', () => {
  it('takes little of the time, however long a plan takes to make', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 45 }), (takes) => {
        const told = toldAt(takes, 60_000);
        expect((told.length - 1) * takes).toBeLessThanOrEqual(0.03 * 60_000);
      }),
    );
  });

  it.each([
    { takes: 0, least: 120, most: 130 },
    { takes: 12, least: 400, most: 420 },
    { takes: 500, least: 1500, most: 2010 },
  ])('is $least to $most ms apart where a plan takes $takes ms', ({ takes, least, most }) => {
    const told = toldAt(takes, 20_000);
    const apart = told.slice(1).map((at, index) => at - (told[index] ?? 0));
    expect(told[0]).toBe(5);
    expect(Math.min(...apart)).toBeGreaterThanOrEqual(least);
    expect(Math.max(...apart)).toBeLessThanOrEqual(most);
  });

  it('leaves out what is no better than was told, here or by another search', () => {
    const telling = new Telling();
    expect(telling.isDue(100, 0)).toBe(true);
    telling.wasTold(100, 0, 0);
    expect(telling.isDue(100, 5000)).toBe(false);
    telling.isKnown(90);
    telling.isKnown(95);
    expect([95, 90, 89].map((cost) => telling.isDue(cost, 5000))).toEqual([false, false, true]);
  });
});
