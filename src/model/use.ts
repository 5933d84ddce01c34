import * as z from 'zod/mini';
import { ratesSchema } from './closing';
import { area, count, id, length, money, seconds, share, size } from './fields';
import { costsSchema } from './prices';

/** A machine's time: on in all, of it warming up. */
const machine = z.object({ on: seconds, warmUp: seconds });

/** What a run takes, as its layout, its artwork and its timeline tell it: what costs are worked out from. */
const useSchema = z.object({
  film: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('roll'), length, price: z.object({ amount: money, per: size }) }),
    z.object({ kind: z.literal('sheets'), sheets: count, price: money }),
  ]),
  transfers: z.array(
    z.object({
      id: id<'transfer'>(),
      order: id<'order'>(),
      copies: count,
      /** Of one copy: its rectangle, and what is printed in full. */
      footprint: area,
      colour: area,
      white: area,
      /** Why its coverage was taken to be all of the footprint; `null` where pixels told it. */
      assumed: z.nullable(z.enum(['no-artwork', 'not-checked'])),
      /** Of hands, for all its copies. */
      seconds: z.object({ printing: seconds, cutting: seconds, pressing: seconds, packing: seconds }),
      /** Under a press, cures on it included, for all its copies. */
      pressed: seconds,
    }),
  ),
  /** `null` where there is no timeline: the film cannot be cut, or nothing can press. */
  machines: z.nullable(
    z.object({
      printer: machine,
      oven: machine,
      press: machine,
      /** Of hands, before the first span. */
      ready: seconds,
    }),
  ),
  orders: z.array(
    z.object({
      id: id<'order'>(),
      /** Of the order's copies, how many are on this run. */
      share,
      newDesigns: count,
      /** All garments of the order; those without a price, or brought by the customer, have `null`. */
      garments: z.array(z.object({ count, price: z.nullable(money) })),
      /** Spoiled on this run, and what one of them costs to replace. */
      replaced: count,
      replacement: z.nullable(money),
      supplied: z.boolean(),
    }),
  ),
});

/** What the cost of a locked run rests on, so that no later price changes it. */
export const basisSchema = z.object({ use: useSchema, costs: costsSchema, rates: ratesSchema });

export type RunUse = z.infer<typeof useSchema>;
export type CostBasis = z.infer<typeof basisSchema>;
