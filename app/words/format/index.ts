import {
  type Angle,
  degreesOf,
  fromMm,
  fromUnit,
  kilogramsIn,
  type LengthRate,
  type LengthUnit,
  type LocalDate,
  litresIn,
  type Microlitres,
  type Micrometres,
  type Milligrams,
  type MilliMinor,
  type Minor,
  minorDigits,
  nearestSixteenth,
  type Temperature,
  type TemperatureUnit,
  toDegrees,
  toMass,
  toMm,
  toUnit,
  toVolume,
} from '../../../src/units';

/** How this shop reads figures: its unit and currency, and a locale of the language in force, for numbers and plurals. */
export interface Ways {
  readonly unit: 'mm' | 'in';
  readonly currency: string;
  readonly locale: string;
}

/** Formats by their locale and options, each made once: making one takes longer than a hundred uses of it. */
function madeOnce<Options, Format>(make: (locale: string, options: Options) => Format) {
  const known = new Map<string, Format>();
  return (locale: string, options: Options): Format => {
    const key = `${locale} ${JSON.stringify(options)}`;
    const format = known.get(key) ?? make(locale, options);
    known.set(key, format);
    return format;
  };
}

const formatOf = madeOnce(
  (locale, options: Intl.NumberFormatOptions) => new Intl.NumberFormat(locale, options),
);

