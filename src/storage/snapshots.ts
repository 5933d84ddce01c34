import { get } from 'idb-keyval';
import {
  artworkInUse,
  type Book,
  MODEL_VERSION,
  type NotBroughtUp,
  type Opened,
  readKept,
  readUnversioned,
  readWritten,
  recordsOf,
  type Settings,
  type StoredRecords,
  writeKept,
} from '../model';
import { fail, ok, type Result } from '../units';
import { sha256 } from '../units/browser/sha256';
import { entriesWithPrefix, openStore, writeBatch } from './database';
import type { Epoch } from './epoch';
import { isDue, keptOf, type SnapshotReason, snapshotReasons } from './snapshot-plan';

/** A book as it was. */
export interface StoredSnapshot {
  readonly at: string;
  /** Why it was taken and what is in it; `null` where that cannot be read. */
  readonly holds: { readonly why: SnapshotReason; readonly orders: number; readonly copies: number } | null;
}

/** Why a snapshot cannot be brought back. It stays as it is. */
export type SnapshotProblem = 'gone' | NotBroughtUp;

/** What lies beside a book that is kept, so that a list reads no book. */
interface Head {
  readonly at: string;
  readonly why: SnapshotReason;
  readonly orders: number;
  readonly copies: number;
  /** Images that the book needs. */
  readonly artwork: readonly string[];
  /** SHA-256 of the book as it is written. */
  readonly digest: string;
}

/** Heads lie under `head/`, books under `book/`, both by their instants. */
const HEAD = 'head/';
const BOOK = 'book/';
/** Up to version 18 of the model a snapshot was one entry under its instant, the book as it was in memory. */
const FIRST_FORMAT = '2';

export interface SnapshotStore {
  /** Latest first. */
  list(): Promise<StoredSnapshot[]>;
  /** Takes one, and lets go of those that are not kept any longer. */
  take(book: Book, why: SnapshotReason, at: string): Promise<void>;
  /** Takes one of the hour, if it is due and the book is not as the last one has it. */
  takeDue(book: Book, at: string): Promise<void>;
  /** Takes one of records of an older version, before they are brought up. */
  takeOlder(records: StoredRecords, version: number, at: string): Promise<void>;
  /** Reads one as far as it can be read, and tells what cannot. */
  read(at: string): Promise<Result<Opened, SnapshotProblem>>;
  /** Images that snapshots need; `null` where that cannot be told of one of them. */
  artwork(): Promise<Set<string> | null>;
  close(): void;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

const isReason = (value: unknown): value is SnapshotReason =>
  snapshotReasons.some((reason) => reason === value);

const isText = (value: unknown): value is string => typeof value === 'string';

function holdsOf(value: unknown): StoredSnapshot['holds'] {
  if (!isObject(value) || !isReason(value.why)) return null;
  return { why: value.why, orders: Number(value.orders), copies: Number(value.copies) };
}

/** Everything in a value that may be the id of an image, where nothing better is known of it. */
const hashesIn = (value: unknown): string[] => JSON.stringify(value)?.match(/\b[0-9a-f]{64}\b/g) ?? [];

const through = async (
  bytes: Uint8Array<ArrayBuffer>,
  transform: CompressionStream | DecompressionStream,
): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(transform)).arrayBuffer());

const opened = (kept: Result<Opened, SnapshotProblem>): Result<Opened, SnapshotProblem> => {
  if (!kept.ok) return kept;
  const { book, setAside, fellBack } = kept.value;
  return ok({ book, setAside, fellBack });
};

/**
 * @param epoch that of the book whose snapshots they are: a tab that no longer writes takes none
 * @param dayOf the local date of an instant
 * @param first the settings that a shop begins with, which stand in for those that cannot be read
 */
