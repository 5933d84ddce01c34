import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { followSchedule, useSchedules } from '../../../app/store/schedules';
import { useShop } from '../../../app/store/shop';
import { beginningOf, dayState, workAt } from '../../../app/store/timeline';
import { useView } from '../../../app/store/view';
import { en } from '../../../app/words/en';
import { layRun } from '../../../src/layout';
import { type Book, runOf } from '../../../src/model';
import { BEGUN, type Work } from '../../../src/pressing';
import type { Found } from '../../../src/pressing/browser';
import { createScheduler, type ScheduleProblem } from '../../../src/pressing/schedule';
import { WorkerFailed } from '../../../src/workers/browser';
import { smallBook } from '../../editing/book';
import { settle, type waitingCalls } from './calls';
import { laidBook } from './laid-book';

const worker = (await vi.hoisted(async () => (await import('./calls')).waitingCalls())) as ReturnType<
  typeof waitingCalls<ScheduleProblem, Found>
>;
vi.mock('../../../src/pressing/browser', () => ({
  findSchedule: (problem: ScheduleProblem, { signal }: { signal: AbortSignal }) =>
    worker.call(problem, signal),
}));

const { book, run } = laidBook();
const laidIn = (own: Book) => {
  const open = runOf(own, null);
  const laid = open && layRun(own, open.run);
  if (!laid) throw new Error('no run');
  return laid;
};
const laid = laidIn(book);

const at = (time: string): number => Date.parse(`2026-11-25T${time}Z`);
/** When each subject was ticked, on that day. */
const done = (times: Readonly<Record<string, string>>) =>
  new Map(Object.entries(times).map(([subject, time]) => [subject, `2026-11-25T${time}Z`]));

const noon = { origin: at('12:00:00'), begun: false, now: 0 };
const planned = workAt(laid, done({}), noon);
const workNow = (times: Readonly<Record<string, string>>, minute: string): Work => {
  const own = done(times);
  const work = workAt(laid, own, beginningOf(own, at(minute)));
  if (!work.ok) throw new Error(work.problem.join());
  return work.value;
};
const fixedIn = ({ jobs, problem }: Work) =>
  new Map(
    jobs.flatMap(({ key }, index) =>
      problem.tasks[index]?.fixed ? [[key, problem.tasks[index].fixed]] : [],
    ),
  );

describe('the beginning of a day', () => {
  it.each([
    { minute: '12:00:00', origin: '12:00:00' },
    { minute: '12:04:00', origin: '12:00:00' },
    { minute: '12:05:00', origin: '12:05:00' },
    { minute: '12:59:00', origin: '12:55:00' },
  ])('that is not ticked is with the last five minutes: at $minute with $origin', ({ minute, origin }) => {
    const other = done({ ready: '11:00:00' });
    for (const ticks of [done({}), other])
      expect(beginningOf(ticks, at(minute))).toEqual({ origin: at(origin), begun: false, now: 0 });
  });

  it.each([
    { what: 'the minute it is', ticks: { [BEGUN]: '12:03:20.900' }, now: 400 },
    { what: 'a tick within the minute', ticks: { [BEGUN]: '12:03:20', ready: '12:10:30' }, now: 430 },
    { what: 'a tick of a clock that is ahead', ticks: { [BEGUN]: '12:03:20', ready: '13:03:20' }, now: 3600 },
  ])('that is ticked is the second of its tick, and now is by $what', ({ ticks, now }) => {
    expect(beginningOf(done(ticks), at('12:10:00'))).toEqual({ origin: at('12:03:20'), begun: true, now });
  });

  it('is no later than now where the minute began before it', () => {
    expect(beginningOf(done({ [BEGUN]: '12:10:45.600' }), at('12:10:00')).now).toBe(1);
  });
});

