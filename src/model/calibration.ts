import * as z from 'zod/mini';
import { id, instant, number } from './fields';

/** What closed runs tell the rates of. */
export const quantities = ['colour', 'white', 'powder', 'printer', 'hands'] as const;

/** What a rate counts by: an area printed in full, a run, film printed, a span, a copy, a copy pressed, all work as planned. */
const drivers = ['area', 'run', 'length', 'span', 'copy', 'pressed', 'plan'] as const;

/** The settings that a rate stands for. */
const tunable = [
  'rates.colour',
  'rates.white',
  'rates.powder',
  'start.colour',
  'start.white',
  'printer.perHour',
  'printer.warmUp',
  'handling.cutOff',
  'handling.powder',
  'handling.load',
  'handling.cutApart',
  'handling.dress',
  'handling.place',
  'handling.pack',
] as const;

/** A change of settings to what closed runs told; the record stays when it is taken back. */
export const calibrationSchema = z.object({
  id: id<'calibration'>(),
  quantity: z.enum(quantities),
  driver: z.enum(drivers),
  /** The printer whose rate it is; `null` for what is the whole shop's. */
  printer: z.nullable(id<'printer'>()),
  at: instant,
  /** The rate found and the ends of its 95% interval, in the unit of its driver. */
  found: z.object({ value: z.number(), low: z.number(), high: z.number() }),
  /** How many runs told it. */
  runs: number,
  set: z.array(z.object({ setting: z.enum(tunable), before: z.number(), after: z.number() })),
  takenBack: z.nullable(instant),
  changed: instant,
});

/** A closed run that the shop leaves out when a quantity is calibrated: a figure read wrongly. The id is `quantity/run`. */
export const leftOutSchema = z.object({
  id: id<'left-out'>(),
  quantity: z.enum(quantities),
  run: id<'run'>(),
  changed: instant,
});

export type Quantity = (typeof quantities)[number];
export type Driver = (typeof drivers)[number];
export type Tunable = (typeof tunable)[number];
export type Calibration = z.infer<typeof calibrationSchema>;
export type LeftOut = z.infer<typeof leftOutSchema>;
