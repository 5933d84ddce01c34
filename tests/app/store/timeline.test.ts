import { describe, expect, it } from 'vitest';
import { findAgain } from '../../../app/store/schedules';
import { settingsOrFirst } from '../../../app/store/selectors';
import { dayState, momentOfDay, openRunsOf, termsOf } from '../../../app/store/timeline';
import { benchEdits, edits, session } from '../../../src/editing';
import { asId, runOf } from '../../../src/model';
import { BEGUN, dayWork, type OpenRun, timelineOf } from '../../../src/pressing';
import { createScheduler } from '../../../src/pressing/schedule';
import { um } from '../../../src/units';
import { freshIds } from '../../editing/book';
import { printing } from '../../pressing/stations';
import { laidBook } from './laid-book';

const { book, run } = laidBook();
const [open] = openRunsOf(book);
if (!open) throw new Error('no run');

/** An instant of that day by the clock of the place. */
const at = (time: string): number => new Date(`2026-11-25T${time}`).getTime();
const midnight = at('00:00:00');
/** The run with what was ticked on that day. */
const ticked = (times: Readonly<Record<string, string>>) => ({
  ...open,
  done: new Map(Object.entries(times).map(([key, time]) => [key, new Date(at(time)).toISOString()])),
});
const seconds = (time: string) => (at(time) - midnight) / 1000;

describe('the runs of a day', () => {
  it('are the same, and so is their work, where only what is told of an order changes', () => {
    const [order] = Object.keys(book.order);
    const { book: told } = session(book, edits.editOrder(order ?? '', { notes: 'at the back' }), freshIds());
    expect(told).not.toBe(book);
    expect(openRunsOf(told)).toBe(openRunsOf(book));
  });

  it('are others once something is ticked', () => {
    const { book: locked } = session(book, edits.lockRun(asId(run), null), freshIds());
    const ticking = { done: true, by: '' };
    const { book: begun } = session(
      locked,
      benchEdits.tickJobs(asId(run), [BEGUN], ticking, 'Next'),
      freshIds(),
    );
    const of = ({ laid, done }: OpenRun) => ({ laid, begun: done.has(BEGUN) });
    const [before] = openRunsOf(locked).map(of);
    expect(before?.begun).toBe(false);
    expect(openRunsOf(begun).map(of)).toEqual([{ laid: before?.laid, begun: true }]);
  });
});

describe('when it is in a day', () => {
  it.each([
    { minute: '12:00:00', now: '12:00:00' },
    { minute: '12:04:00', now: '12:00:00' },
    { minute: '12:59:00', now: '12:55:00' },
  ])('is told to five minutes while nothing is begun: at $minute it is $now', ({ minute, now }) => {
    const moment = momentOfDay([ticked({ ready: '12:30:00' })], at(minute));
    expect(moment).toEqual({ origin: midnight, now: seconds(now), begun: new Set() });
  });

  it.each([
    { what: 'the minute it is', ticks: { [BEGUN]: '12:03:20' }, now: '12:10:00' },
    { what: 'a tick within the minute', ticks: { [BEGUN]: '12:03:20', ready: '12:10:30' }, now: '12:10:30' },
    {
      what: 'a tick of a clock that is ahead',
      ticks: { [BEGUN]: '12:03:20', ready: '13:03:20' },
      now: '13:03:20',
    },
  ])('is told by $what once a run is begun', ({ ticks, now }) => {
    const moment = momentOfDay([ticked(ticks)], at('12:10:00'));
    expect(moment).toEqual({ origin: midnight, now: seconds(now), begun: new Set([run]) });
  });
});

describe('what is shown of a day', () => {
  const moment = momentOfDay([open], at('12:00:00'));
  const plan = dayWork([open], termsOf(settingsOrFirst(book), moment));
  const scheduler = createScheduler(plan.work.problem, { seed: 1, cycle: 1, earlier: null });
  const timeline = timelineOf(plan.work, scheduler.best(), scheduler.bound);

  it('is the schedule that was found, with the work that it is of', () => {
    expect(dayState(plan, { found: null, failed: false }, moment, findAgain)).toEqual({ kind: 'working' });
    expect(dayState(plan, { found: { day: plan, timeline }, failed: false }, moment, findAgain)).toEqual({
      kind: 'ready',
      day: { plan, timeline, ...moment },
    });
  });

  it('is that it could not be found', () => {
    expect(dayState(plan, { found: null, failed: true }, moment, findAgain)).toEqual({
      kind: 'failed',
      again: findAgain,
    });
  });

  it('is nothing where there is no open run, and what is missing where none can be planned', () => {
    const known = { found: { day: plan, timeline }, failed: false };
    const none = dayWork([], termsOf(settingsOrFirst(book), moment));
    expect(dayState(none, known, moment, findAgain)).toEqual({ kind: 'none' });
    const still = {
      ...open,
      station: { ...open.station, ...printing({ perHour: um(0) }, open.station) },
    };
    const without = dayWork([still], termsOf(settingsOrFirst(book), moment));
    expect(dayState(without, known, moment, findAgain)).toMatchObject({
      kind: 'missing',
      without: [{ run: { id: runOf(book, null)?.run.id }, problems: ['no-speed'] }],
    });
  });
});
