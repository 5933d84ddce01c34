import {
  type LengthUnit,
  type LocalDate,
  type Micrometres,
  type Minor,
  minorDigits,
  nearestSixteenth,
  toUnit,
} from '../../src/units';

/** How this shop reads figures: its unit and currency, and the browser's language for numbers. */
export interface Ways {
  readonly unit: 'mm' | 'in';
  readonly currency: string;
  readonly locale: string;
}

/** A number with so many decimals at least and at most. */
export const number = (value: number, locale: string, least: number, most: number) =>
  new Intl.NumberFormat(locale, { minimumFractionDigits: least, maximumFractionDigits: most }).format(value);

const inUnit = (length: Micrometres, unit: LengthUnit, locale: string, least: number, most: number) =>
  `${number(toUnit(length, unit), locale, least, most)} ${unit}`;

/** A length on the bench: `203.5 mm`, `8.01 in`. */
export const benchLength = (length: Micrometres, { unit, locale }: Ways): string =>
  unit === 'mm' ? inUnit(length, 'mm', locale, 0, 1) : inUnit(length, 'in', locale, 0, 2);

/** A length of film as it is bought and told: `4.87 m`, `15.98 ft`. */
export const filmLength = (length: Micrometres, { unit, locale }: Ways): string =>
  unit === 'mm' ? inUnit(length, 'm', locale, 2, 2) : inUnit(length, 'ft', locale, 2, 2);

/** `203 × 146 mm` */
export function area(width: Micrometres, height: Micrometres, { unit, locale }: Ways): string {
  const most = unit === 'mm' ? 1 : 2;
  return `${number(toUnit(width, unit), locale, 0, most)} × ${inUnit(height, unit, locale, 0, most)}`;
}

/** To the nearest sixteenth, as a tape shows it: `24 1/16 in`. */
export function tapeInches(length: Micrometres): string {
  const { whole, over, under } = nearestSixteenth(length);
  if (over === 0) return `${whole} in`;
  return whole === 0 ? `${over}/${under} in` : `${whole} ${over}/${under} in`;
}

export const money = (amount: Minor, { currency, locale }: Ways): string =>
  new Intl.NumberFormat(locale, { style: 'currency', currency }).format(amount / 10 ** minorDigits(currency));

/** `11.8%` of a share between 0 and 1. */
export const percent = (share: number, { locale }: Ways): string =>
  new Intl.NumberFormat(locale, {
    style: 'percent',
    minimumFractionDigits: 1,
    maximumFractionDigits: 1,
  }).format(share);

export const whole = (value: number, { locale }: Ways): string => number(value, locale, 0, 0);

const noonOf = (date: LocalDate) => new Date(`${date}T12:00:00`);

/** `Fri 27 Nov`: the weekday is what a shop plans by. */
export const dueDay = (date: LocalDate, { locale }: Ways): string =>
  new Intl.DateTimeFormat(locale, { weekday: 'short', day: 'numeric', month: 'short' }).format(noonOf(date));

export const clockTime = (instant: number, { locale }: Ways): string =>
  new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit' }).format(instant);

/** A day and a time of it: `25 Nov, 14:05`. */
export const dayAndTime = (instant: string, { locale }: Ways): string =>
  new Intl.DateTimeFormat(locale, {
    day: 'numeric',
    month: 'short',
    hour: '2-digit',
    minute: '2-digit',
  }).format(new Date(instant));

/** A size as it is typed back into a field, in a unit of the reader. */
export const typedLength = (length: Micrometres, { unit, locale }: Ways): string =>
  new Intl.NumberFormat(locale, { maximumFractionDigits: unit === 'mm' ? 2 : 3, useGrouping: false }).format(
    toUnit(length, unit),
  );

/** One of two words by a count; the figure is in front of it. */
export function counted(count: number, one: string, many: string, ways: Ways): string {
  const rule = new Intl.PluralRules('en').select(count);
  return `${whole(count, ways)} ${rule === 'one' ? one : many}`;
}
