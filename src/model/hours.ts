import * as z from 'zod/mini';
import { localDate, localTime } from './fields';

/** A stretch of a day in which the shop is open. One that ends a minute before midnight ends with the day. */
const stretch = z.object({ from: localTime, to: localTime });

/** Monday first; a break lies between two stretches of a day, and a day without one is closed. */
export const weekSchema = z.array(z.array(stretch)).check(z.length(7));

/** When the shop is open. */
export const hoursSchema = z.object({
  week: weekSchema,
  /** Days on which it is closed, whatever the weekday. */
  closed: z.array(localDate),
});

export type Hours = z.infer<typeof hoursSchema>;
export type Week = z.infer<typeof weekSchema>;
export type Stretch = z.infer<typeof stretch>;
