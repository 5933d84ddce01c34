/** Why a snapshot was taken. `day`: on the first opening of a day, as earlier versions did. */
export const snapshotReasons = ['hour', 'day', 'before-restoring', 'before-migrating'] as const;

export type SnapshotReason = (typeof snapshotReasons)[number];

interface Taken {
  /** The instant. */
  readonly at: string;
  readonly why: SnapshotReason;
}

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const MONTH = 31 * DAY;

/** Of any age, so that a shop that was closed for months finds some. */
const LEAST = 3;

/** Of those taken before something; each is as large as the book. */
const MOST_BEFORE = 12;

const isBefore = ({ why }: Taken): boolean => why === 'before-restoring' || why === 'before-migrating';

/** Whether an hour has passed since the last one of the hour. One of the future was taken by a clock that has been put right since. */
export const isDue = (taken: readonly Taken[], now: number): boolean =>
  !taken.some((one) => {
    const age = now - Date.parse(one.at);
    return !isBefore(one) && age >= 0 && age < HOUR;
  });

/**
 * Which snapshots are kept: of the last day all, of the month before it the last of each day, those from before a restore or a migration for
 * a month, the latest of them; and the latest of all, whatever their age.
 * @param now in milliseconds
 * @param dayOf the local date of an instant
 */
export function keptOf<One extends Taken>(
  taken: readonly One[],
  now: number,
  dayOf: (at: string) => string,
): One[] {
  const latestFirst = taken.toSorted((a, b) => b.at.localeCompare(a.at));
  const days = new Set<string>();
  let before = 0;
  return latestFirst.filter((one, place) => {
    const age = now - Date.parse(one.at);
    if (isBefore(one)) {
      before += 1;
      return place < LEAST || (age < MONTH && before <= MOST_BEFORE);
    }
    const day = dayOf(one.at);
    const isLastOfDay = !days.has(day);
    days.add(day);
    return place < LEAST || age < DAY || (age < MONTH && isLastOfDay);
  });
}
