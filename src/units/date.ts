import { fail, ok, type Result } from './result';

declare const localDate: unique symbol;
/** A day on the shop's calendar, `YYYY-MM-DD`, without a time zone. */
export type LocalDate = string & { readonly [localDate]: true };

/** How a date of numbers alone is read: day first or month first. */
export type DateOrder = 'day-first' | 'month-first';

/** `ambiguous`: `3/4/2026` is two different days until {@link DateOrder} is known. */
export type DateProblem = 'empty' | 'unreadable' | 'no-such-day' | 'ambiguous';

const pad = (value: number, length: number) => String(value).padStart(length, '0');

/** The day in UTC of an instant in milliseconds since 1970. */
export const utcDay = (at: number): LocalDate => new Date(at).toISOString().slice(0, 10) as LocalDate;

function dayOf(year: number, month: number, day: number): Result<LocalDate, DateProblem> {
  const date = new Date(Date.UTC(year, month - 1, day));
  const real =
    date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  if (!real || year < 1900) return fail('no-such-day');
  return ok(`${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}` as LocalDate);
}

/** Whether a text is a day of the calendar as it is stored, `YYYY-MM-DD`. */
export function isDay(text: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  return parts !== null && dayOf(Number(parts[1]), Number(parts[2]), Number(parts[3])).ok;
}

/**
 * Reads `2026-11-25`, `25.11.2026`, `11/25/2026`, `25/11/26`.
 * Dots mean day first everywhere; with slashes or dashes the order must follow from the numbers
 * (one of them is above 12, or both are alike) or be given.
 */
export function parseDate(text: string, order: DateOrder | null): Result<LocalDate, DateProblem> {
  const plain = text.trim();
  if (plain === '') return fail('empty');
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:T.*)?$/.exec(plain);
  if (iso) return dayOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const parts = /^(\d{1,2})([-/.])\s?(\d{1,2})\2\s?(\d{4}|\d{2})$/.exec(plain);
  if (!parts) return fail('unreadable');
  const [first, second] = [Number(parts[1]), Number(parts[3])];
  const year = Number(parts[4]) + (parts[4]?.length === 2 ? 2000 : 0);
  let dayFirst: boolean;
  if (parts[2] === '.') dayFirst = true;
  else if (first > 12 || first === second) dayFirst = true;
  else if (second > 12) dayFirst = false;
  else if (order === null) return fail('ambiguous');
  else dayFirst = order === 'day-first';
  return dayFirst ? dayOf(year, second, first) : dayOf(year, first, second);
}
