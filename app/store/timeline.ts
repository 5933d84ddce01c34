import { useDeferredValue, useLayoutEffect, useMemo, useRef } from 'react';
import { type LaidRun, layRun } from '../../src/layout';
import { type Book, runsAtWork, type Settings } from '../../src/model';
import {
  BEGUN,
  type DayTerms,
  type DayWork,
  type OpenRun,
  type Timeline,
  ticked,
  tickedOn,
  ticksOf,
} from '../../src/pressing';
import { onceFor, whileSame } from '../../src/units';
import { type Effort, type Known, useSchedule } from './known-schedule';
import { MINUTE, useMinute } from './minute';
import { settingsOrFirst, stationOf } from './selectors';
import { useShop } from './shop';
import { fetchDayPlanner, useDayPlanner } from './use-day-planner';

/** Before anything is begun the day is planned from the last so many minutes on. */
const ROUNDED = 5;

/** The shop's day: all its open runs. */
export interface Day extends Moment {
  readonly plan: DayWork;
  readonly timeline: Timeline;
}

/** When it is: midnight at which the day begins, in milliseconds, and the seconds since then. */
export interface Moment {
  readonly origin: number;
  readonly now: number;
  /** Runs that are begun. */
  readonly begun: ReadonlySet<string>;
}

export type DayState =
  | { readonly kind: 'working' }
  /** There is no open run. */
  | { readonly kind: 'none' }
  /** None of the open runs can be planned. */
  | { readonly kind: 'missing'; readonly without: DayWork['without'] }
  | { readonly kind: 'failed'; readonly again: () => void }
  | { readonly kind: 'ready'; readonly day: Day };

/** A run with what was ticked on it. */
const openRun = onceFor((laid: LaidRun) =>
  whileSame((tick: Book['tick']): OpenRun => {
    const ticks = ticksOf({ tick }, laid.id);
    return { laid, station: stationOf(laid), done: ticked(ticks), on: tickedOn(ticks) };
  }),
);

const allOf = whileSame((...runs: readonly OpenRun[]): readonly OpenRun[] => runs);

/**
 * Runs that are not closed and have something on their film, with what was ticked on them; found once a book, and the same as long as
 * runs and ticks are.
 */
export const openRunsOf = onceFor((book: Book): readonly OpenRun[] =>
  allOf(
    ...runsAtWork(book).flatMap((run) => {
      const laid = layRun(book, run);
      return laid && laid.copies.length > 0 ? [openRun(laid)(book.tick)] : [];
    }),
  ),
);

/**
 * When it is in a day: to the minute once a run is begun, before that to the last five.
 * @param minute in milliseconds; no tick is later than now, not even that of a device whose clock is ahead
 */
export function momentOfDay(open: readonly Pick<OpenRun, 'laid' | 'done'>[], minute: number): Moment {
  const begun = new Set(open.flatMap(({ laid, done }) => (done.has(BEGUN) ? [laid.id as string] : [])));
  const step = ROUNDED * MINUTE;
  const latest = Math.max(0, ...open.flatMap(({ done }) => [...done.values()].map((at) => Date.parse(at))));
  const time = begun.size > 0 ? Math.max(minute, latest) : Math.floor(minute / step) * step;
  const day = new Date(time);
  const origin = new Date(day.getFullYear(), day.getMonth(), day.getDate()).getTime();
  return { origin, now: Math.round((time - origin) / 1000), begun };
}

/** What the shop's day is planned by. */
export function termsOf(
  { station, runOrder }: Pick<Settings, 'station' | 'runOrder'>,
  { origin, now }: Moment,
): DayTerms {
  return { station, runOrder, origin: new Date(origin), now };
}

/** What there is to show of a day whose work is as it is. */
export function dayState(
  plan: DayWork,
  { found, failed }: Known,
  moment: Moment,
  findAgain: () => void,
): DayState {
  if (plan.runs.length === 0)
    return plan.without.length === 0 ? { kind: 'none' } : { kind: 'missing', without: plan.without };
  if (failed) return { kind: 'failed', again: findAgain };
  return found
    ? { kind: 'ready', day: { plan: found.day, timeline: found.timeline, ...moment } }
    : { kind: 'working' };
}

/** The schedule of the day as it is ticked, from now on, behind what is typed; a better one follows if asked for. */
export function useDay(effort: Effort): DayState {
  const book = useDeferredValue(useShop((shop) => shop.book));
  const minute = useMinute();
  const open = openRunsOf(book);
  const moment = useMemo(() => momentOfDay(open, minute), [open, minute]);
  const fetched = useDayPlanner();
  const planner = fetched.kind === 'here' ? fetched.planner : null;
  const { station, runOrder } = settingsOrFirst(book);
  const plan = useMemo(
    () => planner?.dayWork(open, termsOf({ station, runOrder }, moment)),
    [planner, open, station, runOrder, moment],
  );
  const shown = useRef(false);
  // Before anything is painted: what the work was when the room was left is not shown.
  useLayoutEffect(() => {
    if (!planner || !plan) return;
    if (plan.runs.length > 0) planner.followSchedule(plan, effort, shown.current);
    shown.current = true;
  }, [planner, plan, effort]);
  const schedule = useSchedule();
  // The same object as long as the day is, so that what it is drawn with may be kept.
  const state = useMemo(
    () => planner && plan && dayState(plan, schedule, moment, planner.findAgain),
    [planner, plan, schedule, moment],
  );
  if (state) return state;
  if (open.length === 0) return { kind: 'none' };
  return fetched.kind === 'missing' ? { kind: 'failed', again: fetchDayPlanner } : { kind: 'working' };
}
