import * as z from 'zod/mini';
import {
  count,
  currency,
  id,
  instant,
  localDate,
  locale,
  money,
  number,
  ratio,
  share,
  signedMoney,
  text,
} from './fields';
import { taxSchema } from './prices';
import { languages } from './records';

/** What is taken off is below zero. */
const amount = signedMoney;

const goods = { id: text, name: text, count, each: money, amount };

/** A line of a price. */
const priceLineSchema = z.discriminatedUnion('kind', [
  z.object({ ...goods, kind: z.literal('print') }),
  /** Garments of one style and colour. */
  z.object({ ...goods, kind: z.literal('garments') }),
  z.object({ kind: z.literal('artwork-fee'), count, each: money, amount }),
  /** Garments that the customer brings. */
  z.object({ kind: z.literal('supplied'), count, amount }),
  /** Less for many, of one design or of the whole order. */
  z.object({ kind: z.literal('break'), from: count, share, name: z.nullable(text), amount }),
  z.object({ kind: z.enum(['discount', 'rush']), share: ratio, amount }),
  z.object({ kind: z.literal('minimum'), amount }),
]);

const contentSchema = z.object({
  lines: z.array(priceLineSchema),
  subtotal: money,
  tax: z.nullable(z.extend(taxSchema, { amount: money })),
  deposit: money,
});

/** What of a price a customer reads, its fields in the order in which they are read back. */
export const quoteContent = (price: z.infer<typeof contentSchema>): z.infer<typeof contentSchema> =>
  z.parse(contentSchema, price);

/**
 * A quote as it was given to a customer: whole, so that it can be printed again when prices, order, language or currency have changed
 * since. There may be several of an order; the one with the highest number holds.
 */
export const quoteSchema = z.object({
  id: id<'quote'>(),
  order: id<'order'>(),
  number,
  on: localDate,
  until: localDate,
  /** What it was written in. */
  language: z.enum(languages),
  locale,
  currency,
  from: z.object({ name: text, address: text }),
  for: z.object({ name: text, contact: text }),
  /** With tax. */
  total: money,
  /** What makes up the total; `null` where an older version kept the total alone. */
  content: z.nullable(contentSchema),
  notes: text,
  changed: instant,
});

export type PriceLine = z.infer<typeof priceLineSchema>;
export type Quote = z.infer<typeof quoteSchema>;

/** A quote's number as it is written: `0007`. */
export const quoteNumber = ({ number }: Pick<Quote, 'number'>): string => String(number).padStart(4, '0');
