import 'fake-indexeddb/auto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { get } from 'idb-keyval';
import { describe, expect, it } from 'vitest';
import { editOrder } from '../../src/editing';
import { artworkInUse, type Book, MODEL_VERSION, readKept, recordsOf } from '../../src/model';
import { noEpoch, openSnapshots } from '../../src/storage';
import { entriesWithPrefix, openStore, writeBatch } from '../../src/storage/database';
import { fence } from '../../src/storage/epoch';
import { edited, smallBook, smallSettings } from '../editing/book';

let last = 0;
const freshName = () => {
  last += 1;
  return `taken-${last}`;
};
const dayOf = (at: string) => at.slice(0, 10);
/** The snapshots in a database, as the tab that writes opens them. */
async function inTab(name: string) {
  const epoch = noEpoch();
  const snapshots = openSnapshots(name, epoch, dayOf, smallSettings);
  await fence(epoch.databases, 1);
  epoch.current = 1;
  return snapshots;
}
const readWhole = (value: Book) => ({ ok: true, value: { book: value, setAside: [], fellBack: [] } });
const AT = '2026-11-27T15:00:00.000Z';
const { book, order } = smallBook();
const renamed = edited(book, (draft) => editOrder(draft, order, { name: 'Renamed' }));

const BOOKS = join(import.meta.dirname, '../model/books');

/** Every shipped book, as a snapshot of the first format has it: in memory, without its version, empty collections and all. */
const shipped = readdirSync(BOOKS).map((file) => {
  const { version, collections, records } = JSON.parse(readFileSync(join(BOOKS, file), 'utf8'));
  const inMemory: Record<string, Record<string, unknown>> = Object.fromEntries(
    collections.map((name: string) => [name, {}]),
  );
  for (const [key, record] of Object.entries(records)) {
    const slash = key.indexOf('/');
    const shelf = inMemory[key.slice(0, slash)];
    if (shelf) shelf[key.slice(slash + 1)] = record;
  }
  return { file, version, records: new Map<string, unknown>(Object.entries(records)), inMemory };
});

describe('a snapshot', () => {
  it('is listed with its time, why it was taken, and what is in it, and comes back', async () => {
    const snapshots = await inTab(freshName());
    await snapshots.take(book, 'before-restoring', AT);
    expect(await snapshots.list()).toEqual([
      { at: AT, holds: { why: 'before-restoring', orders: 1, copies: 5 } },
    ]);
    expect(await snapshots.read(AT)).toEqual(readWhole(book));
    expect(await snapshots.read('2026-01-01T00:00:00.000Z')).toEqual({ ok: false, problem: 'gone' });
  });

  it('of the hour is taken once an hour, and only of a book that has changed', async () => {
    const snapshots = await inTab(freshName());
    for (const [minute, now] of [
      ['15:00', book],
      ['15:40', renamed],
      ['16:10', book],
      ['17:20', renamed],
    ] as const)
      await snapshots.takeDue(now, `2026-11-27T${minute}:00.000Z`);
    expect((await snapshots.list()).map(({ at }) => at.slice(11, 16))).toEqual(['17:20', '15:00']);
  });

  it('of an older version is brought up when it is read', async () => {
    for (const { version, records } of shipped) {
      const snapshots = await inTab(freshName());
      await snapshots.takeOlder(records, version, AT);
      const kept = await readKept(records, version);
      expect(await snapshots.read(AT)).toEqual(readWhole(kept.ok ? kept.value.book : expect.fail()));
    }
  });

  it('that was damaged is named, gives nothing, and stays as it is', async () => {
    const name = freshName();
    const snapshots = await inTab(name);
    await snapshots.take(book, 'hour', AT);
    const store = openStore(name);
    const bytes = await get<Uint8Array>(`book/${AT}`, store.use);
    for (let at = 0; at < (bytes?.length ?? 0); at += 7) {
      const flipped = new Uint8Array(bytes ?? []);
      flipped[at] = (flipped[at] ?? 0) ^ 4;
      await writeBatch(store, [[`book/${AT}`, flipped]], []);
      const read = await snapshots.read(AT);
      // A bit that no reader looks at may change.
      if (read.ok) expect(read).toEqual(readWhole(book));
      else expect(read.problem).toBe('damaged');
    }
    await writeBatch(store, [[`head/${AT}`, 'no head']], []);
    const before = await entriesWithPrefix(store, '');
    expect(await snapshots.list()).toEqual([{ at: AT, holds: null }]);
    expect(await snapshots.read(AT)).toEqual({ ok: false, problem: 'damaged' });
    // What images it needs cannot be told, so none may go.
    expect(await snapshots.artwork()).toBeNull();
    for (let day = 1; day < 28; day += 1)
      await snapshots.take(book, 'hour', `2027-03-${String(day).padStart(2, '0')}T12:00:00.000Z`);
    expect(await entriesWithPrefix(store, '')).toEqual(expect.arrayContaining(before));
  });
});

