import { get, promisifyRequest } from 'idb-keyval';
import {
  type AnyRecord,
  type Book,
  type BringUp,
  bringUpFrom,
  collectionNames,
  MODEL_VERSION,
  type NotBroughtUp,
  type Opened,
  openKept,
  type RecordKey,
  type Settings,
  type StoredRecords,
} from '../model';
import { fail, ok, type Result } from '../units';
import { entriesIn, entriesWithPrefix, openStore, settled, writeBatch } from './database';
import { EPOCH_KEY, type Epoch, epochIn, latestEpoch } from './epoch';
import { problemOf, type StorageProblem } from './problem';

const VERSION_KEY = 'meta/version';

/** Originals that could not be read and that something was written over, each under a key of its own with the key it had. */
const ORIGINALS = 'original/';

const SETTINGS: RecordKey = 'settings/shop';

const isStep = (key: string): boolean => key.startsWith('step/');

/** What was found in storage. */
export type BookReading =
  /** What could not be read stays in storage untouched. */
  | ({ readonly kind: 'read' } & Opened)
  | { readonly kind: 'empty' }
  /** Written by a newer version of the app: neither read nor written here. */
  | { readonly kind: 'newer'; readonly version: number }
  /** Written by an older version of the app, and what brings it up could not be fetched: neither read nor written here. */
  | { readonly kind: 'part-missing' }
  | { readonly kind: 'failed'; readonly problem: StorageProblem };

/** What a tab can go on from: a book, or the place of one. */
export type Found = Extract<BookReading, { kind: 'read' | 'empty' }>;

export const isFound = (reading: BookReading): reading is Found =>
  reading.kind === 'read' || reading.kind === 'empty';

/** The book in a database. Nothing is written before it is claimed. */
export interface BookRepository {
  /** Reads the book to look at it: nothing is written, a book of an older version stays as it is. */
  read(): Promise<BookReading>;
  /**
   * Reads the book to write it: in one transaction it is claimed, read, and brought up to this version. What is empty
   * is claimed too; what is of a newer version, cannot be brought up, or fails, is not.
   * @returns what was found, and the epoch from which on this tab may write
   */
  claim(): Promise<{ readonly reading: BookReading; readonly epoch: number }>;
  /** Writes the records in which two books differ, in one transaction. */
  save(before: Book, after: Book): Promise<Result<void, StorageProblem>>;
  close(): void;
}

/** The records put and the keys deleted that lead from one book to another; unchanged records are the same object. */
function differences(before: Book, after: Book): { puts: [RecordKey, AnyRecord][]; deletes: RecordKey[] } {
  const puts: [RecordKey, AnyRecord][] = [];
  const deletes: RecordKey[] = [];
  for (const name of collectionNames) {
    const [old, now] = [before[name], after[name]];
    if (old === now) continue;
    for (const [id, record] of Object.entries(now))
      if (old[id] !== record) puts.push([`${name}/${id}`, record]);
    for (const id of Object.keys(old)) if (!(id in now)) deletes.push(`${name}/${id}`);
  }
  return { puts, deletes };
}

/** Whether a key of the database is that of a record of the book. */
const isRecord = (key: string): boolean => key !== VERSION_KEY && !key.startsWith(ORIGINALS);

/** The version of what is stored. Where it was lost, that is read as of this one: what is not, is set aside. */
const versionOf = (stored: unknown): unknown => (stored === undefined ? MODEL_VERSION : stored);

/** What is not brought up is not read. Of no version at all is no book of ours either. */
const notRead = (problem: NotBroughtUp, version: unknown): BookReading =>
  problem === 'part-missing' ? { kind: problem } : { kind: 'newer', version: Number(version) };

/** What entries of a database tell, and what of them to put and delete so that they are of this version. */
function told(
  stored: ReadonlyMap<string, unknown>,
  bringUp: BringUp,
  first: Settings,
): {
  reading: BookReading;
  /** What of them the book is without, or has otherwise. */
  unread: ReadonlyMap<string, unknown>;
  puts: readonly (readonly [string, unknown])[];
  deletes: readonly string[];
} {
  const entries = new Map([...stored].filter(([key]) => isRecord(key)));
  const nothing = { unread: new Map(), puts: [], deletes: [] };
  if (stored.size === 0) return { reading: { kind: 'empty' }, ...nothing };
  const { book, setAside, fellBack, records } = openKept(entries, bringUp, first);
  const reading = { kind: 'read', book, setAside, fellBack } as const;
  const keys = [...setAside.map(({ key }) => key), ...(fellBack.length > 0 ? [SETTINGS] : [])];
  const unread = new Map(keys.flatMap((key) => (records.has(key) ? [[key, records.get(key)]] : [])));
  if (versionOf(stored.get(VERSION_KEY)) === MODEL_VERSION) return { ...nothing, reading, unread };
  const deletes = [...entries.keys()].filter((key) => !records.has(key));
  return { reading, unread, puts: [...records, [VERSION_KEY, MODEL_VERSION]], deletes };
}

