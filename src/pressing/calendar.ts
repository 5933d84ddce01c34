import type { Hours, Week } from '../model';
import type { Away } from './schedule';

/** Hours are looked at for so many days: what is not done by then is never done in time. */
const DAYS = 60;
const MINUTE = 60_000;

/** Milliseconds since 1970 of a time on a day; a minute before midnight is midnight, since no time is later. */
function instantOn(day: Date, time: string): number {
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  const at = new Date(day.getFullYear(), day.getMonth(), day.getDate(), hours, minutes).getTime();
  return time === '23:59' ? at + MINUTE : at;
}

const pad = (value: number): string => String(value).padStart(2, '0');

/** A day's date on the calendar of the place. */
const dateOf = (day: Date): string => `${day.getFullYear()}-${pad(day.getMonth() + 1)}-${pad(day.getDate())}`;

/** A stretch in which the shop is open, in milliseconds since 1970. */
interface Open {
  readonly from: number;
  readonly to: number;
}

/** When the shop is open on a day, the earliest first; hours that cannot be are left out. */
export function openOn({ week, closed }: Hours, day: Date): Open[] {
  if (closed.some((date) => date === dateOf(day))) return [];
  // Sunday is the first day of a Date's week.
  const own = week[(day.getDay() + 6) % 7] ?? [];
  return own
    .map(({ from, to }) => ({ from: instantOn(day, from), to: instantOn(day, to) }))
    .filter(({ from, to }) => to > from)
    .sort((a, b) => a.from - b.from);
}

const dayFrom = (origin: Date, days: number): Date =>
  new Date(origin.getFullYear(), origin.getMonth(), origin.getDate() + days);

/** When nobody is there, and when all is switched off: machines go on in a break, hands do not. */
export interface AwayTimes {
  readonly hands: readonly Away[];
  readonly machines: readonly Away[];
}

/**
 * When hands and machines are away by the shop's hours, in seconds from midnight of a day. A shop that has told no hours is always open.
 * @param origin midnight at which the day begins
 */
export function awayTimes(hours: Hours, origin: Date): AwayTimes {
  const hands: Away[] = [];
  let end = origin.getTime();
  const seconds = (at: number) => Math.round((at - origin.getTime()) / 1000);
  for (let days = 0; days < DAYS; days += 1) {
    const open = openOn(hours, dayFrom(origin, days));
    open.forEach(({ from, to }, at) => {
      if (from > end) hands.push({ from: seconds(end), to: seconds(from), cold: at === 0 });
      end = Math.max(end, to);
    });
  }
  return { hands, machines: hands.filter(({ cold }) => cold) };
}

/** When either of two is away, the earliest first. */
function eitherAway(a: readonly Away[], b: readonly Away[]): Away[] {
  const all: Away[] = [];
  for (const gap of [...a, ...b].sort((one, other) => one.from - other.from)) {
    const last = all.at(-1);
    if (last && gap.from <= last.to)
      all[all.length - 1] = { ...last, to: Math.max(last.to, gap.to), cold: last.cold || gap.cold };
    else all.push(gap);
  }
  return all;
}

/**
 * When someone is away who has hours of their own: also while the shop is open, and always while it is not.
 * @param away when the shop has nobody there, from the same origin
 */
export const awayToo = (
  away: readonly Away[],
  week: Week,
  closed: Hours['closed'],
  origin: Date,
): readonly Away[] => {
  // Who has no hours at all is never there, where a shop that has told none is always open.
  const isNever = week.every((day) => day.length === 0);
  const own = isNever
    ? [{ from: 0, to: DAYS * 24 * 3600, cold: true }]
    : awayTimes({ week, closed }, origin).hands;
  return eitherAway(away, own);
};

/** When the shop closes on a day, or last before it if it is closed then; the end of the day if it never opens. */
export function closingOf(hours: Hours, day: Date): Date {
  for (let before = 0; before < 7; before += 1) {
    const last = openOn(hours, dayFrom(day, -before)).at(-1);
    if (last) return new Date(last.to);
  }
  return dayFrom(day, 1);
}

/** The longest that the shop is open at a stretch, breaks included, in seconds; a shop that has told no hours is always open. */
export function longestOpen({ week }: Hours): number {
  const minutes = (time: string) => {
    const [hour = 0, minute = 0] = time.split(':').map(Number);
    return 60 * hour + minute;
  };
  const lengths = week.flatMap((day) => {
    const times = day.flatMap(({ from, to }) => [minutes(from), minutes(to)]);
    return times.length > 0 ? [60 * (Math.max(...times) - Math.min(...times))] : [];
  });
  return lengths.length > 0 ? Math.max(...lengths) : Number.POSITIVE_INFINITY;
}
