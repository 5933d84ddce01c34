import * as z from 'zod/mini';
import type { LocalDate, Microlitres, Micrometres, Milligrams, Minor, Seconds } from '../units';

const isWhole = (value: unknown): boolean => Number.isSafeInteger(value) && Number(value) >= 0;

/** Lengths are stored as whole micrometres. */
export const length = z.custom<Micrometres>(isWhole);

export const size = z.custom<Micrometres>((value) => Number.isSafeInteger(value) && Number(value) > 0);

export const money = z.custom<Minor>(isWhole);

/** A change of an amount: below zero for what leaves. */
export const signed = z.custom<number>((value) => Number.isSafeInteger(value));

export const volume = z.custom<Microlitres>(isWhole);

export const mass = z.custom<Milligrams>(isWhole);

export const seconds = z.custom<Seconds>(isWhole);

export const localDate = z.custom<LocalDate>(
  (value) => typeof value === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(value),
);

/** A colour as `#rrggbb`. */
export const shade = z.string().check(z.regex(/^#[0-9a-f]{6}$/i));

/** A time of day, `HH:MM`. */
export const localTime = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));

/** An instant in UTC as ISO 8601 writes it. */
export const instant = z.custom<Instant>(
  (value) => typeof value === 'string' && !Number.isNaN(Date.parse(value)),
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

export const id = <Kind extends string>() =>
  z.custom<Id<Kind>>((value) => typeof value === 'string' && value.length > 0);
