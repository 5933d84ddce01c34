import { get } from 'idb-keyval';
import type { Book } from '../model';
import { entriesWithPrefix, openStore, writeBatch } from './database';
import type { Epoch } from './epoch';

/** A book as it was. Its artwork lies in the artwork store as long as a snapshot names it. */
export interface StoredSnapshot {
  readonly at: string;
  /** Why it was taken: a new day, or before something that replaces the book. */
  readonly why: 'day' | 'before-restoring';
  readonly orders: number;
  readonly copies: number;
}

interface Entry extends StoredSnapshot {
  readonly book: Book;
}

/** How many are kept; older ones go. */
const MOST = 12;

export interface SnapshotStore {
  /** Latest first. */
  list(): Promise<StoredSnapshot[]>;
  take(book: Book, why: StoredSnapshot['why'], at: string): Promise<void>;
  book(at: string): Promise<Book | null>;
  /** Artwork that a snapshot names. */
  artwork(): Promise<Set<string>>;
  close(): void;
}

export function openSnapshots(database: string, epoch: Epoch): SnapshotStore {
  const store = openStore(database, epoch);
  const entries = async (): Promise<Entry[]> => {
    const all = (await entriesWithPrefix(store, '')).map(([, value]) => value as Entry);
    return all.sort((a, b) => b.at.localeCompare(a.at));
  };
  return {
    async list() {
      return (await entries()).map(({ at, why, orders, copies }) => ({ at, why, orders, copies }));
    },
    async take(book, why, at) {
      const old = (await entries()).slice(MOST - 1).map((entry) => entry.at);
      const entry: Entry = {
        at,
        why,
        orders: Object.keys(book.order).length,
        copies: Object.keys(book.copy).length,
        book,
      };
      await writeBatch(store, [[at, entry]], old);
    },
    async book(at) {
      const entry = await get<Entry>(at, store.use);
      return entry?.book ?? null;
    },
    async artwork() {
      const all = await entries();
      return new Set(
        all.flatMap(({ book }) =>
          Object.values(book.transfer).flatMap(({ artwork }) => (artwork === null ? [] : [artwork])),
        ),
      );
    },
    close: store.close,
  };
}
