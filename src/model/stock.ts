import * as z from 'zod/mini';
import { id, instant, localDate, shade, signed, size, text, whole } from './fields';
import { ranges } from './ranges';

/** Records of what the shop has in stock, and the ledger of every change to it. */

/** What is kept in stock beside film: ink, powder, garments to print on. */
const supplyKinds = ['colour', 'white', 'powder', 'blank'] as const;

const amount = whole(ranges.amount);

/** What is written on the box, and when more is bought. */
const onTheBox = {
  lot: text,
  bestBefore: z.nullable(localDate),
  /** The day it was opened; `null` for one that is not. */
  opened: z.nullable(localDate),
  /** Below this amount, in the item's base unit, more is ordered; `null` where nobody watches. */
  reorder: z.nullable(amount),
  /** What to order, and where. */
  order: text,
};

const supplyFields = {
  id: id<'item'>(),
  name: text,
  ...onTheBox,
  archived: z.boolean(),
  changed: instant,
};

/**
 * Something in stock. How much of it there is, is the sum of its entries. A film's record of the same id tells what it is; here is
 * what is on its box.
 */
export const itemSchema = z.discriminatedUnion('kind', [
  z.object({ ...supplyFields, kind: z.literal('colour') }),
  z.object({ ...supplyFields, kind: z.literal('white') }),
  z.object({ ...supplyFields, kind: z.literal('powder') }),
  z.object({
    ...supplyFields,
    kind: z.literal('blank'),
    style: text,
    colour: text,
    shade: z.nullable(shade),
    size: text,
  }),
  z.object({
    id: id<'film'>(),
    kind: z.literal('film'),
    ...onTheBox,
    /** An offcut: the film it was cut from, and how much of it; what the end of a printed sheet left cost no film. */
    cutFrom: z.nullable(
      z.object({ film: id<'film'>(), name: text, length: size, entry: z.nullable(id<'entry'>()) }),
    ),
    changed: instant,
  }),
]);

/** What an amount counts: micrometres of film, sheets, microlitres, milligrams, pieces. */
const stockUnits = ['length', 'sheets', 'volume', 'mass', 'pieces'] as const;

/**
 * Why an amount changed. `printed` is film that a run's printing took, `used` what closing a run took; `cut` is film that became
 * an item of its own, or came back from one; `counter` undoes another entry.
 */
const entryKinds = [
  'opening',
  'bought',
  'printed',
  'used',
  'counted',
  'weighed-out',
  'returned',
  'discarded',
  'spoiled',
  'cut',
  'counter',
] as const;

/** One change of one item. Entries are only ever added: a wrong one is undone by another. */
export const ledgerSchema = z.object({
  id: id<'entry'>(),
  /** A film's id, or that of an item. */
  item: id<'film' | 'item'>(),
  /** As the item was called then: it may be gone since. */
  name: text,
  unit: z.enum(stockUnits),
  kind: z.enum(entryKinds),
  /** In the unit, whole; below zero for what left. */
  amount: signed,
  run: z.nullable(id<'run'>()),
  /** Whose garments were printed. */
  order: z.nullable(id<'order'>()),
  /** The entry that this one undoes. */
  counters: z.nullable(id<'entry'>()),
  note: text,
  at: instant,
  changed: instant,
});

export type SupplyKind = (typeof supplyKinds)[number];
export type StockItem = z.infer<typeof itemSchema>;
export type Supply = Exclude<StockItem, { kind: 'film' }>;
export type Blank = Extract<StockItem, { kind: 'blank' }>;
export type StockUnit = (typeof stockUnits)[number];
export type EntryKind = (typeof entryKinds)[number];
export type LedgerEntry = z.infer<typeof ledgerSchema>;
