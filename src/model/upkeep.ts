import * as z from 'zod/mini';
import { id, instant, localDate, seconds, share, size, text, volume, within } from './fields';
import { ranges } from './ranges';

/**
 * When a check is due again: each working day, after so many days, after so much film. The last two are of a printer that stands still:
 * `idle` after so many days on which it printed nothing, `pause` before a run where it has printed none for so many hours.
 */
const intervalSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('day') }),
  z.object({ kind: z.literal('days'), days: z.int().check(z.minimum(2), z.maximum(366)) }),
  z.object({ kind: z.literal('film'), length: size }),
  z.object({ kind: z.literal('idle'), days: z.int().check(z.minimum(1), z.maximum(366)) }),
  z.object({ kind: z.literal('pause'), hours: z.int().check(z.minimum(1), z.maximum(168)) }),
]);

/** What a check is of: the shop as a whole, or each machine of a kind; what stands in an oven's place, too, is an oven here. */
export const subjects = ['shop', 'printer', 'press', 'oven'] as const;

/** What can hurt at a check, and is said beside it. */
export const hazards = ['none', 'ink', 'heat', 'powder', 'blade'] as const;

/**
 * A check of the shop's own, or its change to one of those to start with, whose id it then has. One that is no longer done is
 * archived, so that what was noted of it stays told.
 */
export const checkSchema = z.object({
  id: id<'check'>(),
  /** Empty for one of those to start with that keeps the name it has in every language. */
  name: text,
  interval: intervalSchema,
  of: z.enum(subjects),
  hazard: z.enum(hazards),
  archived: z.boolean(),
  changed: instant,
});

/** A check that was done, or one that was noted by mistake and taken back; only ever added. */
export const upkeepSchema = z.object({
  id: id<'upkeep'>(),
  check: id<'check'>(),
  /** The machine that it was done at; `null` for one of the shop as a whole, and where nobody said at which of several. */
  machine: z.nullable(text),
  /** As the check was called then, and the machine where there were several. */
  name: text,
  done: z.boolean(),
  at: instant,
  /** The calendar day, where the shop is. */
  day: localDate,
  /** Initials of who did it. */
  by: text,
  note: text,
  /** What it took to mend what the check found; `null` where it found nothing, or nobody said. A check that failed is still due. */
  failed: z.nullable(z.object({ seconds, colour: volume, white: volume })),
  changed: instant,
});

/** The air of the room as someone read it; only ever added. */
export const readingSchema = z.object({
  id: id<'reading'>(),
  at: instant,
  day: localDate,
  /** Degrees Celsius. */
  temperature: z.nullable(within(ranges.air)),
  /** Relative, between 0 and 1. */
  humidity: z.nullable(share),
  by: text,
  changed: instant,
});

export type Subject = (typeof subjects)[number];
export type Interval = z.infer<typeof intervalSchema>;
export type Hazard = (typeof hazards)[number];
export type Check = z.infer<typeof checkSchema>;
export type UpkeepEntry = z.infer<typeof upkeepSchema>;
export type Reading = z.infer<typeof readingSchema>;
