import { type DayWork, timelineOf } from '../../src/pressing';
import { type Found, findSchedule } from '../../src/pressing/browser';
import type { Schedule } from '../../src/pressing/schedule';
import { sayFailed } from './failures';
import { type Effort, UNKNOWN, useSchedule } from './known-schedule';

const SEED = 1;
/** Sequences tried at first, then for a better one, and after a tick. */
const BUDGET = { first: 200, better: 1500, again: 80 };
/** Milliseconds without a change before a schedule is looked for; the Film room waits until a layout has come to rest. */
const REST: Readonly<Record<Effort, number>> = { quick: 800, thorough: 100 };

/** A search for the schedule of a day's work. */
interface Search {
  readonly key: string;
  /** The work as it was told last: names may change where the problem stays. */
  day: DayWork;
  effort: Effort;
  /** A schedule of the same jobs that was found before this search. */
  readonly earlier: Schedule | null;
  /** The best of this search. */
  found: Found | null;
  /** What it has ended with; `null` while it goes on. */
  ended: Effort | 'failed' | null;
  readonly over: AbortController;
}

let last: Search | null = null;

/** Two days of one key have the same schedules. */
const keyOf = ({ work }: DayWork): string => JSON.stringify(work.problem);

const hasSameJobs = ({ work: a }: DayWork, { work: b }: DayWork): boolean =>
  a.jobs.length === b.jobs.length &&
  a.jobs.every(({ key, run }, at) => key === b.jobs[at]?.key && run.id === b.jobs[at]?.run.id);

/** What is due otherwise may want its runs in another order, which an earlier schedule keeps. */
const isDueAlike = ({ work: a }: DayWork, { work: b }: DayWork): boolean =>
  JSON.stringify(a.problem.dues) === JSON.stringify(b.problem.dues);

function show({ day, found }: Search): void {
  if (found)
    useSchedule.setState({
      found: { day, timeline: timelineOf(day.work, found.schedule, found.bound) },
      failed: false,
    });
}

/** @throws the signal's reason if it is aborted meanwhile */
const rest = (milliseconds: number, signal: AbortSignal): Promise<void> =>
  new Promise((resolve, reject) => {
    const timer = setTimeout(resolve, milliseconds);
    const giveUp = () => {
      clearTimeout(timer);
      reject(signal.reason);
    };
    signal.addEventListener('abort', giveUp, { once: true });
  });

/** Finds a first schedule, then a better one if that is asked for, be it meanwhile. */
async function search(own: Search): Promise<void> {
  const { signal } = own.over;
  const look = async (iterations: number): Promise<void> => {
    const { earlier } = own;
    own.found = await findSchedule(own.day.work.problem, { seed: SEED, iterations, earlier, signal });
    show(own);
  };
  own.ended = null;
  useSchedule.setState({ failed: false });
  try {
    await rest(REST[own.effort], signal);
    if (!own.found) await look(own.earlier ? BUDGET.again : BUDGET.first);
    const isBetter = own.effort === 'thorough';
    if (isBetter) await look(BUDGET.better);
    own.ended = isBetter ? 'thorough' : 'quick';
  } catch (error) {
    if (signal.aborted) return;
    own.ended = 'failed';
    sayFailed('schedule', error);
    // What is shown is never the schedule of something else.
    if (!own.found) useSchedule.setState({ found: null, failed: true });
  }
}

/**
 * Sees that the day's schedule is looked for; one that is looked for or was found is not begun again, whichever room asks.
 * @param keeps whether the schedule of what the work was before is shown until there is another
 */
export function followSchedule(day: DayWork, effort: Effort, keeps: boolean): void {
  const key = keyOf(day);
  const isSame = last?.key === key;
  if (!keeps && !(isSame && last?.found)) useSchedule.setState(UNKNOWN);
  if (last && isSame) {
    last.day = day;
    if (effort === 'thorough') last.effort = effort;
    show(last);
    if (last.ended !== null && last.ended !== last.effort) void search(last);
    return;
  }
  last?.over.abort();
  const isAlike = last && hasSameJobs(last.day, day) && isDueAlike(last.day, day);
  const earlier = isAlike ? (last?.found?.schedule ?? last?.earlier ?? null) : null;
  last = { key, day, effort, earlier, found: null, ended: null, over: new AbortController() };
  void search(last);
}

/** Looks again for a schedule that could not be found. */
export function findAgain(): void {
  if (last?.ended === 'failed') void search(last);
}
