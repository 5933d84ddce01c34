import type { Work } from './jobs';
import { awayBetween, endOver, mayTake, type Schedule, type Use } from './schedule';

/** Work of hands that is still ahead, and who is at it. */
interface Hold {
  readonly task: number;
  /** Its place among the task's uses. */
  readonly at: number;
  readonly use: Use;
  readonly from: number;
  readonly to: number;
  person: number;
}

/** All that hands are at or come to, the earliest first. */
function holdsOf(
  { problem: { tasks, now } }: Work,
  hands: number,
  { starts, ends, units }: Schedule,
): Hold[] {
  const holds = tasks.flatMap(({ uses, fixed, pauses }, task): Hold[] => {
    if (fixed && fixed.end <= now) return [];
    const [start, end] = [starts[task] ?? 0, ends[task] ?? 0];
    return uses.flatMap((use, at): Hold[] => {
      if (use.resource !== hands) return [];
      const to = pauses ? end : start + use.to;
      return [{ task, at, use, from: start + use.from, to, person: units[task]?.[at] ?? 0 }];
    });
  });
  return holds.sort((a, b) => a.from - b.from || a.task - b.task);
}

/**
 * Puts the work of hands to people so that whoever had the film, or the garments, before goes on with them as far as that can be: in
 * the order of time two people exchange what they do, from there until both are free, where both are there for it. When all is done
 * stays as it is.
 * @returns the units of each task
 */
export function withSteadyHands(work: Work, schedule: Schedule): Schedule['units'] {
  const { tasks, resources } = work.problem;
  const hands = work.workers.indexOf('hands');
  const people = resources[hands]?.units ?? [];
  if (people.length < 2) return schedule.units;
  const holds = holdsOf(work, hands, schedule);
  const lastOf = new Map<number, Hold>();
  /** Until when each is at what came before. */
  const busyTo = people.map(() => 0);
  /** Whether someone else may do it at the same time. */
  const isThere = (person: number, { task, use, from, to }: Hold): boolean => {
    const away = people[person]?.away ?? [];
    if (tasks[task]?.fixed || !mayTake(use, person)) return false;
    if (!tasks[task]?.pauses) return awayBetween(away, from, to) === 0;
    return awayBetween(away, from, from + 1) === 0 && endOver(away, from, use.to - use.from) === to;
  };
  /** Who was last at what a task is done to; `null` if nobody was from now on. */
  const before = (task: number): Hold | null => {
    const found = (tasks[task]?.after ?? []).flatMap(({ task: other, lag }) =>
      lag < 0 ? [] : (lastOf.get(other) ?? before(other) ?? []),
    );
    return found.reduce<Hold | null>((last, own) => (last && last.to >= own.to ? last : own), null);
  };
  /** Lets two people exchange what they do from a place on until both are free at once, if both are there for it. */
  const exchange = (from: number, one: number, two: number): void => {
    const exchanged: Hold[] = [];
    let until = holds[from]?.to ?? 0;
    for (let index = from; index < holds.length; index += 1) {
      const own = holds[index];
      if (!own || own.from >= until) break;
      if (own.person !== one && own.person !== two) continue;
      exchanged.push(own);
      until = Math.max(until, own.to);
    }
    const other = ({ person }: Hold) => (person === one ? two : one);
    if (exchanged.every((own) => isThere(other(own), own)))
      for (const own of exchanged) own.person = other(own);
  };
  for (const [index, hold] of holds.entries()) {
    const wished = (lastOf.get(hold.task) ?? before(hold.task))?.person ?? hold.person;
    if (wished !== hold.person && (busyTo[wished] ?? 0) <= hold.from) exchange(index, hold.person, wished);
    lastOf.set(hold.task, hold);
    busyTo[hold.person] = Math.max(busyTo[hold.person] ?? 0, hold.to);
  }
  const units = schedule.units.map((own) => [...own]);
  for (const { task, at, person } of holds) {
    const own = units[task];
    if (own) own[at] = person;
  }
  return units;
}