const dateFormatOf = madeOnce(
  (locale, options: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(locale, options),
);

const hourCycleOf = madeOnce((locale, _: object) =>
  new Intl.DateTimeFormat(locale, { hour: 'numeric' }).resolvedOptions(),
);

const listFormatOf = madeOnce(
  (locale, options: Intl.ListFormatOptions) => new Intl.ListFormat(locale, options),
);

const pluralsOf = madeOnce(
  (locale, options: Intl.PluralRulesOptions) => new Intl.PluralRules(locale, options),
);

/** A number with so many decimals at least and at most. */
export const number = (value: number, locale: string, least: number, most: number, useGrouping = true) =>
  formatOf(locale, { minimumFractionDigits: least, maximumFractionDigits: most, useGrouping }).format(value);

const inUnit = (length: Micrometres, unit: LengthUnit, locale: string, least: number, most: number) =>
  `${number(toUnit(length, unit), locale, least, most)} ${unit}`;

/** As a tape shows a length, without the unit, in one piece: `24 1/16`. */
function sixteenths(length: Micrometres): string {
  const { whole, over, under } = nearestSixteenth(length);
  if (over === 0) return `${whole}`;
  return whole === 0 ? `${over}/${under}` : `${whole}\u00a0${over}/${under}`;
}

/** To the nearest sixteenth: `24 1/16 in`. */
export const tapeInches = (length: Micrometres): string => `${sixteenths(length)}\u00a0in`;

const thousandths = (length: Micrometres): number => Math.round(1000 * toUnit(length, 'in'));

/** Whether a length is what a tape shows: whole sixteenths of an inch, to the thousandth that a field is typed to. */
export function isOnTape(length: Micrometres): boolean {
  const { whole, over, under } = nearestSixteenth(length);
  return thousandths(fromUnit(whole + over / under, 'in')) === thousandths(length);
}

/** A length on the bench: `203.5 mm`, `8.01 in`, and `18 1/2 in` where it is whole sixteenths. */
export function shortLength(length: Micrometres, { unit, locale }: Ways): string {
  if (unit === 'mm') return inUnit(length, 'mm', locale, 0, 1);
  return isOnTape(length) ? tapeInches(length) : inUnit(length, 'in', locale, 0, 2);
}

/** A length that is measured off with a ruler: `450.5 mm`, `17 3/4 in`. */
export const rulerLength = (length: Micrometres, ways: Ways): string =>
  ways.unit === 'mm' ? shortLength(length, ways) : tapeInches(length);

/** A length of film as it is bought and told: `4.87 m`, `15.98 ft`. */
export const filmLength = (length: Micrometres, { unit, locale }: Ways): string =>
  unit === 'mm' ? inUnit(length, 'm', locale, 2, 2) : inUnit(length, 'ft', locale, 2, 2);

/** A length of film that nobody measured to the centimetre: `50 m`, `164 ft`. */
export const roundLength = (length: Micrometres, { unit, locale }: Ways): string =>
  unit === 'mm' ? inUnit(length, 'm', locale, 0, 1) : inUnit(length, 'ft', locale, 0, 0);

/** `203 × 146 mm`, `8 × 5 3/4 in` */
export function area(width: Micrometres, height: Micrometres, { unit, locale }: Ways): string {
  if (unit === 'in' && isOnTape(width) && isOnTape(height)) {
    return `${sixteenths(width)} × ${tapeInches(height)}`;
  }
  const most = unit === 'mm' ? 1 : 2;
  return `${number(toUnit(width, unit), locale, 0, most)} × ${inUnit(height, unit, locale, 0, most)}`;
}

/** A length as two rulers show it, the shop's own first. */
export function onRulers(length: Micrometres, ways: Ways): readonly [own: string, other: string] {
  const [mm, inches] = [rulerLength(length, { ...ways, unit: 'mm' }), tapeInches(length)];
  return ways.unit === 'mm' ? [mm, inches] : [inches, mm];
}

export const money = (amount: Minor, { currency, locale }: Ways): string =>
  formatOf(locale, { style: 'currency', currency }).format(amount / 10 ** minorDigits(currency));

/** Decimals of an amount in thousandths: small ones are told to a tenth. */
const finely = (thousandths: number): readonly [least: number, most: number] =>
  Math.abs(thousandths) < 100_000 && thousandths % 1000 !== 0 ? [1, 1] : [0, 0];

/** Ink as bottles tell it: `12.4 ml`, `1,250 ml`. */
export const inkVolume = (volume: Microlitres, { locale }: Ways): string =>
  `${number(toVolume(volume, 'ml'), locale, ...finely(volume))} ml`;

/** Powder as a scale tells it: `86.5 g`, `1,240 g`. */
export const powderMass = (mass: Milligrams, { locale }: Ways): string =>
  `${number(toMass(mass, 'g'), locale, ...finely(mass))} g`;

/** `11.8%` of a share between 0 and 1. */
export const percent = (share: number, { locale }: Ways): string =>
  formatOf(locale, { style: 'percent', minimumFractionDigits: 1, maximumFractionDigits: 1 }).format(share);

/** `0.1%` of a share that is no more than that: rounded up, so that what is told is true. */
export const percentAtMost = (share: number, ways: Ways): string =>
  percent(Math.ceil(1000 * share) / 1000, ways);

export const whole = (value: number, { locale }: Pick<Ways, 'locale'>): string => number(value, locale, 0, 0);

const noonOf = (date: LocalDate) => new Date(`${date}T12:00:00`);

/** `Fri 27 Nov`: the weekday is what a shop plans by. */
export const dueDay = (date: LocalDate, { locale }: Pick<Ways, 'locale'>): string =>
  dateFormatOf(locale, { weekday: 'short', day: 'numeric', month: 'short' }).format(noonOf(date));

/** A day as a letter has it: `27 November 2026`. */
export const dayOf = (date: LocalDate, { locale }: Ways): string =>
  dateFormatOf(locale, { dateStyle: 'long' }).format(noonOf(date));

/** A day with its year: `25 Nov 2026`. */
export const calendarDay = (date: LocalDate, { locale }: Pick<Ways, 'locale'>): string =>
  dateFormatOf(locale, { dateStyle: 'medium' }).format(noonOf(date));

/** How an hour is written: `09` of twenty-four, `9` of twelve. */
const hourOf = (locale: string) => (hourCycleOf(locale, {}).hour12 ? 'numeric' : '2-digit');

/** A time of the day in one piece: `09:05`, `9:05 PM`. */
export const clockTime = (instant: number, { locale }: Pick<Ways, 'locale'>): string =>
  dateFormatOf(locale, { hour: hourOf(locale), minute: '2-digit' })
    .format(instant)
    .replaceAll(/\s/g, '\u00a0');

/** A time of any day, `HH:MM`, as its country writes it: `07:00`, `7:00 AM`. */
export const timeOfDay = (time: string, ways: Pick<Ways, 'locale'>): string =>
  clockTime(Date.parse(`2026-01-05T${time}`), ways);

const localDay = (instant: number): string => new Date(instant).toDateString();
const A_WEEK = 6 * 24 * 60 * 60 * 1000;

/** A time and the day that it bears where that is not today's: `Sat`, and from a week on `Sat 5 Dec`. */
export interface Moment {
  readonly day: string | null;
  readonly time: string;
}

/**
 * A time as it is said in a sentence.
 * @param from what the reader takes for granted as the day: now, or the time told before
 */
export function momentOf(instant: number, ways: Ways, from = Date.now()): Moment {
  const isNear = Math.abs(instant - from) < A_WEEK;
  const day = dateFormatOf(ways.locale, {
    weekday: 'short',
    ...(isNear ? {} : { day: 'numeric', month: 'short' }),
  }).format(instant);
  return { day: localDay(instant) === localDay(from) ? null : day, time: clockTime(instant, ways) };
}

/** A time in a table or beside a bar, with its day where that is not today's: `14:05`, `Sat 14:05`. */
export function timeAndDay(instant: number, ways: Ways, from?: number): string {
  const { day, time } = momentOf(instant, ways, from);
  return day === null ? time : `${day} ${time}`;
}

/** A day and a time of it, the time in one piece: `25 Nov, 14:05`. */
export const dayAndTime = (instant: string, { locale }: Ways): string =>
  dateFormatOf(locale, {
    day: 'numeric',
    month: 'short',
    hour: hourOf(locale),
    minute: '2-digit',
  })
    .formatToParts(new Date(instant))
    .map(({ type, value }, at, parts) =>
      type === 'literal' && parts[at + 1]?.type === 'dayPeriod' ? '\u00a0' : value,
    )
    .join('');

/** A number as it is typed back into a field: without grouping, with so many decimals at most, and at least. */
export const typedNumber = (value: number, locale: string, most: number, least = 0): string =>
  number(value, locale, least, most, false);

/** A size as it is typed back into a field, in a unit of the reader. */
export const typedLength = (length: Micrometres, { unit, locale }: Ways): string =>
  typedNumber(toUnit(length, unit), locale, unit === 'mm' ? 2 : 3);

/** `ink, powder and film` */
export const listed = (names: readonly string[], { locale }: Pick<Ways, 'locale'>): string =>
  listFormatOf(locale, { type: 'conjunction' }).format(names);

/**
 * The first of many names, and how many more there are: `Badge, Crest and 7 more`.
 * @param most how many are named; one more than that is named too, rather than counted
 * @param more the word behind the count
 */
export const listedUpTo = (
  most: number,
  names: readonly string[],
  more: string,
  ways: Pick<Ways, 'locale'>,
): string =>
  listed(
    names.length > most + 1
      ? [...names.slice(0, most), `${whole(names.length - most, ways)} ${more}`]
      : names,
    ways,
  );

/** One of two words by a count; the figure is in front of it. */
export function counted(count: number, one: string, many: string, ways: Pick<Ways, 'locale'>): string {
  const rule = pluralsOf(ways.locale, {}).select(count);
  return `${whole(count, ways)} ${rule === 'one' ? one : many}`;
}

/** How far something is turned: `22.5°`. */
export const angle = (value: Angle, { locale }: Pick<Ways, 'locale'>): string =>
  `${number(degreesOf(value), locale, 0, 1)}°`;

/** `330 °F`, `165.5 °C` */
const degrees = (value: Temperature, unit: TemperatureUnit, locale: string): string =>
  `${number(Math.round(toDegrees(value, unit)), locale, 0, 0)} °${unit}`;

/** Both scales, the shop's own first: `330 °F (166 °C)`. */
export const bothDegrees = (value: Temperature, unit: TemperatureUnit, locale: string): string =>
  `${degrees(value, unit, locale)} (${degrees(value, unit === 'C' ? 'F' : 'C', locale)})`;

/** A range in both scales, the shop's own first: `68–82 °F (20–28 °C)`. */
export function degreesBetween(
  least: Temperature,
  most: Temperature,
  unit: TemperatureUnit,
  locale: string,
): string {
  const range = (scale: TemperatureUnit) =>
    `${whole(Math.round(toDegrees(least, scale)), { locale })}–${degrees(most, scale, locale)}`;
  return `${range(unit)} (${range(unit === 'C' ? 'F' : 'C')})`;
}

/** A length of time as it is said: `45 s`, `12 min`, `3 h 35 min`. */
export function spoken(seconds: number, { locale }: Pick<Ways, 'locale'>): string {
  const count = (value: number) => number(value, locale, 0, 0);
  if (seconds < 90) return `${count(Math.round(seconds))} s`;
  const minutes = Math.round(seconds / 60);
  if (minutes < 60) return `${count(minutes)} min`;
  const rest = minutes % 60;
  return rest === 0
    ? `${count(Math.floor(minutes / 60))} h`
    : `${count(Math.floor(minutes / 60))} h ${count(rest)} min`;
}

const AN_HOUR = 3600;

/** How late something is, in days where it is two of them or more: `45 min`, `40 h 5 min`, `2 d 16 h`. */
export function lateness(seconds: number, ways: Pick<Ways, 'locale'>): string {
  const hours = Math.round(seconds / AN_HOUR);
  if (hours < 48) return spoken(seconds, ways);
  const days = `${whole(Math.floor(hours / 24), ways)} d`;
  return hours % 24 === 0 ? days : `${days} ${whole(hours % 24, ways)} h`;
}

/** Working time that may be minutes or seconds, also less than none: `−95 s`, `4.2 min`, `85 min`. */
export function workTime(seconds: number, { locale }: Pick<Ways, 'locale'>): string {
  if (Math.abs(seconds) < 120) return `${number(seconds, locale, 0, 0)} s`;
  return `${number(seconds / 60, locale, 0, Math.abs(seconds) < 3600 ? 1 : 0)} min`;
}

/** Film in an hour, from seconds for a metre: `2.40 m`, `7.9 ft`. */
export const printSpeed = (secondsAMetre: number, { unit, locale }: Ways): string => {
  const metres = 3600 / secondsAMetre;
  return unit === 'mm' ? `${number(metres, locale, 2, 2)} m` : `${number(metres / 0.3048, locale, 1, 1)} ft`;
};

/** A width as fine as an artwork's findings are: `0.35 mm`, or thousandths of an inch, `0.014 in`. */
export const fineLength = (length: number, { unit, locale }: Ways): string =>
  unit === 'mm'
    ? `${number(length / 1000, locale, 0, 2)} mm`
    : `${number(toUnit(length as Micrometres, 'in'), locale, 3, 3)} in`;

/** The length of an outline, which may be metres: `412.5 mm`, `4.12 m`, `16.24 in`. */
export const outlineLength = (length: Micrometres, ways: Ways): string =>
  length >= fromMm(1000) && ways.unit === 'mm'
    ? `${number(toUnit(length, 'm'), ways.locale, 2, 2)} m`
    : shortLength(length, ways);

/** An area of ink: `4,120 mm²`, `6.39 in²`. */
export const inkArea = (mm2: number, { unit, locale }: Ways): string =>
  unit === 'mm' ? `${number(mm2, locale, 0, 0)} mm²` : `${number(mm2 / 25.4 ** 2, locale, 2, 2)} in²`;

/** `3,000 × 2,400` pixels. */
export const pixelSize = (width: number, height: number, ways: Ways): string =>
  `${whole(width, ways)} × ${whole(height, ways)}`;

/** `41%` of a share between 0 and 1. */
export const wholePercent = (share: number, { locale }: Pick<Ways, 'locale'>): string =>
  formatOf(locale, { style: 'percent', maximumFractionDigits: 0 }).format(share);

const MEGABYTE = 1e6;

/** A size that is a guess, with one figure that counts: `40 MB`. */
export function roughSize(bytes: number, ways: Ways): string {
  const megabytes = bytes / MEGABYTE;
  if (megabytes < 1) return '1 MB';
  const step = 10 ** Math.floor(Math.log10(megabytes));
  return `${whole(Math.ceil(megabytes / step) * step, ways)} MB`;
}

/** A colour as a designer writes it: `#1f2a30`. */
export const hex = (colour: readonly number[]): string =>
  `#${colour.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;

/** A share to a hundredth of a percent: `101.25%`, `1%`. */
export const finePercent = (share: number, { locale }: Pick<Ways, 'locale'>): string =>
  formatOf(locale, { style: 'percent', maximumFractionDigits: 2 }).format(share);

/** Whether a factor of lengths is one as far as a tenth of a per mille. */
export const isTrue = (factor: number): boolean => Math.abs(factor - 1) < 5e-5;

/** The rule that the foot of each page of the map bears, by the shop's own ruler. */
export const ruleOf = ({ unit }: Pick<Ways, 'unit'>): string => (unit === 'in' ? '4 in' : '100 mm');

/** Figures on the cut map, which stand alone, by the shop's own ruler: without grouping in millimetres, or to a sixteenth of an inch. */
export const onMap = ({ unit, locale }: Pick<Ways, 'unit' | 'locale'>) => {
  const plain = (length: Micrometres) =>
    formatOf(locale, { maximumFractionDigits: 1, useGrouping: false }).format(toMm(length));
  const mm = (length: Micrometres) => `${plain(length)} mm`;
  const metres = (length: Micrometres) => inUnit(length, 'm', locale, 2, 2);
  const feet = (length: Micrometres) => inUnit(length, 'ft', locale, 2, 2);
  const [own, other, film, otherFilm] =
    unit === 'mm' ? ([mm, tapeInches, metres, feet] as const) : ([tapeInches, mm, feet, metres] as const);
  return {
    own,
    other,
    film,
    otherFilm,
    size: (width: Micrometres, height: Micrometres) =>
      unit === 'mm' ? `${plain(width)}×${plain(height)}` : `${sixteenths(width)} × ${tapeInches(height)}`,
    sheet: (width: Micrometres, length: Micrometres) =>
      unit === 'mm' ? `${plain(width)} × ${mm(length)}` : `${sixteenths(width)} × ${tapeInches(length)}`,
    percent: (share: number) => finePercent(share, { locale }),
    count: (value: number) => number(value, locale, 0, 0),
    made: (date: Date) => dateFormatOf(locale, { dateStyle: 'medium', timeStyle: 'short' }).format(date),
    due: (day: LocalDate) => dueDay(day, { locale }),
  };
};

/** Money with so many decimals more than the currency has, where they are needed: `$40.908`. */
export const fineMoney = (amount: number, { currency, locale }: Ways, more: number): string => {
  const digits = minorDigits(currency);
  return formatOf(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits + more,
  }).format(amount / 10 ** digits);
};

/** A number with as many decimals as make three figures: `0.425`, `12.3`, `1,234`. */
const threeFigures = (value: number, locale: string): string =>
  formatOf(locale, {
    maximumFractionDigits: Math.max(
      0,
      Math.min(6, 2 - Math.floor(Math.log10(Math.max(1e-6, Math.abs(value))))),
    ),
  }).format(value);

/** Ink and powder are told as their labels and the scale tell them, wherever the shop is. */
const contents = { volume: 'ml', ink: 'l', mass: 'g', powder: 'kg' } as const;

/** Units of what is bought in bulk, as this shop measures. */
export const bulkUnits = ({ unit }: Pick<Ways, 'unit'>) =>
  unit === 'mm'
    ? ({ length: 'm', area: 'm²', ...contents } as const)
    : ({ length: 'ft', area: 'ft²', ...contents } as const);

/** Square metres in the unit of printed areas. */
export const SQUARE_METRES = { 'm²': 1, 'ft²': 0.3048 ** 2 } as const;

/** A printed area: `0.425 m²`, `4.57 ft²`. */
export function printedArea(mm2: number, ways: Ways): string {
  const { area: unit } = bulkUnits(ways);
  return `${threeFigures(mm2 / 1e6 / SQUARE_METRES[unit], ways.locale)} ${unit}`;
}

/** A volume of ink in a formula: `43.5 ml`, `0.425 ml`. */
export function bulkVolume(microlitres: number, ways: Ways): string {
  const { volume: unit } = bulkUnits(ways);
  return `${threeFigures(toVolume(microlitres as Microlitres, unit), ways.locale)} ${unit}`;
}

/** What a printed area takes: `9 ml/m²`, `100 g/m²`. */
export function volumeRate(microlitres: number, ways: Ways): string {
  const { volume, area: unit } = bulkUnits(ways);
  return `${threeFigures(toVolume(microlitres as Microlitres, volume) * SQUARE_METRES[unit], ways.locale)} ${volume}/${unit}`;
}

export function massRate(milligrams: number, ways: Ways): string {
  const { mass, area: unit } = bulkUnits(ways);
  return `${threeFigures(toMass(milligrams as Milligrams, mass) * SQUARE_METRES[unit], ways.locale)} ${mass}/${unit}`;
}

/** A price for so much of something: `$8.40/m`. */
const pricePer = (amount: number, unit: string, ways: Ways): string =>
  `${fineMoney(amount, ways, 3)}/${unit}`;

export function lengthPrice({ amount, per }: LengthRate, ways: Ways): string {
  const { length: unit } = bulkUnits(ways);
  return pricePer((amount * fromUnit(1, unit)) / per, unit, ways);
}

export function volumePrice(price: MilliMinor, ways: Ways): string {
  const { ink: unit } = bulkUnits(ways);
  return pricePer((price / 1000) * litresIn(unit), unit, ways);
}

export function massPrice(price: MilliMinor, ways: Ways): string {
  const { powder: unit } = bulkUnits(ways);
  return pricePer((price / 1000) * kilogramsIn(unit), unit, ways);
}

export const energyPrice = (price: MilliMinor, ways: Ways): string => pricePer(price / 1000, 'kWh', ways);
export const timePrice = (price: MilliMinor, ways: Ways): string => pricePer(price / 1000, 'h', ways);

/** Minutes and their tenths: `23.4 min`. */
export const tenths = (seconds: number, { locale }: Ways): string =>
  `${number(seconds / 60, locale, 0, 1)} min`;

/** A count that may be a part: `1.5`. */
export const partly = (value: number, { locale }: Pick<Ways, 'locale'>): string =>
  number(value, locale, 0, 2);
