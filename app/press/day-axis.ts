import type { Work } from '../../src/pressing';
import { type Away, allAway } from '../../src/pressing/schedule';

/** The chart's time from left to right: what lies between closing and opening takes no room. */
export interface DayAxis {
  /** The first and the last second that are shown. */
  readonly from: number;
  readonly to: number;
  /** Seconds that are shown before a time. */
  readonly shown: (seconds: number) => number;
  /** When hands have a break, and where the shop is closed in between. */
  readonly breaks: readonly Away[];
  readonly nights: readonly Away[];
}

/** When nobody is there. */
function awayOf({ workers, problem }: Work): readonly Away[] {
  const hands = workers.indexOf('hands');
  return allAway(problem.resources[hands]?.units.map(({ away }) => away) ?? [[]]);
}

/**
 * @param first when the first thing that is shown begins
 * @param last when the last ends
 */
export function dayAxis(work: Work, first: number, last: number): DayAxis {
  const away = awayOf(work).filter(({ from, to }) => to > first && from < last);
  const nights = away.filter(({ cold }) => cold);
  const hidden = (seconds: number) =>
    nights.reduce((sum, { from, to }) => sum + Math.max(0, Math.min(seconds, to) - Math.max(first, from)), 0);
  return {
    from: first,
    to: last,
    shown: (seconds) => Math.max(0, seconds - first - hidden(seconds)),
    breaks: away.filter(({ cold }) => !cold),
    nights,
  };
}
