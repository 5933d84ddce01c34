import type { Book, Progress, Tick } from '../model';
import { sum } from '../units';
import type { Work } from './jobs';
import { BEGUN, printKey } from './keys';
import {
  type Available,
  type Away,
  isColdBetween,
  mayTake,
  type ScheduleProblem,
  setupTime,
  switchedOff,
  type Task,
} from './schedule';

type Ticked = Pick<Tick, 'subject' | 'done' | 'at' | 'id'>;

/** The tick that holds for each subject; of one that was taken back there is none. */
function standing<One extends Ticked>(ticks: Iterable<One>): One[] {
  const last = new Map<string, One>();
  for (const tick of ticks) {
    const other = last.get(tick.subject);
    // The later tick holds; of two at once, the same one on every device.
    if (!other || tick.at > other.at || (tick.at === other.at && tick.id > other.id))
      last.set(tick.subject, tick);
  }
  return [...last.values()].filter(({ done }) => done);
}

/** When what was ticked last was ticked, by its subject; what was taken back is not in it. */
export const ticked = (ticks: Iterable<Ticked>): Map<string, string> =>
  new Map(standing(ticks).map(({ subject, at }) => [subject, at]));

/** The initials of who ticked it, by its subject; empty where nobody said. */
export const tickedBy = (ticks: Iterable<Ticked & Pick<Tick, 'by'>>): Map<string, string> =>
  new Map(standing(ticks).map(({ subject, by }) => [subject, by]));

/** The machine that each subject was done on, where that was said. */
export const tickedOn = (ticks: Iterable<Ticked & Pick<Tick, 'machine'>>): Map<string, string> =>
  new Map(standing(ticks).flatMap(({ subject, machine }) => (machine === null ? [] : [[subject, machine]])));

/** All that was ticked on a run. */
export const ticksOf = (book: Pick<Book, 'tick'>, run: string): Tick[] =>
  Object.values(book.tick).filter((tick) => tick.run === run);

/** What of the work is printed before it begins, since the run stopped on the way: done at the start, in the terms of {@link asTicked}. */
export const printedBefore = ({ spans }: Pick<Work, 'spans'>, { printedTo }: Progress): Map<string, number> =>
  new Map(spans.flatMap(({ to }, index) => (to <= printedTo ? [[printKey(index), 0]] : [])));

/**
 * When each job was done: ticked, the last of its parts ticked, or waited for by one that is done; `null` for what is not.
 * @param done when each subject was ticked
 * @param lasts how long a task took: what it waited for was done, at the latest, when it began
 */
function endsOf(
  { jobs, problem: { tasks } }: Pick<Work, 'jobs' | 'problem'>,
  done: ReadonlyMap<string, number>,
  lasts: (task: Task) => number,
): (number | null)[] {
  const ends = jobs.map(({ key, parts }) => {
    const own = done.get(key) ?? null;
    if (own !== null || parts.length === 0) return own;
    // Cut apart is a span, too, when its last cut is made, or the last of its copies is out.
    const last = Math.max(...parts.map((part) => done.get(part) ?? Number.POSITIVE_INFINITY));
    return Number.isFinite(last) ? last : null;
  });
  for (let index = tasks.length - 1; index >= 0; index -= 1) {
    const end = ends[index];
    const task = tasks[index];
    if (end === null || end === undefined || !task) continue;
    for (const { task: before, lag } of task.after) {
      // What need only have begun may not be done yet.
      if (lag < 0) continue;
      const begin = Math.max(0, end - lasts(task));
      ends[before] = Math.min(ends[before] ?? begin, begin);
    }
  }
  return ends;
}

/** The instant at which each job of a run was done by its ticks, in milliseconds; `null` for what is not. What was printed before counts. */
export const doneAt = (
  work: Work,
  progress: Progress,
  done: ReadonlyMap<string, string>,
): readonly (number | null)[] =>
  endsOf(
    work,
    new Map([
      ...printedBefore(work, progress),
      ...[...done].map(([key, at]) => [key, Date.parse(at)] as const),
    ]),
    () => 0,
  );

/**
 * Whether what begins a stint would go on over a night if it began at a time, or what begins a chain lie too long for it: the hands that
 * all the rest takes are away.
 * @param away when all hands are
 */