describe('a snapshot of which a record cannot be read', () => {
  it('gives all but that and what hangs on it, which are named', async () => {
    const snapshots = await inTab(freshName());
    const bad = new Map<string, unknown>(recordsOf(book)).set(`order/${order}`, { name: 'Hill Bakers' });
    await snapshots.takeOlder(bad, MODEL_VERSION, AT);
    const read = await snapshots.read(AT);
    if (!read.ok) return expect.fail(read.problem);
    expect(Object.keys(read.value.book.film)).toEqual(Object.keys(book.film));
    expect(read.value.setAside).toContainEqual({
      key: `order/${order}`,
      collection: 'order',
      name: 'Hill Bakers',
      lacks: null,
    });
    expect(read.value.book.order).toEqual({});
  });

  it('is damaged where nothing of it can be read', async () => {
    const snapshots = await inTab(freshName());
    await snapshots.takeOlder(new Map([['order/a', 'damaged']]), MODEL_VERSION, AT);
    expect(await snapshots.read(AT)).toEqual({ ok: false, problem: 'damaged' });
  });
});

describe('a tab that does not write', () => {
  it('takes no snapshot, but for one before a migration, and lets go of none', async () => {
    const snapshots = openSnapshots(freshName(), noEpoch(), dayOf, smallSettings);
    await expect(snapshots.take(book, 'hour', AT)).rejects.toThrow();
    await snapshots.takeOlder(shipped[0]?.records ?? new Map(), shipped[0]?.version ?? 0, AT);
    expect(await snapshots.list()).toMatchObject([{ holds: { why: 'before-migrating' } }]);
  });
});

describe('a snapshot of the first format', () => {
  // From version 19 on snapshots bear their version.
  it.each(shipped.filter(({ version }) => version > 2 && version < 19))(
    'of $file is read, whatever version it has',
    async ({ version, records, inMemory }) => {
      const name = freshName();
      await writeBatch(
        openStore(name),
        [[AT, { at: AT, why: 'day', orders: 1, copies: 5, book: inMemory }]],
        [],
      );
      const snapshots = await inTab(name);
      const kept = await readKept(records, version);
      const expected: Book = { ...(kept.ok ? kept.value.book : expect.fail()), step: {} };
      expect(await snapshots.list()).toEqual([{ at: AT, holds: { why: 'day', orders: 1, copies: 5 } }]);
      expect(await snapshots.read(AT)).toEqual(readWhole(expected));
      expect(await snapshots.artwork()).toEqual(artworkInUse(expected));
    },
  );

  it('that cannot be read keeps every image that it may name', async () => {
    const name = freshName();
    const artwork = 'b'.repeat(64);
    const broken = { order: { a: { id: 'a', artwork } } };
    await writeBatch(openStore(name), [[AT, { at: AT, why: 'day', orders: 1, copies: 5, book: broken }]], []);
    const snapshots = await inTab(name);
    expect(await snapshots.read(AT)).toEqual({ ok: false, problem: 'damaged' });
    expect(await snapshots.artwork()).toEqual(new Set([artwork]));
  });
});
