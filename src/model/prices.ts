import * as z from 'zod/mini';
import type { MilliMinor } from '../units';
import { count, figure, money, number, ratio, seconds, share, size, text, volume, whole } from './fields';
import { ranges } from './ranges';

/** Records of what things cost a shop and what it asks for them. */

/** In thousandths of a minor unit; `null` where a shop leaves it out. */
const rate = z.nullable(figure<MilliMinor>(ranges.rate));

const lengthPrice = z.object({ amount: money, per: size });

/** Where hands are at work, in the order of the work. */
export const labourRooms = ['artwork', 'printing', 'cutting', 'pressing', 'packing'] as const;

/** What draws electricity. */
export const heaters = ['printer', 'oven', 'press'] as const;

const watts = whole(ranges.watts);

/** What this shop pays, beside film, whose price lies on the film. */
export const costsSchema = z.object({
  /** How film is shared among the copies of a run: by the rectangles they take, or by the ink they bear. */
  filmBy: z.enum(['footprint', 'ink']),
  /** For a litre. */
  colourInk: rate,
  whiteInk: rate,
  /** For a kilogram. */
  powder: rate,
  /**
   * Ink that keeps the heads clean: each day, which its runs share, and for each cleaning, half of it white; and what each run takes to
   * start, beside its cleanings.
   */
  maintenance: z.object({
    day: volume,
    runsADay: z.int().check(z.minimum(1), z.maximum(50)),
    cleaning: volume,
    cleanings: z.int().check(z.minimum(0), z.maximum(50)),
    start: z.object({ colour: volume, white: volume }),
  }),
  /** For a kilowatt-hour. */
  energy: rate,
  /** What each draws while it is on, on the average. */
  watts: z.object({ printer: watts, oven: watts, press: watts }),
  /** For an hour. */
  labour: z.object({ artwork: rate, printing: rate, cutting: rate, pressing: rate, packing: rate }),
  /** Beside the times of the bench: for each order, and for each design that is new. */
  artworkTime: z.object({ order: seconds, design: seconds }),
  /** For a garment of any style that has no price of its own. */
  blank: z.nullable(money),
  blanks: z.array(z.object({ style: text, price: money })),
  /** Of materials, work and blanks: what is likely to be spoiled. */
  spoilage: share,
  /** Rent, insurance, repairs: for each hour of work, or as a share of all other costs. */
  overhead: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('hour'), rate }),
    z.object({ kind: z.literal('share'), share: ratio }),
  ]),
});

/** What is to be earned: a share of the price, or a share put on the cost. */
const aimSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('margin'), share: z.number().check(z.minimum(0), z.maximum(0.99)) }),
  z.object({ kind: z.literal('markup'), share: ratio }),
]);

/** Tax on a price, or in it. */
export const taxSchema = z.object({ name: text, share: ratio, kind: z.enum(['on-top', 'included']) });

/** How this shop prices its work. */
export const pricingSchema = z.object({
  aim: aimSchema,
  /** What a print's price is made from. */
  by: z.enum(['cost', 'placement', 'length']),
  placement: money,
  length: lengthPrice,
  /** For each design that is new. */
  artworkFee: money,
  /** Off the prints from a count on, of the whole order or of one design. */
  breaks: z.array(z.object({ from: whole({ least: 2, most: ranges.count.most }), off: share })),
  breaksBy: z.enum(['order', 'design']),
  /** On top for an order in a rush. */
  rush: ratio,
  minimum: money,
  deposit: share,
  tax: z.nullable(taxSchema),
  /** How many days a quote holds. */
  validDays: z.int().check(z.minimum(1), z.maximum(365)),
  nextQuote: number,
});

const offered = { id: text, name: text, shipping: money, days: whole(ranges.days) };

/** Another way to come by prints: bought-in transfers by their length or each, or garments decorated elsewhere or otherwise. */
export const alternativeSchema = z.discriminatedUnion('kind', [
  z.object({ ...offered, kind: z.literal('length'), width: size, price: lengthPrice }),
  z.object({ ...offered, kind: z.literal('piece'), price: money }),
  /** Set up for every colour of every design, then a price for each print. */
  z.object({
    ...offered,
    kind: z.literal('decorated'),
    setUp: money,
    colours: z.int().check(z.minimum(1), z.maximum(20)),
    price: money,
  }),
]);

/** What of an order's price is its own. */
export const orderPricingSchema = z.object({
  /** `null` for the shop's. */
  aim: z.nullable(aimSchema),
  /** `null` for those that no earlier order has. */
  newDesigns: z.nullable(count),
  /** Off prints and garments. */
  discount: share,
});

export type LabourRoom = (typeof labourRooms)[number];
export type Heater = (typeof heaters)[number];
export type Costs = z.infer<typeof costsSchema>;
export type Aim = z.infer<typeof aimSchema>;
export type Pricing = z.infer<typeof pricingSchema>;
export type Alternative = z.infer<typeof alternativeSchema>;
export type OrderPricing = z.infer<typeof orderPricingSchema>;