function liesTooLong(
  { tasks, chains, stints }: ScheduleProblem,
  first: number,
  start: number,
  away: readonly Away[],
): boolean {
  const own = chains.filter((chain) => chain.tasks[0] === first);
  const lengthOf = (some: readonly number[]) => sum(some.map((index) => tasks[index]?.duration ?? 0));
  if (stints.some((stint) => stint.first === first)) {
    const least = start + Math.max(tasks[first]?.duration ?? 0, ...own.map((chain) => lengthOf(chain.tasks)));
    return switchedOff(away).some(({ from, to }) => from < least && to > start);
  }
  const chain = own.find((each) => each.tasks.length > 2);
  if (!chain) return false;
  const end = start + (tasks[first]?.duration ?? 0);
  const rest = chain.tasks.slice(1).map((index) => tasks[index]?.duration ?? 0);
  let time = end;
  for (const [at, duration] of rest.entries()) {
    for (const gap of away) if (gap.to > time && gap.from < time + duration) time = gap.to;
    if (at < rest.length - 1) time += duration;
  }
  return time - end > Math.max(chain.limit, sum(rest.slice(0, -1)));
}

/**
 * The tasks as they stand: what is ticked has its times, what it waited for was done before it, and what runs by itself is taken to
 * have gone on, but for film that would lie wet too long, since nobody is there to powder it.
 * @param done when each job was ticked, by its key, in seconds from the start
 * @param now seconds from the start
 * @param isPrinting whether the printer is at this run
 * @param away when all hands are
 */
export function fixTicked(
  work: Pick<Work, 'jobs' | 'problem'>,
  done: ReadonlyMap<string, number>,
  now: number,
  isPrinting: boolean,
  away: readonly Away[],
): Task[] {
  const { tasks } = work.problem;
  const ends = endsOf(work, done, ({ duration }) => duration);
  const begun = done.get(BEGUN) ?? 0;
  const fixed: Task['fixed'][] = tasks.map(({ duration }, index) => {
    const end = ends[index] ?? null;
    return end === null ? null : { start: Math.max(0, end - duration), end };
  });
  // What runs by itself, once all before it is done.
  tasks.forEach(({ after, duration }, index) => {
    const kind = work.jobs[index]?.kind;
    const isAlone = kind === 'line' || (isPrinting && (kind === 'ready' || kind === 'print'));
    if (fixed[index] || !isAlone) return;
    const before = after.map(({ task }) => fixed[task]?.end ?? null);
    if (before.some((end) => end === null || end > now)) return;
    const start = Math.max(begun, ...before.map((end) => end ?? 0));
    if (liesTooLong(work.problem, index, start, away)) return;
    fixed[index] = { start, end: Math.max(start + duration, now) };
  });
  return tasks.map((task, index) => ({ ...task, fixed: fixed[index] ?? null }));
}

/** What a unit was set to by what is done, and until when it was at work on that. */
interface LastSet {
  readonly end: number;
  readonly setting: number | null;
}

/** What a unit is set to at a time: one that was switched off since it was at work is cold. */
const settingAt = ({ away }: Available, { end, setting }: LastSet, time: number): number | null =>
  isColdBetween(away, end, time) ? null : setting;

/** How each unit was left by what is done: where nobody tells which one did it, by one that was free, and of these by that which took least to set up. */
function lastSets({ tasks, resources, now }: ScheduleProblem): LastSet[][] {
  const last = resources.map(({ units }) => units.map((): LastSet => ({ end: -1, setting: null })));
  const done = tasks
    .flatMap(({ uses, fixed }) => (fixed && fixed.end <= now ? uses.map((use) => ({ use, ...fixed })) : []))
    .sort((a, b) => a.start - b.start || a.end - b.end);
  for (const { use, start, end } of done) {
    const sets = last[use.resource];
    const units = resources[use.resource]?.units ?? [];
    if (!sets || use.setting === 0) continue;
    const costOf = (at: number): number => {
      const [unit, set] = [units[at], sets[at]];
      if (!unit?.setup || !set || !mayTake(use, at)) return Number.POSITIVE_INFINITY;
      const busy = Math.max(0, set.end - start);
      return busy + setupTime(unit.setup, settingAt(unit, set, start), use.setting);
    };
    const chosen = sets.reduce((best, _, at) => (costOf(at) < costOf(best) ? at : best), 0);
    sets[chosen] = { end: Math.max(end, sets[chosen]?.end ?? end), setting: use.setting };
  }
  return last;
}

/**
 * Machines as warm as what was last done with them.
 * @param since seconds for which what was switched on is warming up
 */
export function asWarm(problem: ScheduleProblem, since: number): ScheduleProblem {
  const last = lastSets(problem);
  return {
    ...problem,
    resources: problem.resources.map(({ units }, resource) => ({
      units: units.map((unit, at) => {
        const setting = settingAt(unit, last[resource]?.[at] ?? { end: -1, setting: null }, problem.now);
        return { ...unit, setting, warmed: setting === null ? since : 0 };
      }),
    })),
  };
}

/** The work of a run by itself as it stands: see {@link fixTicked}; all that is not done begins from now on. */
export const asTicked = (work: Work, done: ReadonlyMap<string, number>, now: number): Work => ({
  ...work,
  problem: asWarm({ ...work.problem, now, tasks: fixTicked(work, done, now, true, []) }, now),
});
