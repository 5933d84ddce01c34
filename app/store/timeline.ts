import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { ticksOf } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import type { Station } from '../../src/model';
import {
  asTicked,
  BEGUN,
  printedBefore,
  type Timeline,
  ticked,
  type Work,
  type WorkProblem,
  workOf,
} from '../../src/pressing';
import { ok, type Result } from '../../src/units';
import { type Effort, findAgain, followSchedule, useSchedule } from './schedules';
import { stationOf } from './selectors';
import { useShop } from './shop';

/** A run that is not begun is planned from the last so many minutes on. */
const ROUNDED = 5;
const MINUTE = 60_000;

/** A run's day at the bench. */
export interface Day {
  readonly work: Work;
  readonly timeline: Timeline;
  /** When it begins, or was begun; milliseconds. */
  readonly origin: number;
  readonly begun: boolean;
  /** Seconds from the start. */
  readonly now: number;
}

export type DayState =
  | { readonly kind: 'working' }
  /** The run is closed: nothing of it is still to be done. */
  | { readonly kind: 'closed' }
  | { readonly kind: 'missing'; readonly problems: readonly WorkProblem[] }
  | { readonly kind: 'failed'; readonly again: () => void }
  | { readonly kind: 'ready'; readonly day: Day };

/** What a station change would make of the work. */
export const workWith = (laid: LaidRun, station: Station, origin: number) =>
  workOf(laid, station, new Date(origin));

/** The minute that it is, while the page is open. */
function useMinute(): number {
  const [minute, setMinute] = useState(() => Math.floor(Date.now() / MINUTE));
  useEffect(() => {
    const timer = setInterval(() => setMinute(Math.floor(Date.now() / MINUTE)), 10_000);
    return () => clearInterval(timer);
  }, []);
  return minute * MINUTE;
}

/** When a day begins: its origin, and the seconds since then. */
type Beginning = Pick<Day, 'origin' | 'begun' | 'now'>;

/**
 * Begun when that was ticked; before that, with the last five minutes.
 * @param done when each subject was ticked
 * @param minute when it is, in milliseconds; no tick is later than now, not even that of a device whose clock is ahead
 */
export function beginningOf(done: ReadonlyMap<string, string>, minute: number): Beginning {
  const begunAt = done.get(BEGUN);
  if (begunAt === undefined) {
    const step = ROUNDED * MINUTE;
    return { origin: Math.floor(minute / step) * step, begun: false, now: 0 };
  }
  const origin = Math.floor(Date.parse(begunAt) / 1000) * 1000;
  return { origin, begun: true, now: Math.max(0, secondsFrom(origin, Math.max(minute, latest(done)))) };
}

/** The work of a run from its beginning on; of one that is begun, as it is ticked. */
export function workAt(
  laid: LaidRun,
  done: ReadonlyMap<string, string>,
  { origin, begun, now }: Beginning,
): Result<Work, readonly WorkProblem[]> {
  const work = workWith(laid, stationOf(laid), origin);
  if (!work.ok) return work;
  const printed = printedBefore(work.value, laid);
  if (!begun && printed.size === 0) return work;
  const seconds = [...done].map(
    ([subject, at]) => [subject, Math.max(0, secondsFrom(origin, Date.parse(at)))] as const,
  );
  return ok(asTicked(work.value, new Map([...printed, ...seconds]), now));
}

/** What there is to show of a run whose work is as it is; none as long as there is no run. */
export function dayState(
  laid: Pick<LaidRun, 'id' | 'state'> | null,
  work: ReturnType<typeof workAt> | null,
  { found, failed }: ReturnType<typeof useSchedule>,
  beginning: Beginning,
): DayState {
  if (laid?.state === 'closed') return { kind: 'closed' };
  if (laid === null || !work) return { kind: 'working' };
  if (!work.ok) return { kind: 'missing', problems: work.problem };
  if (failed) return { kind: 'failed', again: () => findAgain(laid.id) };
  return found ? { kind: 'ready', day: { ...found, ...beginning } } : { kind: 'working' };
}

/** The schedule of a run, from now on or as it is ticked; a better one follows if asked for. */
export function useDay(laid: LaidRun | null, effort: Effort): DayState {
  const tick = useShop(({ book }) => book.tick);
  const minute = useMinute();
  const done = useMemo(() => ticked(laid ? ticksOf({ tick }, laid.id) : []), [tick, laid]);
  const { origin, begun, now } = beginningOf(done, minute);
  const work = useMemo(
    () => (laid && laid.state !== 'closed' ? workAt(laid, done, { origin, begun, now }) : null),
    [laid, done, origin, begun, now],
  );
  const run = laid?.id ?? null;
  const shown = useRef<string | null>(null);
  // Before anything is painted: what the work was when the room was left is not shown.
  useLayoutEffect(() => {
    if (run !== null && work?.ok) followSchedule(run, work.value, effort, shown.current === run);
    shown.current = run;
  }, [run, work, effort]);
  return dayState(laid, work, useSchedule(run), { origin, begun, now });
}

const secondsFrom = (origin: number, at: number): number => Math.round((at - origin) / 1000);

/** When something was ticked last, in milliseconds. */
const latest = (done: ReadonlyMap<string, string>): number =>
  Math.max(0, ...[...done.values()].map((at) => Date.parse(at)));
