import { daysFromToday, monthNamed, weekdayNamed } from './day-names';
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

const DAY = 86_400_000;
/** A day without a year that is not longer past is past; a longer one is of the year to come (common practice, no source). */
const MOST_PAST = 60;

const daysAfter = (today: LocalDate, days: number): LocalDate => utcDay(Date.parse(today) + days * DAY);

/** The day of a month in the year that is meant: within {@link MOST_PAST} days before today, or else the next. */
function dayWithoutYear(month: number, day: number, today: LocalDate): Result<LocalDate, DateProblem> {
  const earliest = daysAfter(today, -MOST_PAST);
  const year = Number(earliest.slice(0, 4));
  // A leap day may be four years away, or eight where a century is none.
  const found = Array.from({ length: 9 }, (_, later) => dayOf(year + later, month, day)).find(
    (read) => read.ok && read.value >= earliest,
  );
  return found ?? fail('no-such-day');
}

const fullYear = (digits: string): number => Number(digits) + (digits.length === 2 ? 2000 : 0);

/** A day of a month, of the year that is written or else meant; that cannot be told without today. */
function dayIn(month: number, day: number, year: string, today: LocalDate | null) {
  if (year !== '') return dayOf(fullYear(year), month, day);
  return today === null ? fail<DateProblem>('unreadable') : dayWithoutYear(month, day, today);
}

/** Reads a date whose month is a word: `Dec 3, 2026`, `30 Nov`, `3 de diciembre de 2026`; `null` if it is none. */
function readNamedMonth(text: string, today: LocalDate | null): Result<LocalDate, DateProblem> | null {
  const [, before = '', word = '', after = '', year = ''] =
    /^(\d{1,2})?(?:st|nd|rd|th)?[\s.-]*(?:de\s+)?(\p{L}+)\.?[\s-]*(?:(\d{1,2})(?:st|nd|rd|th)?(?!\d))?(?:[\s,-]*(?:del?\s+)?(\d{4}))?$/iu.exec(
      text,
    ) ?? [];
  const month = monthNamed(word);
  if (month === null || (before === '' && after === '')) return null;
  if (before === '' || after === '') return dayIn(month, Number(before || after), year, today);
  // `3-Dec-26`, as spreadsheets write it.
  return year === '' && after.length === 2 ? dayIn(month, Number(before), after, today) : null;
}

/** Reads a date of figures. */
function readFigures(
  text: string,
  order: DateOrder | null,
  today: LocalDate | null,
): Result<LocalDate, DateProblem> {
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text);
  if (iso) return dayOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const parts = /^(\d{1,2})([-/.])\s?(\d{1,2})(?:\2\s?(\d{4}|\d{2})|\.)?$/.exec(text);
  if (!parts) return fail('unreadable');
  const [first, second, year] = [Number(parts[1]), Number(parts[3]), parts[4] ?? ''];
  let dayFirst: boolean;
  if (parts[2] === '.') dayFirst = true;
  else if (first > 12 || first === second) dayFirst = true;
  else if (second > 12) dayFirst = false;
  else if (order === null) return fail('ambiguous');
  else dayFirst = order === 'day-first';
  return dayFirst ? dayIn(second, first, year, today) : dayIn(first, second, year, today);
}

/** Reads `Wed` as the next such day, today's among them, and `today` and `tomorrow`; `null` if it is none. */
function readWord(word: string, today: LocalDate): LocalDate | null {
  const away = daysFromToday(word);
  if (away !== null) return daysAfter(today, away);
  // Three letters may stand for a month as well.
  const weekday = monthNamed(word) === null ? weekdayNamed(word) : null;
  return weekday === null ? null : daysAfter(today, (weekday - weekdayOf(today) + 7) % 7);
}

const weekdayOf = (day: LocalDate): number => new Date(day).getUTCDay();

/**
 * Reads `2026-11-25`, `25.11.2026`, `11/25/2026`, `25/11/26`, `Dec 3, 2026`, `30 Nov 2026`, with a time or a day of the week
 * beside it or not; and, where today is given, `12/2` and `Wed`.
 * Dots mean day first everywhere; with slashes or dashes the order must follow from the numbers
 * (one of them is above 12, or both are alike) or be given. A day of the week must be that of the date.
 */
export function parseDate(
  text: string,
  order: DateOrder | null,
  today: LocalDate | null = null,
): Result<LocalDate, DateProblem> {
  const plain = text.trim().replace(/(?:\s*,)?[T\s]\d{1,2}:\d{2}.*$/, '');
  if (plain === '') return fail('empty');
  const word = today === null ? null : readWord(plain, today);
  if (word !== null) return ok(word);
  const month = readNamedMonth(plain, today);
  if (month !== null) return month;
  const [, named = '', rest = ''] = /^(\p{L}{3,})\.?,?\s+(.+)$/u.exec(plain) ?? [];
  const weekday = weekdayNamed(named);
  const dated = weekday === null ? plain : rest;
  const read = readNamedMonth(dated, today) ?? readFigures(dated, order, today);
  return read.ok && weekday !== null && weekdayOf(read.value) !== weekday ? fail('no-such-day') : read;
}

/** Whether a date is another day by either {@link DateOrder}. */
export const isAmbiguous = (text: string, today: LocalDate): boolean => {
  const read = parseDate(text, null, today);
  return !read.ok && read.problem === 'ambiguous';
};
