import { create } from 'zustand';
import { type Timeline, timelineOf, type Work } from '../../src/pressing';
import { type Found, findSchedule } from '../../src/pressing/browser';
import type { Schedule } from '../../src/pressing/schedule';
import { sayFailed } from './failures';
import { useShop } from './shop';

const SEED = 1;
/** Sequences tried at first, then for a better one, and after a tick. */
const BUDGET = { first: 200, better: 1500, again: 80 };
/** Milliseconds without a change before a schedule is looked for; the Film room waits until a layout has come to rest. */
const REST = { quick: 800, thorough: 100 };

export type Effort = keyof typeof REST;

/** What is known of a run's schedule: the last one found, and whether the next could not be. */
interface Known {
  readonly found: { readonly work: Work; readonly timeline: Timeline } | null;
  readonly failed: boolean;
}

const UNKNOWN: Known = { found: null, failed: false };

/** By run. Lives until the tab closes, so that a room that is left and come back to finds it. */
export const useSchedules = create<{ readonly known: ReadonlyMap<string, Known> }>(() => ({
  known: new Map(),
}));

/** A search for the schedule of a run's work. */
interface Search {
  readonly key: string;
  /** The work as it was told last: names may change where the problem stays. */
  work: Work;
  effort: Effort;
  /** A schedule of the same jobs that was found before this search. */
  readonly earlier: Schedule | null;
  /** The best of this search. */
  found: Found | null;
  /** What it has ended with; `null` while it goes on. */
  ended: Effort | 'failed' | null;
  readonly over: AbortController;
}

const searches = new Map<string, Search>();

/** Two works of one key have the same schedules. */
const keyOf = ({ problem }: Work): string => JSON.stringify(problem);

const hasSameJobs = (a: Work, b: Work): boolean =>
  a.jobs.length === b.jobs.length && a.jobs.every(({ key }, at) => key === b.jobs[at]?.key);

const knownOf = (run: string): Known => useSchedules.getState().known.get(run) ?? UNKNOWN;

const know = (run: string, known: Known): void =>
  useSchedules.setState((state) => ({ known: new Map(state.known).set(run, known) }));

function show(run: string, { work, found }: Search): void {
  if (found)
    know(run, { found: { work, timeline: timelineOf(work, found.schedule, found.bound) }, failed: false });
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
async function search(run: string, own: Search): Promise<void> {
  const { signal } = own.over;
  const look = async (iterations: number): Promise<void> => {
    const { earlier } = own;
    own.found = await findSchedule(own.work.problem, { seed: SEED, iterations, earlier, signal });
    show(run, own);
  };
  own.ended = null;
  know(run, { found: knownOf(run).found, failed: false });
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
    if (!own.found) know(run, { found: null, failed: true });
  }
}

/** Ends the searches for runs that are no longer there. */
function letGo(): void {
  const { run: runs } = useShop.getState().book;
  for (const [run, { over }] of searches) {
    if (runs[run]) continue;
    over.abort();
    searches.delete(run);
    useSchedules.setState(({ known }) => ({ known: new Map([...known].filter(([id]) => id !== run)) }));
  }
}

/**
 * Sees that a run's schedule is looked for; one that is looked for or was found is not begun again, whichever room asks.
 * @param keeps whether the schedule of what the work was before is shown until there is another
 */
export function followSchedule(run: string, work: Work, effort: Effort, keeps: boolean): void {
  letGo();
  const key = keyOf(work);
  const last = searches.get(run);
  const isSame = last?.key === key;
  if (!keeps && !(isSame && last.found)) know(run, UNKNOWN);
  if (isSame) {
    last.work = work;
    if (effort === 'thorough') last.effort = effort;
    show(run, last);
    if (last.ended !== null && last.ended !== last.effort) void search(run, last);
    return;
  }
  last?.over.abort();
  const earlier = last && hasSameJobs(last.work, work) ? (last.found?.schedule ?? last.earlier) : null;
  const over = new AbortController();
  const own: Search = { key, work, effort, earlier, found: null, ended: null, over };
  searches.set(run, own);
  void search(run, own);
}

/** Looks again for a schedule that could not be found. */
export function findAgain(run: string): void {
  const last = searches.get(run);
  if (last?.ended === 'failed') void search(run, last);
}

/** What is known of a run's schedule. */
export const useSchedule = (run: string | null): Known =>
  useSchedules(({ known }) => (run === null ? UNKNOWN : (known.get(run) ?? UNKNOWN)));
