import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { ticksOf } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import type { Station } from '../../src/model';
import {
  asTicked,
  BEGUN,
  type Timeline,
  ticked,
  type Work,
  type WorkProblem,
  workOf,
} from '../../src/pressing';
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

/** The schedule of a run, from now on or as it is ticked; a better one follows if asked for. */
export function useDay(laid: LaidRun | null, effort: Effort): DayState {
  const tick = useShop(({ book }) => book.tick);
  const minute = useMinute();
  const done = useMemo(() => ticked(laid ? ticksOf({ tick }, laid.id) : []), [tick, laid]);
  const begunAt = done.get(BEGUN) ?? null;
  const origin =
    begunAt === null
      ? Math.floor(minute / (ROUNDED * MINUTE)) * ROUNDED * MINUTE
      : Math.floor(Date.parse(begunAt) / 1000) * 1000;
  const work = useMemo(() => laid && workWith(laid, stationOf(laid), origin), [laid, origin]);
  const now =
    begunAt === null ? 0 : Math.max(0, Math.round((Math.max(minute, latest(done)) - origin) / 1000));
  const current = useMemo((): Work | null => {
    if (!work?.ok) return null;
    if (begunAt === null) return work.value;
    const seconds = new Map(
      [...done].map(([subject, at]) => [subject, Math.max(0, Math.round((Date.parse(at) - origin) / 1000))]),
    );
    return asTicked(work.value, seconds, now);
  }, [work, begunAt, done, origin, now]);
  const run = laid?.id ?? null;
  const shown = useRef<string | null>(null);
  // Before anything is painted: what the work was when the room was left is not shown.
  useLayoutEffect(() => {
    if (run !== null && current) followSchedule(run, current, effort, shown.current === run);
    shown.current = run;
  }, [run, current, effort]);
  const { found, failed } = useSchedule(run);
  if (work && !work.ok) return { kind: 'missing', problems: work.problem };
  if (run !== null && failed) return { kind: 'failed', again: () => findAgain(run) };
  if (!found || !current) return { kind: 'working' };
  return {
    kind: 'ready',
    day: { work: found.work, timeline: found.timeline, origin, begun: begunAt !== null, now },
  };
}

/** When something was ticked last, in milliseconds. */
const latest = (done: ReadonlyMap<string, string>): number =>
  Math.max(0, ...[...done.values()].map((at) => Date.parse(at)));
