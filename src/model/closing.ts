import * as z from 'zod/mini';
import { stages } from './bench';
import {
  area,
  count,
  id,
  instant,
  length,
  localDate,
  mass,
  seconds,
  share,
  size,
  text,
  volume,
  within,
} from './fields';
import { ranges } from './ranges';

/** What a square metre printed in full takes. Starting values until the log of closed runs tells better. */
export const ratesSchema = z.object({
  /** Of colour ink, in microlitres a square metre. */
  colour: volume,
  white: volume,
  /** Of powder, in milligrams a square metre of white. */
  powder: mass,
});

/** Film, along it; of sheets their whole length, and how many. */
const filmUsed = { film: length, sheets: count } as const;

/** Ink and powder; `null` where the artwork was not there to look at, or nobody measured. */
const consumed = { colour: z.nullable(volume), white: z.nullable(volume), powder: z.nullable(mass) } as const;

const fields = {
  name: text,
  at: instant,
  /** The calendar day it was closed on, where the shop is. */
  day: localDate,
  film: z.object({ id: id<'film'>(), name: text, kind: z.enum(['roll', 'sheets']), width: size }),
  /** What there was to do. */
  work: z.object({
    copies: count,
    /** Of them, pressed on garments here: each place on a garment is one. */
    pressed: count,
    spans: count,
    /** How often the press closes, for curing too where it cures. */
    platenClosings: count,
    /** Footprint of all copies. */
    copyArea: area,
    /** Printed in full, as the artwork's pixels tell; `null` where some artwork was not there to look at. */
    coverage: z.nullable(z.object({ colour: area, white: area })),
  }),
  planned: z.object({
    ...filmUsed,
    ...consumed,
    time: z.object({ printer: seconds, hands: seconds, press: seconds, oven: seconds }),
  }),
  actual: z.object({
    ...filmUsed,
    ...consumed,
    /** `null` where nobody measured. */
    time: z.object({
      printer: z.nullable(seconds),
      hands: z.nullable(seconds),
      press: z.nullable(seconds),
      oven: z.nullable(seconds),
    }),
  }),
  spoiled: z.array(z.object({ stage: z.enum(stages), reason: text, copies: count, garments: count })),
  /** What was in use, as written on the box. */
  lots: z.object({ film: text, colour: text, white: text, powder: text }),
  /** Of the room: degrees Celsius and relative humidity between 0 and 1. */
  air: z.object({ temperature: z.nullable(within(ranges.air)), humidity: z.nullable(share) }),
  notes: text,
  changed: instant,
};

/**
 * A run that was closed: what it did, what it had been planned to take, and what it took. The id is the run's; a run that is opened
 * again has none, and what was told of it lies among those reopened.
 */
export const closingSchema = z.object({
  id: id<'run'>(),
  ...fields,
  /** What was told before it was corrected, the latest last. */
  earlier: z.array(z.object(fields)),
});

export type Rates = z.infer<typeof ratesSchema>;
export type Closing = z.infer<typeof closingSchema>;
