import * as z from 'zod/mini';
import type { Angle } from '../units';
import { figure, id, instant, lengthOf, number } from './fields';
import { ranges } from './ranges';

/** Where a copy lies on its run's film: the corner, nearest to x = 0 and to the leading edge, of the box that it takes as it is turned. */
const placeSchema = z.object({
  x: lengthOf(ranges.across),
  y: lengthOf(ranges.filmLeft),
  angle: figure<Angle>(ranges.angle),
  pinned: z.boolean(),
});

const fields = {
  id: id<'copy'>(),
  transfer: id<'transfer'>(),
  /** Counted within the order: code and number name a copy, `HB 7`. */
  number,
  /** Overs are spares made on purpose; a filler is wanted but may wait: it is placed only where it adds no film. */
  role: z.enum(['ordered', 'over', 'filler']),
  changed: instant,
};

/** Waits for a place: on the run that it was chosen for, or on any. */
const waitingSchema = z.object({
  ...fields,
  state: z.literal('waiting'),
  run: z.nullable(id<'run'>()),
  place: z.null(),
});

/** Lies on a run's film. */
export const placedSchema = z.object({
  ...fields,
  state: z.literal('placed'),
  run: id<'run'>(),
  place: placeSchema,
});

/** Taken from the shelf, cured: it needs no film. */
const shelvedSchema = z.object({ ...fields, state: z.literal('shelved'), run: z.null(), place: z.null() });

/** One physical transfer. Its run and its place lie here, so that it can be in one run at most. */
export const copySchema = z.discriminatedUnion('state', [waitingSchema, placedSchema, shelvedSchema]);

export type Place = z.infer<typeof placeSchema>;
export type Copy = z.infer<typeof copySchema>;
export type PlacedCopy = z.infer<typeof placedSchema>;

type Where<Some> = Some extends Copy ? Pick<Some, 'state' | 'run' | 'place'> : never;

/** What of a copy tells where it is; only all of it together can change. */
export type Whereabouts = Where<Copy>;