export function openSnapshots(
  database: string,
  epoch: Epoch,
  dayOf: (at: string) => string,
  first: () => Settings,
): SnapshotStore {
  const store = openStore(database, epoch);

  /** Whatever lies there, by the instants. */
  const found = async (): Promise<{ at: string; key: string; value: unknown }[]> => {
    const [heads, first] = await Promise.all([
      entriesWithPrefix(store, HEAD),
      entriesWithPrefix(store, FIRST_FORMAT),
    ]);
    return [
      ...heads.map(([key, value]) => ({ at: key.slice(HEAD.length), key, value })),
      ...first.map(([key, value]) => ({ at: key, key, value })),
    ].sort((a, b) => b.at.localeCompare(a.at));
  };
  const list = async (): Promise<StoredSnapshot[]> =>
    (await found()).map(({ at, value }) => ({ at, holds: holdsOf(value) }));

  /** The entries that keep a book. */
  const packed = async (
    { why, at }: Pick<Head, 'why' | 'at'>,
    { records, version, artwork }: { records: StoredRecords; version: number; artwork: Iterable<string> },
  ): Promise<{ head: Head; entries: [string, unknown][] }> => {
    const bytes = new TextEncoder().encode(writeKept(records, version));
    const count = (collection: string) =>
      [...records.keys()].filter((key) => key.startsWith(`${collection}/`)).length;
    const head: Head = {
      at,
      why,
      orders: count('order'),
      copies: count('copy'),
      artwork: [...artwork],
      digest: await sha256(bytes),
    };
    const book = await through(bytes, new CompressionStream('deflate-raw'));
    return {
      head,
      entries: [
        [`${HEAD}${at}`, head],
        [`${BOOK}${at}`, book],
      ],
    };
  };
  /** Keeps one, and lets go of those that are not kept any longer; one that cannot be read is not touched. */
  const put = async ({ head: { at, why }, entries }: Awaited<ReturnType<typeof packed>>): Promise<void> => {
    const known = (await list()).flatMap((one) =>
      one.holds && one.at !== at ? [{ at: one.at, why: one.holds.why }] : [],
    );
    const kept = new Set(keptOf([...known, { at, why }], Date.parse(at), dayOf).map((one) => one.at));
    const gone = known.filter((one) => !kept.has(one.at));
    await writeBatch(
      store,
      entries,
      gone.flatMap((one) => [one.at, `${HEAD}${one.at}`, `${BOOK}${one.at}`]),
    );
  };
  const ofBook = (book: Book) => ({
    records: recordsOf(book),
    version: MODEL_VERSION,
    artwork: artworkInUse(book),
  });

  const readBook = async (head: unknown, at: string): Promise<Result<Opened, SnapshotProblem>> => {
    const packed = await get<unknown>(`${BOOK}${at}`, store.use);
    if (!isObject(head) || !(packed instanceof Uint8Array)) return fail('damaged');
    try {
      const bytes = await through(new Uint8Array(packed), new DecompressionStream('deflate-raw'));
      if ((await sha256(bytes)) !== head.digest) return fail('damaged');
      return opened((await readWritten(new TextDecoder().decode(bytes), first())) ?? fail('damaged'));
    } catch {
      return fail('damaged');
    }
  };

  return {
    list,
    take: async (book, why, at) => put(await packed({ why, at }, ofBook(book))),
    async takeDue(book, at) {
      const taken = (await list()).flatMap((one) => (one.holds ? [{ at: one.at, why: one.holds.why }] : []));
      if (!isDue(taken, Date.parse(at))) return;
      const one = await packed({ why: 'hour', at }, ofBook(book));
      const [latest] = await found();
      const isNew = !isObject(latest?.value) || latest.value.digest !== one.head.digest;
      if (isNew) await put(one);
    },
    async takeOlder(records, version, at) {
      const kept = await readKept(records, version);
      const artwork =
        kept.ok && kept.value.setAside.length === 0
          ? artworkInUse(kept.value.book)
          : hashesIn(Object.fromEntries(records));
      const { entries } = await packed({ why: 'before-migrating', at }, { records, version, artwork });
      // Before the book is claimed no tab writes yet; one snapshot more does no harm.
      await writeBatch({ ...store, epoch: null }, entries, []);
    },
    async read(at) {
      const head = await get<unknown>(`${HEAD}${at}`, store.use);
      if (head !== undefined) return readBook(head, at);
      const first = await get<unknown>(at, store.use);
      if (first === undefined) return fail('gone');
      return opened(await readUnversioned(isObject(first) ? first.book : null));
    },
    async artwork() {
      const used = new Set<string>();
      for (const { at, key, value } of await found()) {
        if (!isObject(value)) return null;
        if (key === at) {
          const kept = await readUnversioned(value.book);
          for (const id of kept.ok ? artworkInUse(kept.value.book) : hashesIn(value)) used.add(id);
        } else if (Array.isArray(value.artwork) && value.artwork.every(isText)) {
          for (const id of value.artwork) used.add(id);
        } else return null;
      }
      return used;
    },
    close: store.close,
  };
}
