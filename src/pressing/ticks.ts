import type { Book, Progress, Tick } from '../model';
import { sum } from '../units';
import type { Work } from './jobs';
import { BEGUN, printKey } from './keys';
import type { Available, Away, ScheduleProblem, Task } from './schedule';

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
 * Whether what begins a chain would lie too long for it if it ended at a time: the hands that all the rest takes are away.
 * @param away when all hands are
 */
function liesTooLong(
  { tasks, chains }: ScheduleProblem,
  first: number,
  end: number,
  away: readonly Away[],
): boolean {
  const chain = chains.find((own) => own.tasks[0] === first && own.tasks.length > 2);
  if (!chain) return false;
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
    if (liesTooLong(work.problem, index, start + duration, away)) return;
    fixed[index] = { start, end: Math.max(start + duration, now) };
  });
  return tasks.map((task, index) => ({ ...task, fixed: fixed[index] ?? null }));
}

/**
 * Machines as warm as what was last done with them.
 * @param since seconds for which what was switched on is warming up
 */
export function asWarm(problem: ScheduleProblem, since: number): ScheduleProblem {
  const { tasks, resources, now } = problem;
  const last = resources.map(() => ({ end: -1, setting: null as number | null }));
  for (const { uses, fixed } of tasks) {
    if (!fixed || fixed.end > now) continue;
    for (const { resource, setting } of uses) {
      const known = last[resource];
      if (known && setting > 0 && fixed.end > known.end) Object.assign(known, { end: fixed.end, setting });
    }
  }
  return {
    ...problem,
    resources: resources.map((resource, index) => {
      const { end = -1, setting = null } = last[index] ?? {};
      // One that was switched off since then is cold again.
      const isOff = ({ away }: Available) => away.some((gap) => gap.cold && gap.to > end && gap.to <= now);
      return {
        ...resource,
        units: resource.units.map((unit) => ({
          ...unit,
          setting: isOff(unit) ? null : (setting ?? unit.setting),
        })),
        setup:
          resource.setup && setting === null
            ? { ...resource.setup, cold: Math.max(0, resource.setup.cold - since) }
            : resource.setup,
      };
    }),
  };
}

/** The work of a run by itself as it stands: see {@link fixTicked}; all that is not done begins from now on. */
export const asTicked = (work: Work, done: ReadonlyMap<string, number>, now: number): Work => ({
  ...work,
  problem: asWarm({ ...work.problem, now, tasks: fixTicked(work, done, now, true, []) }, now),
});
