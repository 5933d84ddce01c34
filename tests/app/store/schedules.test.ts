import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { useSchedule } from '../../../app/store/known-schedule';
import { findAgain, followSchedule } from '../../../app/store/schedules';
import { useView } from '../../../app/store/view';
import { en } from '../../../app/words/en';
import type { Found } from '../../../src/pressing/browser';
import { createScheduler, type ScheduleProblem } from '../../../src/pressing/schedule';
import { WorkerFailed } from '../../../src/workers/browser';
import { settle, type waitingCalls } from './calls';
import { dayOfHands, emptyDay } from './laid-book';

interface Asked {
  readonly problem: ScheduleProblem;
  readonly iterations: number;
  readonly earlier: object | null;
}

const worker = (await vi.hoisted(async () => (await import('./calls')).waitingCalls())) as ReturnType<
  typeof waitingCalls<Asked, Found>
>;

vi.mock('../../../src/pressing/browser', () => ({
  findSchedule: (
    problem: ScheduleProblem,
    { signal, ...options }: Omit<Asked, 'problem'> & { signal: AbortSignal },
  ) => worker.call({ problem, ...options }, signal),
}));

const [one, two] = [dayOfHands(1), dayOfHands(2)];

const known = () => useSchedule.getState();
const at = (call: number) => {
  const own = worker.calls[call];
  if (!own) throw new Error(`only ${worker.calls.length} calls`);
  return own;
};
const answer = async (call: number): Promise<void> => {
  const scheduler = createScheduler(at(call).input.problem, { seed: 1, cycle: 1, earlier: null });
  at(call).answer({ schedule: scheduler.best(), bound: scheduler.bound });
  await settle();
};
const rest = (milliseconds: number) => vi.advanceTimersByTimeAsync(milliseconds);
const said = () => useView.getState().notices.map(({ text, reload }) => ({ text, reload }));

beforeEach(() => {
  vi.useFakeTimers();
  useView.setState({ notices: [] });
  worker.calls.length = 0;
});
afterEach(() => {
  followSchedule(emptyDay(), 'quick', false);
  vi.useRealTimers();
});

describe('the schedule of a day', () => {
  it('is looked for after a rest, then a better one if that is asked for', async () => {
    followSchedule(one, 'thorough', false);
    expect(worker.calls).toHaveLength(0);
    await rest(100);
    expect(at(0).input).toMatchObject({ iterations: 200, earlier: null });
    await answer(0);
    expect(known().found?.day).toBe(one);
    expect(at(1).input).toMatchObject({ iterations: 1500 });
    await answer(1);
    expect(worker.calls).toHaveLength(2);
  });

  it('outlives the room that asked: it is neither stopped nor begun again', async () => {
    followSchedule(one, 'thorough', false);
    await rest(100);
    // Another room, and the first one again: the work is worked out anew, and is the same.
    followSchedule(dayOfHands(1), 'quick', false);
    followSchedule(dayOfHands(1), 'thorough', false);
    await rest(2000);
    expect(worker.calls).toHaveLength(1);
    expect(at(0).signal.aborted).toBe(false);
    await answer(0);
    await answer(1);
    followSchedule(dayOfHands(1), 'thorough', false);
    await rest(2000);
    expect(worker.calls).toHaveLength(2);
    expect(known().found).not.toBeNull();
  });

  it('is bettered where a room that wants more comes to it', async () => {
    followSchedule(one, 'quick', false);
    await rest(800);
    await answer(0);
    await rest(2000);
    expect(worker.calls).toHaveLength(1);
    followSchedule(one, 'thorough', true);
    await rest(100);
    expect(at(1).input).toMatchObject({ iterations: 1500 });
    expect(known().found).not.toBeNull();
  });

  it('is looked for anew where the work is another, from the last one if the jobs are the same', async () => {
    followSchedule(one, 'quick', false);
    await rest(800);
    await answer(0);
    followSchedule(two, 'quick', true);
    // What was found stays on the screen until there is another.
    expect(known().found?.day).toBe(one);
    await rest(800);
    expect(at(1).input).toMatchObject({ iterations: 80, earlier: { starts: expect.anything() } });
    followSchedule(one, 'quick', true);
    expect(at(1).signal.aborted).toBe(true);
    await rest(800);
    await answer(2);
    expect(known().found?.day).toBe(one);
    expect(said()).toEqual([]);
  });

  it('is looked for in every order of runs again where something else is due', async () => {
    followSchedule(one, 'quick', false);
    await rest(800);
    await answer(0);
    const problem = { ...one.work.problem, dues: [{ task: 0, at: null, weight: 1 }] };
    followSchedule({ ...one, work: { ...one.work, problem } }, 'quick', true);
    await rest(800);
    expect(at(1).input).toMatchObject({ iterations: 200, earlier: null });
  });

  it('of what the work was is not shown to a room that comes to it', async () => {
    followSchedule(one, 'quick', false);
    await rest(800);
    await answer(0);
    followSchedule(two, 'thorough', false);
    expect(known().found).toBeNull();
  });

  it.each([
    { why: 'missing' as const, reload: true },
    { why: 'broken' as const, reload: false },
  ])(
    'that cannot be found as the worker is $why is said, and found when it is asked for again',
    async ({ why, reload }) => {
      followSchedule(one, 'quick', false);
      await rest(800);
      at(0).fail(new WorkerFailed(why));
      await settle();
      expect(known()).toEqual({ found: null, failed: true });
      expect(said()).toEqual([{ text: en.failures.schedule, reload }]);
      findAgain();
      expect(known().failed).toBe(false);
      await rest(800);
      await answer(1);
      expect(known().found?.day).toBe(one);
    },
  );

  it('stays if only a better one cannot be found', async () => {
    followSchedule(one, 'thorough', false);
    await rest(100);
    await answer(0);
    at(1).fail(new WorkerFailed('broken'));
    await settle();
    expect(known()).toMatchObject({ found: { day: one }, failed: false });
    expect(said()).toHaveLength(1);
  });
});
