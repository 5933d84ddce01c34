import * as z from 'zod/mini';
import { id, instant, length, localDate, money, size } from './fields';

/** How many tints there are to tell orders apart; the code printed on every copy is the other sign. */
export const TINTS = 8;

/** What a customer wants. */
export const orderSchema = z.object({
  id: id<'order'>(),
  /** Two or three letters printed on every copy; unique in the book. */
  code: z.string().check(z.minLength(1), z.maxLength(4)),
  name: z.string(),
  due: z.nullable(localDate),
  tint: z.int().check(z.minimum(0), z.maximum(TINTS - 1)),
  /** What the next copy is numbered; a number is not given twice, even when its copy is gone. */
  nextNumber: z.int().check(z.minimum(1)),
  changed: instant,
});

/** One design at one printed size. How many are wanted is how many {@link copySchema copies} there are. */
export const transferSchema = z.object({
  id: id<'transfer'>(),
  order: id<'order'>(),
  name: z.string(),
  width: size,
  height: size,
  /** The size as the user typed it. */
  typed: z.object({ width: z.string(), height: z.string() }),
  turn: z.enum(['fixed', 'quarter']),
  artwork: z.nullable(id<'artwork'>()),
  changed: instant,
});

/** Where a copy lies on a run's film: the corner nearest to x = 0 and to the leading edge. */
const placeSchema = z.object({
  run: id<'run'>(),
  x: length,
  y: length,
  turned: z.boolean(),
  pinned: z.boolean(),
});

/** One physical transfer. Its place lies here, so that it can be in one run at most. */
export const copySchema = z.object({
  id: id<'copy'>(),
  transfer: id<'transfer'>(),
  /** Counted within the order: code and number name a copy, `HB 7`. */
  number: z.int().check(z.minimum(1)),
  place: z.nullable(placeSchema),
  changed: instant,
});

/** What is known of an image file; its bytes lie in the artwork store under the same id. */
export const artworkSchema = z.object({
  /** SHA-256 of the file's bytes, in hexadecimal. */
  id: id<'artwork'>(),
  fileName: z.string(),
  pixels: z.object({ width: z.int(), height: z.int() }),
  /** Pixels a metre, each axis; `null` if the file does not say. */
  density: z.nullable(z.object({ x: z.number(), y: z.number() })),
  /** The box of pixels with an alpha of at least 8 in 255; `null` if the image is blank. */
  trim: z.nullable(z.object({ x: z.int(), y: z.int(), width: z.int(), height: z.int() })),
  changed: instant,
});

/** A roll of film and how it may be used. */
export const filmSchema = z.object({
  id: id<'film'>(),
  name: z.string(),
  width: size,
  margins: z.object({ left: length, right: length, lead: length, tail: length }),
  lengthLeft: length,
  price: z.object({ amount: money, per: size }),
  /** Least distance between two copies; even, so that half a gap is whole. */
  gap: length,
  spanMax: z.nullable(size),
  changed: instant,
});

/** One layout on one film. */
export const runSchema = z.object({
  id: id<'run'>(),
  name: z.string(),
  film: id<'film'>(),
  state: z.enum(['draft']),
  changed: instant,
});

/** How this shop reads and writes figures. */
export const settingsSchema = z.object({
  unit: z.enum(['mm', 'in']),
  currency: z.string().check(z.length(3)),
  dateOrder: z.nullable(z.enum(['day-first', 'month-first'])),
  paper: z.enum(['a4', 'letter']),
  /** The cut map as the film comes out of the printer, ink up, or as seen on screen. */
  mapView: z.enum(['ink-up', 'on-screen']),
  changed: instant,
});

export type Order = z.infer<typeof orderSchema>;
export type Transfer = z.infer<typeof transferSchema>;
export type Place = z.infer<typeof placeSchema>;
export type Copy = z.infer<typeof copySchema>;
export type Artwork = z.infer<typeof artworkSchema>;
export type Film = z.infer<typeof filmSchema>;
export type Run = z.infer<typeof runSchema>;
export type Settings = z.infer<typeof settingsSchema>;
