import { describe, expect, it } from 'vitest';
import type { Hours } from '../../src/model';
import { startingStation } from '../../src/pressing';
import { awayTimes, closingOf, openOn } from '../../src/pressing/calendar';
import { utcDay } from '../../src/units';

const { hours } = startingStation('C');
/** A Friday. */
const FRIDAY = new Date(2026, 10, 27);
const HOUR = 3600;

describe('the hours of a shop', () => {
  it('leave hands a break in which machines go on, and all a night and a weekend', () => {
    const { hands, machines } = awayTimes(hours, FRIDAY);
    const night = { from: 0, to: 8 * HOUR, cold: true };
    const weekend = { from: 17 * HOUR, to: (3 * 24 + 8) * HOUR, cold: true };
    expect(hands.slice(0, 3)).toEqual([night, { from: 12 * HOUR, to: 12.5 * HOUR, cold: false }, weekend]);
    expect(machines.slice(0, 2)).toEqual([night, weekend]);
  });

  it('leave out days on which it is closed', () => {
    const closed: Hours = { ...hours, closed: [utcDay(Date.UTC(2026, 10, 27))] };
    expect(openOn(closed, FRIDAY)).toEqual([]);
    expect(awayTimes(closed, FRIDAY).hands[0]?.to).toBe((3 * 24 + 8) * HOUR);
  });

  it('go over midnight where one day ends with it and the next begins with it', () => {
    const week = hours.week
      .with(4, [{ from: '18:00', to: '23:59' }])
      .with(5, [{ from: '00:00', to: '02:00' }]);
    const { machines } = awayTimes({ week, closed: [] }, FRIDAY);
    expect(machines[0]).toEqual({ from: 0, to: 18 * HOUR, cold: true });
    expect(machines[1]?.from).toBe(26 * HOUR);
  });

  it('say when it closes on a day, or last before it', () => {
    expect(closingOf(hours, FRIDAY)).toEqual(new Date(2026, 10, 27, 17));
    expect(closingOf(hours, new Date(2026, 10, 29))).toEqual(new Date(2026, 10, 27, 17));
    const never = { week: hours.week.map(() => []), closed: [] };
    expect(closingOf(never, FRIDAY)).toEqual(new Date(2026, 10, 28));
    expect(awayTimes(never, FRIDAY)).toEqual({ hands: [], machines: [] });
  });

  it('are left out where they end before they begin', () => {
    const week = hours.week.with(4, [{ from: '17:00', to: '08:00' }]);
    expect(openOn({ week, closed: [] }, FRIDAY)).toEqual([]);
  });
});
