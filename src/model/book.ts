import * as z from 'zod/mini';
import { keysOf } from '../units';
import {
  type Aside,
  asideSchema,
  type Recipe,
  recipeSchema,
  type ShelfItem,
  type Spoilage,
  shelfSchema,
  spoilageSchema,
  type Tick,
  tickSchema,
} from './bench';
import { type Calibration, calibrationSchema, type LeftOut, leftOutSchema } from './calibration';
import { type Closing, closingSchema } from './closing';
import { type Copy, copySchema } from './copy';
import { type Quote, quoteSchema } from './quote';
import {
  type Artwork,
  artworkSchema,
  type Film,
  filmSchema,
  type Garment,
  garmentSchema,
  type Order,
  orderSchema,
  type Placement,
  placementSchema,
  type Settings,
  type StoredStep,
  settingsSchema,
  stepSchema,
  type Transfer,
  transferSchema,
} from './records';
import { type Run, runSchema } from './run';
import { itemSchema, type LedgerEntry, ledgerSchema, type StockItem } from './stock';
import {
  type Check,
  checkSchema,
  type Reading,
  readingSchema,
  type UpkeepEntry,
  upkeepSchema,
} from './upkeep';

/** The collections of a book and the schema of their records; the names are the prefixes of storage keys. */
const collections = {
  order: orderSchema,
  transfer: transferSchema,
  garment: garmentSchema,
  placement: placementSchema,
  copy: copySchema,
  artwork: artworkSchema,
  film: filmSchema,
  run: runSchema,
  recipe: recipeSchema,
  tick: tickSchema,
  spoilage: spoilageSchema,
  aside: asideSchema,
  shelf: shelfSchema,
  closing: closingSchema,
  reopened: closingSchema,
  item: itemSchema,
  entry: ledgerSchema,
  calibration: calibrationSchema,
  leftOut: leftOutSchema,
  check: checkSchema,
  upkeep: upkeepSchema,
  reading: readingSchema,
  quote: quoteSchema,
  step: stepSchema,
  settings: settingsSchema,
} as const;

export type Collection = keyof typeof collections;

export const collectionNames = keysOf(collections);

/** All that a shop has entered: each collection by id. There is one record of settings, `shop`. */
export interface Book {
  readonly order: Readonly<Record<string, Order>>;
  readonly transfer: Readonly<Record<string, Transfer>>;
  readonly garment: Readonly<Record<string, Garment>>;
  readonly placement: Readonly<Record<string, Placement>>;
  readonly copy: Readonly<Record<string, Copy>>;
  readonly artwork: Readonly<Record<string, Artwork>>;
  readonly film: Readonly<Record<string, Film>>;
  readonly run: Readonly<Record<string, Run>>;
  readonly recipe: Readonly<Record<string, Recipe>>;
  readonly tick: Readonly<Record<string, Tick>>;
  readonly spoilage: Readonly<Record<string, Spoilage>>;
  readonly aside: Readonly<Record<string, Aside>>;
  readonly shelf: Readonly<Record<string, ShelfItem>>;
  readonly closing: Readonly<Record<string, Closing>>;
  /** What was told of closed runs that are open again: they are closed with it. */
  readonly reopened: Readonly<Record<string, Closing>>;
  readonly item: Readonly<Record<string, StockItem>>;
  /** The ledger of stock. Entries are only ever added. */
  readonly entry: Readonly<Record<string, LedgerEntry>>;
  readonly calibration: Readonly<Record<string, Calibration>>;
  readonly leftOut: Readonly<Record<string, LeftOut>>;
  readonly check: Readonly<Record<string, Check>>;
  readonly upkeep: Readonly<Record<string, UpkeepEntry>>;
  readonly reading: Readonly<Record<string, Reading>>;
  /** Quotes as they were given. */
  readonly quote: Readonly<Record<string, Quote>>;
  /** What undo takes back; it lies with the book, so that it outlives a reload. */
  readonly step: Readonly<Record<string, StoredStep>>;
  readonly settings: Readonly<Record<string, Settings>>;
}

/** A book to put records into. */
export type Shelves = { [Name in Collection]: Record<string, Book[Name][string]> };

export const noRecords = (): Shelves => ({
  order: {},
  transfer: {},
  garment: {},
  placement: {},
  copy: {},
  artwork: {},
  film: {},
  run: {},
  recipe: {},
  tick: {},
  spoilage: {},
  aside: {},
  shelf: {},
  closing: {},
  reopened: {},
  item: {},
  entry: {},
  calibration: {},
  leftOut: {},
  check: {},
  upkeep: {},
  reading: {},
  quote: {},
  step: {},
  settings: {},
});

export const emptyBook: Book = noRecords();

/** `order/3f…`: a record's place in the book and its key in storage. */
export type RecordKey = `${Collection}/${string}`;

export type AnyRecord = Book[Collection][string];

/** The schemas, told apart by their names alone. */
const schemas: { readonly [Name in Collection]: z.ZodMiniType<Book[Name][string]> } = collections;

/** Checks one stored record; `null` if it is not of the collection's shape. */
export function readRecord<Name extends Collection>(
  collection: Name,
  value: unknown,
): Book[Name][string] | null {
  const parsed = z.safeParse(schemas[collection], value);
  return parsed.success ? parsed.data : null;
}

/** There is one record of settings, and this is its key. */
export const SHOP = 'shop';

/** Puts a record into a book, if it is of its collection's shape and stored under its own id. */
export function put<Name extends Collection>(
  book: Shelves,
  collection: Name,
  id: string,
  value: unknown,
): boolean {
  const record = readRecord(collection, value);
  const isOwn = record !== null && id === ('id' in record ? record.id : SHOP);
  const shelf: Record<string, Book[Name][string]> = book[collection];
  if (isOwn) shelf[id] = record;
  return isOwn;
}
