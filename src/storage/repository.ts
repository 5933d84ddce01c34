import {
  type AnyRecord,
  type Book,
  collectionNames,
  MODEL_VERSION,
  type RecordKey,
  readKept,
} from '../model';
import { fail, ok, type Result } from '../units';
import { entriesWithPrefix, openStore, writeBatch } from './database';
import { problemOf, type StorageProblem } from './problem';

const VERSION_KEY = 'meta/version';

/** What was found in storage. */
type BookReading =
  | {
      readonly kind: 'read';
      readonly book: Book;
      /** Keys of what could not be read; it stays in storage untouched. */
      readonly setAside: readonly string[];
    }
  | { readonly kind: 'empty' }
  /** Written by a newer version of the app: neither read nor written here. */
  | { readonly kind: 'newer'; readonly version: number }
  | { readonly kind: 'failed'; readonly problem: StorageProblem };

/** The book in a database. Nothing is written before what is stored has been read. */
export interface BookRepository {
  load(): Promise<BookReading>;
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

export function openRepository(database: string): BookRepository {
  const store = openStore(database);
  let mayWrite = false;

  const read = async (): Promise<BookReading> => {
    const entries = new Map(await entriesWithPrefix(store, ''));
    const version = entries.get(VERSION_KEY);
    entries.delete(VERSION_KEY);
    if (version === undefined) {
      mayWrite = true;
      return { kind: 'empty' };
    }
    const kept = readKept(entries, version);
    // Of no version at all is no book of ours either.
    if (!kept.ok) return { kind: 'newer', version: Number(version) };
    const { book, unreadable, records } = kept.value;
    if (version !== MODEL_VERSION) {
      const gone = [...entries.keys()].filter((key) => !records.has(key));
      await writeBatch(store, [...records, [VERSION_KEY, MODEL_VERSION]], gone);
    }
    mayWrite = true;
    return { kind: 'read', book, setAside: unreadable };
  };

  return {
    async load() {
      try {
        return await read();
      } catch (error) {
        return { kind: 'failed', problem: problemOf(error) };
      }
    },
    async save(before, after) {
      if (!mayWrite) throw new Error('the stored book has not been read');
      const { puts, deletes } = differences(before, after);
      if (puts.length === 0 && deletes.length === 0) return ok(undefined);
      try {
        await writeBatch(store, [...puts, [VERSION_KEY, MODEL_VERSION]], deletes);
        return ok(undefined);
      } catch (error) {
        return fail(problemOf(error));
      }
    },
    close: store.close,
  };
}
