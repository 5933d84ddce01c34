import { type Book, type Collection, collectionNames, noRecords, put, type RecordKey, SHOP } from './book';
import type { Settings } from './records';
import { hanging } from './references';
import { readSettings, type SettingsField } from './settings';

/** A stored record that could not be read, or hangs on one that could not. It is no part of the book, and stays stored as it is. */
export interface SetAside {
  readonly key: string;
  /** `null` for what is of no collection. */
  readonly collection: Collection | null;
  /** What it calls itself, if that can be read. */
  readonly name: string | null;
  /** The record that it cannot be without; `null` where it is damaged itself. */
  readonly lacks: string | null;
}

/** Stored records sorted into a book. */
export interface Sorted {
  readonly book: Book;
  readonly setAside: readonly SetAside[];
}

/** A stored book as it is opened. */
export interface Opened extends Sorted {
  /** Settings of which something could not be read, so that what a shop begins with stands there. */
  readonly fellBack: readonly SettingsField[];
}

const collectionOf = (key: string): Collection | null =>
  collectionNames.find((collection) => key.startsWith(`${collection}/`)) ?? null;

/** No name on the screen is longer. */
const NAME = 60;

function nameOf(value: unknown): string | null {
  if (typeof value !== 'object' || value === null) return null;
  const { name, fileName }: { name?: unknown; fileName?: unknown } = value;
  return [name, fileName].find((own) => typeof own === 'string')?.slice(0, NAME) ?? null;
}

/** What breaks history: a step that could not be read, or a record of which a step tells and which was set aside. */
function breakOf({ step }: Book, aside: ReadonlySet<string>): string | undefined {
  const damaged = [...aside].find((key) => key.startsWith('step/'));
  if (damaged !== undefined) return damaged;
  for (const { redo, undo } of Object.values(step)) {
    for (const { path } of [...redo, ...undo]) {
      const key = path.slice(0, 2).join('/');
      if (aside.has(key)) return key;
    }
  }
  return undefined;
}

/**
 * Sorts stored records into a book, each checked by its collection's schema and by what it cannot be without. Steps hold together or not
 * at all: undo that skips one would lead to a book that never was.
 * @param records by their keys, of this version of the model
 */
export function bookOf(records: ReadonlyMap<string, unknown>): Sorted {
  const book = noRecords();
  const aside = new Map<string, string | null>();
  for (const [key, value] of records) {
    const name = collectionOf(key);
    if (!name || !put(book, name, key.slice(name.length + 1), value)) aside.set(key, null);
  }
  for (const [key, lacks] of hanging(book)) aside.set(key, lacks);
  const broken = breakOf(book, new Set(aside.keys()));
  for (const id of broken === undefined ? [] : Object.keys(book.step))
    aside.set(`step/${id}`, broken ?? null);
  const setAside = [...aside].map(([key, lacks]): SetAside => {
    const collection = collectionOf(key);
    const shelf: Record<string, unknown> = collection ? book[collection] : {};
    if (collection) delete shelf[key.slice(collection.length + 1)];
    return { key, collection, name: nameOf(records.get(key)), lacks };
  });
  return { book, setAside };
}

/**
 * Whether a book of which some records were changed could be read again: those by their schemas, and all by what they cannot be without.
 * @param keys of the records that were changed, or are gone
 */
export function holds(book: Book, keys: Iterable<string>): boolean {
  const read = noRecords();
  for (const key of keys) {
    const name = collectionOf(key);
    const id = name ? key.slice(name.length + 1) : '';
    const record = name && Object.hasOwn(book[name], id) ? book[name][id] : undefined;
    if (!name || (record !== undefined && !put(read, name, id, record))) return false;
  }
  return hanging(book).size === 0;
}

const SETTINGS: RecordKey = `settings/${SHOP}`;

/**
 * Opens a stored book: sorts its records, and reads its settings field by field.
 * @param records by their keys, of this version of the model
 * @param first the settings that a shop begins with; `null` to read settings as any other record
 */
export function openBook(records: ReadonlyMap<string, unknown>, first: Settings | null): Opened {
  if (!first) return { ...bookOf(records), fellBack: [] };
  const { book, setAside } = bookOf(new Map([...records].filter(([key]) => key !== SETTINGS)));
  const { settings, fellBack } = readSettings(records.get(SETTINGS), first);
  return { book: { ...book, settings: { [SHOP]: settings } }, setAside, fellBack };
}
