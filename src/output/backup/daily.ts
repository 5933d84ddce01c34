import type { LocalDate } from '../../units';

/** So many days are kept. */
const KEPT = 30;

const NAME = /^rollwright \d{4}-\d\d-\d\d\.zip$/;

/** The name of the backup that is written by itself on a day: it is the same in every language, and a later one takes its place. */
export const dailyName = (day: LocalDate): string => `rollwright ${day}.zip`;

/** Which files of a folder are backups of days before the last thirty that have one. What has another name is left alone. */
export const surplus = (names: readonly string[]): string[] =>
  names
    .filter((name) => NAME.test(name))
    .toSorted()
    .slice(0, -KEPT);
