import { answer, BOOK, openExisting, openRecords, recordsIn, SNAPSHOTS, settled } from './stores';

const HEAD = 'head/';
const PACKED = 'book/';
const VERSION = 'meta/version';
const EPOCH = 'meta/epoch';
const ORIGINALS = 'original/';

/** A snapshot as it is listed. */
export interface Listed {
  readonly at: string;
  /** `null` for one that cannot be read here: that of a version before 19 of the model, or a damaged one. */
  readonly holds: { readonly orders: number; readonly copies: number } | null;
}

type Fields = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

const prefixed = (prefix: string): IDBKeyRange => IDBKeyRange.bound(prefix, `${prefix}\uffff`);

/** The snapshots of the shop's own book, latest first. */
export async function listSnapshots(): Promise<Listed[]> {
  const db = await openExisting(SNAPSHOTS);
  if (!db) return [];
  const keys = (await answer(recordsIn(db, 'readonly').getAllKeys())).map(String);
  const listed: Listed[] = [];
  for (const key of keys) {
    if (!key.startsWith(HEAD) && !/^\d/.test(key)) continue;
    const head: unknown = key.startsWith(HEAD) ? await answer(recordsIn(db, 'readonly').get(key)) : null;
    const at = key.startsWith(HEAD) ? key.slice(HEAD.length) : key;
    const { orders, copies }: Fields = isObject(head) ? head : {};
    const holds = typeof orders === 'number' && typeof copies === 'number' ? { orders, copies } : null;
    listed.push({ at, holds });
  }
  db.close();
  return listed.sort((a, b) => b.at.localeCompare(a.at));
}

const through = async (bytes: BlobPart, transform: CompressionStream | DecompressionStream) =>
  new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(transform)).arrayBuffer());

async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The records of a snapshot and their version, its digest verified; `null` if it is damaged. */
async function readSnapshot(at: string): Promise<{ records: Fields; version: number } | null> {
  const db = await openExisting(SNAPSHOTS);
  if (!db) return null;
  try {
    const head: unknown = await answer(recordsIn(db, 'readonly').get(`${HEAD}${at}`));
    const packed: unknown = await answer(recordsIn(db, 'readonly').get(`${PACKED}${at}`));
    if (!isObject(head) || !(packed instanceof Uint8Array)) return null;
    const bytes = await through(new Uint8Array(packed), new DecompressionStream('deflate-raw'));
    if ((await sha256(bytes)) !== head.digest) return null;
    const read: unknown = JSON.parse(new TextDecoder().decode(bytes));
    if (!isObject(read) || !isObject(read.records) || typeof read.version !== 'number') return null;
    return { records: read.records, version: read.version };
  } catch {
    return null;
  } finally {
    db.close();
  }
}

/** Keeps what lies in the book now as a snapshot, whether it can be read or not. Nothing is kept of an empty one. */
async function keepPresent(db: IDBDatabase, now: Date): Promise<void> {
  const keys = await answer(recordsIn(db, 'readonly').getAllKeys());
  const values: unknown[] = await answer(recordsIn(db, 'readonly').getAll());
  const all = new Map(keys.map((key, index) => [String(key), values[index]]));
  const version = all.get(VERSION);
  const records = Object.fromEntries(
    [...all].filter(([key]) => !key.startsWith('meta/') && !key.startsWith(ORIGINALS)),
  );
  if (typeof version !== 'number' || Object.keys(records).length === 0) return;
  const text = JSON.stringify({ format: 'rollwright backup', version, records });
  const bytes = new TextEncoder().encode(text);
  const count = (kind: string) => Object.keys(records).filter((key) => key.startsWith(`${kind}/`)).length;
  const at = now.toJSON();
  const head = {
    at,
    why: 'before-restoring',
    orders: count('order'),
    copies: count('copy'),
    // Whatever may be the id of an image: none of them may be swept.
    artwork: [...new Set(text.match(/\b[0-9a-f]{64}\b/g) ?? [])],
    digest: await sha256(bytes),
  };
  const book = await through(bytes, new CompressionStream('deflate-raw'));
  const snapshots = await openRecords(SNAPSHOTS);
  const store = recordsIn(snapshots, 'readwrite');
  const done = settled(store.transaction);
  store.put(head, `${HEAD}${at}`);
  store.put(book, `${PACKED}${at}`);
  await done;
  snapshots.close();
}

/** Puts records in place of those of the book, all of them or none; what the app set aside before stays. */
async function replace(
  db: IDBDatabase,
  { records, version }: { records: Fields; version: number },
): Promise<void> {
  const store = recordsIn(db, 'readwrite');
  const done = settled(store.transaction);
  const epoch: unknown = await answer(store.get(EPOCH));
  const originals: [IDBValidKey, unknown][] = [];
  const kept = await answer(store.getAllKeys(prefixed(ORIGINALS)));
  const values: unknown[] = await answer(store.getAll(prefixed(ORIGINALS)));
  for (const [index, key] of kept.entries()) originals.push([key, values[index]]);
  store.clear();
  for (const [key, value] of Object.entries(records)) store.put(value, key);
  for (const [key, value] of originals) store.put(value, key);
  store.put(version, VERSION);
  // A tab that still believes it writes is held to its epoch, and changes nothing any more.
  store.put((typeof epoch === 'number' ? epoch : 0) + 1, EPOCH);
  await done;
}

async function bringBackAlone(at: string, now: Date): Promise<'done' | 'damaged' | 'not-written'> {
  const found = await readSnapshot(at);
  if (!found) return 'damaged';
  try {
    const db = await openRecords(BOOK);
    await keepPresent(db, now);
    await replace(db, found);
    db.close();
    localStorage.setItem('rollwright-own-book', 'begun');
    localStorage.setItem('rollwright-opened', 'shop');
    return 'done';
  } catch {
    return 'not-written';
  }
}

/**
 * Brings the shop's own book back as a snapshot has it. What lies there is kept as a snapshot first, of whatever version it is.
 * @returns `writes`: another tab holds the lock of the book; nothing is changed then
 */
export async function bringBack(
  at: string,
  now: Date,
): Promise<'done' | 'writes' | 'damaged' | 'not-written'> {
  // Where the browser has no locks, the epoch keeps out a tab that writes.
  if (!navigator.locks) return bringBackAlone(at, now);
  return navigator.locks.request(BOOK, { ifAvailable: true }, (lock) =>
    lock ? bringBackAlone(at, now) : 'writes',
  );
}
