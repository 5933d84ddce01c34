import { describe, expect, it } from 'vitest';
import { dayAxis } from '../../app/press/day-axis';
import type { Work } from '../../src/pressing';
import type { Away } from '../../src/pressing/schedule';

const HOUR = 3600;
const noon = { from: 12 * HOUR, to: 12.5 * HOUR, cold: false };
const night = { from: 17 * HOUR, to: 32 * HOUR, cold: true };

/** Work of people, each with the times at which they are away. */
const workOf = (people: readonly (readonly Away[])[]): Work => ({
  problem: {
    now: 0,
    tasks: [],
    resources: [{ units: people.map((away) => ({ free: 0, setup: null, setting: null, warmed: 0, away })) }],
    chains: [],
    waits: [],
    lanes: [],
    shelves: [],
    stints: [],
    dues: [],
  },
  jobs: [],
  workers: ['hands'],
  machines: [],
  spans: [],
  tooLarge: [],
});

describe('the chart’s time', () => {
  it('rests where nobody is there, whoever else has a break of their own', () => {
    const late = { from: 8 * HOUR, to: 12.5 * HOUR, cold: false };
    const axis = dayAxis(
      workOf([
        [late, night],
        [noon, night],
      ]),
      8 * HOUR,
      34 * HOUR,
    );
    expect(axis.breaks).toEqual([noon]);
    expect(axis.nights).toEqual([night]);
    expect(axis.shown(33 * HOUR)).toBe(10 * HOUR);
  });
});
