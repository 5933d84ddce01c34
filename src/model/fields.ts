import * as z from 'zod/mini';
import {
  isCurrency,
  isDay,
  isLocale,
  type LocalDate,
  type Microlitres,
  type Micrometres,
  type Milligrams,
  type Minor,
  type Seconds,
} from '../units';
import { type Range, ranges } from './ranges';

const isWhole =
  ({ least, most }: Range) =>
  (value: unknown): boolean =>
    Number.isSafeInteger(value) && Number(value) >= least && Number(value) <= most;

/** A whole number within a range. */
export const whole = ({ least, most }: Range) => z.int().check(z.minimum(least), z.maximum(most));

/** Any number within a range. */
export const within = ({ least, most }: Range) => z.number().check(z.minimum(least), z.maximum(most));

/** A whole number of a unit of its own, within a range. */
export const figure = <Of>(range: Range) => z.custom<Of>(isWhole(range));

/** A length in whole micrometres, of one of the ranges of lengths. */
export const lengthOf = (range: Range) => figure<Micrometres>(range);

export const length = lengthOf(ranges.length);

export const size = lengthOf(ranges.size);

export const money = figure<Minor>(ranges.money);

/** What is added to a price, or taken off. */
export const signedMoney = figure<Minor>({ least: -ranges.money.most, most: ranges.money.most });

/** A change of an amount: below zero for what leaves. */
export const signed = figure<number>({ least: -ranges.amount.most, most: ranges.amount.most });

export const volume = figure<Microlitres>(ranges.amount);

export const mass = figure<Milligrams>(ranges.amount);

export const seconds = figure<Seconds>(ranges.seconds);

export const count = whole(ranges.count);

/** What is counted from one on. */
export const number = whole(ranges.number);

/** Measured length over the length printed. */
export const feed = within(ranges.feed);

/** A share of something, from 0 to 1. */
export const share = within(ranges.share);

/** A share that may be more than the whole. */
export const ratio = within(ranges.ratio);

/** An area in square millimetres. */
export const area = within(ranges.area);

/** What somebody typed. */
export const text = z.string().check(z.maxLength(ranges.text.most));

/** A small picture, a PNG in base64. */
export const picture = z.string().check(z.maxLength(ranges.mark.most), z.regex(/^[A-Za-z0-9+/]+={0,2}$/));

/** A day that the calendar has. */
export const localDate = z.custom<LocalDate>((value) => typeof value === 'string' && isDay(value));

/** A currency of ISO 4217 that figures can be written in. */
export const currency = z.string().check(z.refine(isCurrency));

/** A locale, as BCP 47 writes it. */
export const locale = z.string().check(z.refine(isLocale));

/** A colour as `#rrggbb`. */
export const shade = z.string().check(z.regex(/^#[0-9a-f]{6}$/i));

/** A time of day, `HH:MM`. */
export const localTime = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));

/** An instant in UTC as ISO 8601 writes it. */
export const instant = z.custom<Instant>(
  (value) =>
    typeof value === 'string' &&
    /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?Z$/.test(value) &&
    !Number.isNaN(Date.parse(value)),
);

declare const instantBrand: unique symbol;
export type Instant = string & { readonly [instantBrand]: true };

/** A moment as an instant. */
export const asInstant = (at: Date): Instant => at.toISOString() as Instant;

declare const kind: unique symbol;
/** A random id, told apart by what it names. */
export type Id<Kind extends string> = string & { readonly [kind]: Kind };

/** A text as an id: one that is made new, or that follows from what it names. */
export const asId = <Kind extends string>(text: string): Id<Kind> => text as Id<Kind>;

/** A name that objects have of themselves, such as `constructor`, is no id: looking it up would find what nobody stored. */
export const id = <Kind extends string>() =>
  z.custom<Id<Kind>>(
    (value) =>
      typeof value === 'string' &&
      value.length >= ranges.id.least &&
      value.length <= ranges.id.most &&
      !(value in Object.prototype),
  );
