import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { emptyBook, MODEL_VERSION } from '../../src/model';
import { type databases, noEpoch, openRepository, openSnapshots } from '../../src/storage';
import { openArtworkStore } from '../../src/storage/artwork-store';
import { entriesWithPrefix, openStore, writeBatch } from '../../src/storage/database';
import { fence } from '../../src/storage/epoch';
import { smallBook, smallSettings } from '../editing/book';

const overtaken = { ok: false, problem: { code: 'overtaken' } };
let last = 0;

/** The databases of a book of their own, as one tab after another opens them. */
function sharedNames() {
  last += 1;
  const names = {
    book: `book-${last}`,
    artwork: `artwork-${last}`,
    snapshots: `snapshots-${last}`,
  } satisfies Record<keyof typeof databases.shop, string>;
  return () => {
    const epoch = noEpoch();
    const repository = openRepository(names.book, epoch, smallSettings);
    const artwork = openArtworkStore(names.artwork, epoch);
    const snapshots = openSnapshots(names.snapshots, epoch, (at) => at.slice(0, 10), smallSettings);
    const claim = async () => {
      const claimed = await repository.claim();
      epoch.current = claimed.epoch;
      await fence(epoch.databases, epoch.current);
      return claimed;
    };
    return { names, epoch, repository, artwork, snapshots, claim };
  };
}

describe('an epoch', () => {
  it('grows by one at each claim', async () => {
    const open = sharedNames();
    const epochs = [];
    for (const tab of [open(), open(), open()]) epochs.push((await tab.claim()).epoch);
    expect(epochs).toEqual([1, 2, 3]);
  });

  it('lets no tab write in any database once another has claimed the book', async () => {
    const open = sharedNames();
    const [stale, next] = [open(), open()];
    const { book } = smallBook();
    await stale.claim();
    await stale.repository.save(emptyBook, book);
    const image = new Blob(['image']);
    await stale.artwork.put('a', image, image);
    await next.claim();

    expect(await stale.repository.save(book, emptyBook)).toEqual(overtaken);
    expect(await stale.artwork.put('b', image, image)).toEqual(overtaken);
    await expect(stale.artwork.sweep(new Set())).rejects.toThrow('another tab writes');
    await expect(stale.snapshots.take(emptyBook, 'day', '2026-11-27T08:00:00.000Z')).rejects.toThrow();
    expect(await next.repository.read()).toMatchObject({ kind: 'read', book });
    expect(await next.artwork.file('a')).not.toBeNull();
    expect(await next.artwork.file('b')).toBeNull();
    expect(await next.snapshots.list()).toEqual([]);
  });

  it('is held against inside the transaction: a write that was begun before the claim and comes after it is refused', async () => {
    const open = sharedNames();
    const [stale, next] = [open(), open()];
    const { book } = smallBook();
    await stale.claim();
    const [claimed, saved] = await Promise.all([next.claim(), stale.repository.save(emptyBook, book)]);
    const { reading } = claimed;
    // Whichever came first: what the claim has read is what lies there.
    expect(saved).toEqual(reading.kind === 'read' ? { ok: true } : overtaken);
    expect(await next.repository.read()).toEqual(reading);
  });

  it('begins above what artwork and snapshots have seen, where the book was cleared', async () => {
    const open = sharedNames();
    for (let times = 0; times < 3; times += 1) await open().claim();
    const { names } = open();
    await openStore(names.book).destroy();
    const tab = open();
    expect((await tab.claim()).epoch).toBe(4);
    const image = new Blob(['image']);
    expect(await tab.artwork.put('a', image, image)).toMatchObject({ ok: true });
  });

  it('is no entry of a database', async () => {
    const open = sharedNames();
    const tab = open();
    await tab.claim();
    for (const name of Object.values(tab.names))
      expect(await entriesWithPrefix(openStore(name), '')).toEqual([]);
  });

  it('is claimed in no database by a build that is older than what is stored', async () => {
    const open = sharedNames();
    const newer = open();
    await newer.claim();
    await writeBatch(openStore(newer.names.book), [['meta/version', MODEL_VERSION + 1]], []);
    const older = open();
    expect(await older.repository.claim()).toMatchObject({ reading: { kind: 'newer' }, epoch: 0 });
    const image = new Blob(['image']);
    expect(await older.artwork.put('a', image, image)).toEqual(overtaken);
    await expect(older.artwork.sweep(new Set())).rejects.toThrow();
    await expect(older.snapshots.take(emptyBook, 'day', '2026-11-27T08:00:00.000Z')).rejects.toThrow();
    // The newer one goes on.
    expect(await newer.artwork.put('a', image, image)).toMatchObject({ ok: true });
  });
});