/**
 * @param epoch of the tab, held against what is stored inside every write
 * @param first the settings that a shop begins with, which stand in for those that cannot be read
 * @param beforeMigrating keeps what an older version stored, before it is brought up on the disk; if that fails, nothing is
 */
export function openRepository(
  database: string,
  epoch: Epoch,
  first: () => Settings,
  beforeMigrating: (records: StoredRecords, version: number) => Promise<void> = async () => undefined,
): BookRepository {
  const store = openStore(database, epoch);
  /** What of storage the book is without, or has otherwise. */
  let unread: ReadonlyMap<string, unknown> = new Map();

  /**
   * Makes way for what is written: an original that could not be read is kept under another key first. Steps make way when history goes
   * on, or it would be read with them the next time.
   */
  const makeWay = (puts: readonly [string, unknown][]) => {
    const written = new Set(puts.map(([key]) => key));
    const goesOn = puts.some(([key]) => isStep(key));
    const originals = [...unread].filter(([key]) => written.has(key) || (goesOn && isStep(key)));
    return {
      originals,
      kept: originals.map(([key, value]): [string, unknown] => [
        `${ORIGINALS}${crypto.randomUUID()}`,
        { key, version: MODEL_VERSION, value },
      ]),
      gone: originals.flatMap(([key]) => (written.has(key) ? [] : [key])),
    };
  };

  const keepOlder = async (version: number): Promise<void> => {
    const stored = await entriesWithPrefix(store, '');
    await beforeMigrating(new Map(stored.filter(([key]) => isRecord(key))), version);
  };

  /**
   * What brings an older book up is fetched first, since a transaction ends while anything else is waited for. Of another version by then, the
   * book is claimed anew.
   */
  const claim = async (others: number): ReturnType<BookRepository['claim']> => {
    const version = versionOf(await get<unknown>(VERSION_KEY, store.use));
    const bringUp = await bringUpFrom(version);
    if (!bringUp.ok) return { reading: notRead(bringUp.problem, version), epoch: 0 };
    if (version !== MODEL_VERSION) await keepOlder(Number(version));
    const claimed = await store.use('readwrite', async (records) => {
      const { transaction } = records;
      const done = settled(transaction);
      done.catch(() => undefined);
      const asked = records.get(EPOCH_KEY);
      const [found, last] = await Promise.all([entriesIn(records, ''), promisifyRequest<unknown>(asked)]);
      const entries = new Map(found);
      if (versionOf(entries.get(VERSION_KEY)) !== version) return null;
      const { reading, puts, deletes, ...rest } = told(entries, bringUp.value, first());
      const next = Math.max(epochIn(last), others) + 1;
      records.put(next, EPOCH_KEY);
      for (const [key, value] of puts) records.put(value, key);
      for (const key of deletes) records.delete(key);
      await done;
      unread = rest.unread;
      return { reading, epoch: next };
    });
    return claimed ?? claim(others);
  };
  /** One that does not open is not waited for behind the others. */
  const opened = async (): Promise<void> => undefined;
  const failed = (error: unknown): BookReading => ({ kind: 'failed', problem: problemOf(error) });

  return {
    async read() {
      try {
        const entries = new Map(await entriesWithPrefix(store, ''));
        const version = versionOf(entries.get(VERSION_KEY));
        const bringUp = await bringUpFrom(version);
        if (!bringUp.ok) return notRead(bringUp.problem, version);
        return told(entries, bringUp.value, first()).reading;
      } catch (error) {
        return failed(error);
      }
    },
    async claim() {
      try {
        // A book that was cleared begins above what its artwork and snapshots have seen.
        const others = latestEpoch(epoch.databases.filter((use) => use !== store.use));
        const [latest] = await Promise.all([others, store.use('readonly', opened)]);
        return await claim(latest);
      } catch (error) {
        return { reading: failed(error), epoch: 0 };
      }
    },
    async save(before, after) {
      const { puts, deletes } = differences(before, after);
      if (puts.length === 0 && deletes.length === 0) return ok(undefined);
      const { originals, kept, gone } = makeWay(puts);
      try {
        await writeBatch(store, [...puts, ...kept, [VERSION_KEY, MODEL_VERSION]], [...deletes, ...gone]);
        const moved = new Set(originals.map(([key]) => key));
        unread = new Map([...unread].filter(([key]) => !moved.has(key)));
        return ok(undefined);
      } catch (error) {
        return fail(problemOf(error));
      }
    },
    close: store.close,
  };
}
