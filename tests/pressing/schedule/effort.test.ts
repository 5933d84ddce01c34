import { describe, expect, it } from 'vitest';
import { createScheduler, sequencesFor, validateSchedule } from '../../../src/pressing/schedule';
import { onSome, taskOn, unit } from '../shops';

describe('the effort that a day takes', () => {
  it.each([
    { tasks: 1, wished: 200, tried: 200 },
    { tasks: 600, wished: 200, tried: 200 },
    { tasks: 1200, wished: 200, tried: 100 },
    { tasks: 7000, wished: 80, tried: 6 },
    { tasks: 1_000_000, wished: 80, tried: 1 },
  ])('is $tried sequences where $wished are wished of $tasks tasks', ({ tasks, wished, tried }) => {
    const task = taskOn(1, 0);
    expect(sequencesFor({ tasks: Array.from({ length: tasks }, () => task) }, wished)).toBe(tried);
  });

  it('ends with a schedule also where thousands of tasks could come next', () => {
    const press = { ...unit, setup: { cold: 9, rise: 1, fall: 2 } };
    const tasks = Array.from({ length: 2500 }, (_, at) => ({
      ...taskOn(1 + (at % 7), 0),
      uses: [{ resource: 0, from: 0, to: 1 + (at % 7), units: null, setting: 1 + (at % 3) }],
    }));
    const problem = {
      ...onSome([[]], []),
      tasks,
      resources: [{ units: [press, press] }],
    };
    const sequences = sequencesFor(problem, 20);
    const scheduler = createScheduler(problem, { seed: 1, cycle: sequences, earlier: null });
    scheduler.step(sequences);
    const schedule = scheduler.best();
    expect(validateSchedule(problem, schedule)).toEqual([]);
    expect(schedule.makespan).toBeLessThan(1.02 * scheduler.bound.seconds);
  }, 20_000);
});
