import 'fake-indexeddb/auto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { MODEL_VERSION, recordsOf, type StoredRecords } from '../../src/model';
import { noEpoch, openRepository, openSnapshots } from '../../src/storage';
import { entriesWithPrefix, openStore, writeBatch } from '../../src/storage/database';
import { EPOCH_KEY } from '../../src/storage/epoch';
import { smallBook, smallSettings } from '../editing/book';

// The part is gone, as after an update, or there is no way to it.
vi.mock('../../src/model/migrations/every-migration', () => {
  throw new TypeError('could not be fetched');
});

const FOLDER = join(import.meta.dirname, '../model/books');
const shipped = readdirSync(FOLDER).map((file): [string, number, StoredRecords] => {
  const { version, records } = JSON.parse(readFileSync(join(FOLDER, file), 'utf8'));
  return [file, version, new Map(Object.entries(records))];
});
const AT = '2026-11-27T15:00:00.000Z';

/** All that lies in a database, the epoch too. */
const rawOf = async (name: string) =>
  openStore(name).use('readonly', async (store) => {
    const [keys, values] = [store.getAllKeys(), store.getAll()];
    await new Promise((resolve) => {
      store.transaction.oncomplete = resolve;
    });
    return keys.result.map((key, index) => [key, values.result[index]]);
  });

describe('where what brings an older book up cannot be fetched', () => {
  it.each(shipped)('a book of %s is not read, and not touched', async (file, version, records) => {
    await writeBatch(openStore(file), [...records, ['meta/version', version], [EPOCH_KEY, 7]], []);
    const before = await rawOf(file);
    const keepOlder = vi.fn();
    const repository = openRepository(file, noEpoch(), smallSettings, keepOlder);
    expect(await repository.read()).toEqual({ kind: 'part-missing' });
    expect(await repository.claim()).toEqual({ reading: { kind: 'part-missing' }, epoch: 0 });
    expect(keepOlder).not.toHaveBeenCalled();
    expect(await rawOf(file)).toEqual(before);
  });

  it('a book of this version opens all the same', async () => {
    const { book } = smallBook();
    const present = [...recordsOf(book), ['meta/version', MODEL_VERSION] as const];
    await writeBatch(openStore('present'), present, []);
    const repository = openRepository('present', noEpoch(), smallSettings);
    expect(await repository.claim()).toMatchObject({ reading: { kind: 'read', book }, epoch: 1 });
  });

  it.each(shipped)('a snapshot of %s is not read, and keeps its images', async (file, version, records) => {
    const snapshots = openSnapshots(`taken-${file}`, noEpoch(), (at) => at.slice(0, 10), smallSettings);
    await snapshots.takeOlder(records, version, AT);
    const before = await entriesWithPrefix(openStore(`taken-${file}`), '');
    expect(await snapshots.read(AT)).toEqual({ ok: false, problem: 'part-missing' });
    const named = [...records.keys()].flatMap((key) => (key.startsWith('artwork/') ? [key.slice(8)] : []));
    expect([...((await snapshots.artwork()) ?? [])]).toEqual(expect.arrayContaining(named));
    expect(await entriesWithPrefix(openStore(`taken-${file}`), '')).toEqual(before);
  });

  it('a snapshot of the first format is not read, and keeps its images', async () => {
    const image = 'a'.repeat(64);
    const first = { at: AT, why: 'day', orders: 0, copies: 0, book: { artwork: { [image]: { id: image } } } };
    await writeBatch(openStore('first'), [[AT, first]], []);
    const snapshots = openSnapshots('first', noEpoch(), (at) => at.slice(0, 10), smallSettings);
    expect(await snapshots.read(AT)).toEqual({ ok: false, problem: 'part-missing' });
    expect(await snapshots.artwork()).toEqual(new Set([image]));
  });
});