describe('the work of a day', () => {
  it('is all to be done while nothing is begun, whatever is ticked', () => {
    expect(fixedIn(workNow({ ready: '12:01:00' }, '12:03:00'))).toEqual(new Map());
    expect(workNow({ ready: '12:01:00' }, '12:03:00')).toEqual(planned.ok && planned.value);
  });

  it('has the times of what is ticked in seconds from the beginning, and all else from now on', () => {
    const work = workNow({ [BEGUN]: '12:00:00.400', ready: '12:25:00' }, '12:30:00');
    expect(fixedIn(work).get('ready')).toMatchObject({ end: 1500 });
    expect(work.problem.now).toBe(1800);
    expect(fixedIn(work).size).toBeLessThan(work.jobs.length);
  });

  it('has what was ticked before the beginning at its start', () => {
    const work = workNow({ [BEGUN]: '12:00:00', ready: '11:45:00' }, '12:05:00');
    expect(fixedIn(work).get('ready')).toEqual({ start: 0, end: 0 });
  });

  it('is told to lack what it lacks', () => {
    expect(workAt(laidIn(smallBook().book), done({}), noon)).toEqual({
      ok: false,
      problem: ['nothing-laid'],
    });
  });
});

describe('what is shown of a day', () => {
  const known = () => useSchedules.getState().known.get(run) ?? { found: null, failed: false };
  const shown = () => dayState(laid, planned, known(), noon);
  const call = (index: number) => {
    const own = worker.calls[index];
    if (!own) throw new Error(`only ${worker.calls.length} calls`);
    return own;
  };
  const answer = async (index: number): Promise<void> => {
    const scheduler = createScheduler(call(index).input, { seed: 1, cycle: 1, earlier: null });
    call(index).answer({ schedule: scheduler.best(), bound: scheduler.bound });
    await settle();
  };
  const follow = async (): Promise<void> => {
    if (!planned.ok) throw new Error('no work');
    followSchedule(run, planned.value, 'quick', false);
    await vi.advanceTimersByTimeAsync(800);
  };

  beforeEach(() => {
    vi.useFakeTimers();
    useShop.setState({ phase: { kind: 'open' }, book });
    useView.setState({ notices: [] });
    worker.calls.length = 0;
  });
  afterEach(() => {
    useShop.setState({ book: { ...book, run: {} } });
    if (planned.ok) followSchedule('none', planned.value, 'quick', false);
    vi.useRealTimers();
  });

  it('is the schedule that was found, and what it is the schedule of', async () => {
    await follow();
    expect(shown()).toEqual({ kind: 'working' });
    await answer(0);
    const { found } = known();
    expect(found).not.toBeNull();
    expect(shown()).toEqual({ kind: 'ready', day: { ...found, ...noon } });
    // A tick since then: the last schedule stays, with the work that it is of.
    const now = { origin: noon.origin, begun: true, now: 60 };
    const since = workAt(laid, done({ [BEGUN]: '12:00:00' }), now);
    expect(dayState(laid, since, known(), now)).toMatchObject({ day: { work: found?.work, now: 60 } });
  });

  it('is that it could not be found, until it is looked for again', async () => {
    await follow();
    call(0).fail(new WorkerFailed('broken'));
    await settle();
    const state = shown();
    expect(state.kind).toBe('failed');
    expect(useView.getState().notices.map(({ text }) => text)).toEqual([en.failures.schedule]);
    if (state.kind === 'failed') state.again();
    expect(shown()).toEqual({ kind: 'working' });
    await vi.advanceTimersByTimeAsync(800);
    await answer(1);
    expect(shown().kind).toBe('ready');
  });

  it('goes on as it was while a search is stopped for another', async () => {
    await follow();
    const other = workAt(laid, done({ [BEGUN]: '12:00:00' }), { ...noon, begun: true, now: 60 });
    if (!other.ok) throw new Error('no work');
    followSchedule(run, other.value, 'quick', true);
    await settle();
    expect(call(0).signal.aborted).toBe(true);
    expect(shown()).toEqual({ kind: 'working' });
    expect(useView.getState().notices).toEqual([]);
  });

  it('is what is missing, though a schedule was found before', async () => {
    await follow();
    await answer(0);
    const lacking = workAt(laidIn(smallBook().book), done({}), noon);
    expect(dayState(laid, lacking, known(), noon)).toEqual({ kind: 'missing', problems: ['nothing-laid'] });
  });

  it('is over once the run is closed, however much of it was never ticked', () => {
    const closed = { id: laid.id, state: 'closed' } as const;
    expect(dayState(closed, planned, known(), noon)).toEqual({ kind: 'closed' });
  });

  it('is nothing yet without a run', () => {
    expect(dayState(null, null, { found: null, failed: false }, noon)).toEqual({ kind: 'working' });
  });
});
