import 'fake-indexeddb/auto';
import { promisifyRequest } from 'idb-keyval';
import { describe, expect, it, vi } from 'vitest';
import { editOrder, edits, removeTransfer, session } from '../../src/editing';
import { type Book, emptyBook, MODEL_VERSION, recordsOf, settingsOf } from '../../src/model';
import { noEpoch, openRepository } from '../../src/storage';
import { entriesWithPrefix, openStore, writeBatch } from '../../src/storage/database';
import { edited, freshIds, smallBook, smallSettings } from '../editing/book';

let last = 0;
const freshName = () => {
  last += 1;
  return `test-${last}`;
};

/** The book in a database, as one tab opens it. */
function inTab(name: string, beforeMigrating?: Parameters<typeof openRepository>[3]) {
  const epoch = noEpoch();
  const repository = openRepository(name, epoch, smallSettings, beforeMigrating);
  return {
    ...repository,
    epoch,
    /** Makes this the tab that writes. */
    async claim() {
      const claimed = await repository.claim();
      epoch.current = claimed.epoch;
      return claimed.reading;
    },
  };
}

describe('the repository', () => {
  it('gives back what was saved', async () => {
    const name = freshName();
    const { book } = smallBook();
    const first = inTab(name);
    expect(await first.claim()).toEqual({ kind: 'empty' });
    expect(await first.save(emptyBook, book)).toEqual({ ok: true, value: undefined });
    first.close();
    expect(await inTab(name).read()).toEqual({ kind: 'read', book, setAside: [], fellBack: [] });
  });

  it('writes changes and removals, and nothing else', async () => {
    const name = freshName();
    const { book, order, tag } = smallBook();
    const repository = inTab(name);
    await repository.claim();
    await repository.save(emptyBook, book);
    const after = edited(book, (draft) => {
      editOrder(draft, order, { name: 'Renamed' });
      removeTransfer(draft, tag);
    });
    await repository.save(book, after);
    expect(await inTab(name).read()).toEqual({ kind: 'read', book: after, setAside: [], fellBack: [] });
  });

  it('writes nothing before it is claimed', async () => {
    const name = freshName();
    const refused = { ok: false, problem: { code: 'overtaken' } };
    expect(await inTab(name).save(emptyBook, smallBook().book)).toEqual(refused);
    expect(await inTab(name).read()).toEqual({ kind: 'empty' });
  });

  it('sets aside what it cannot read and leaves it where it is (rule 11)', async () => {
    const name = freshName();
    const { book } = smallBook();
    const repository = inTab(name);
    await repository.claim();
    await repository.save(emptyBook, book);
    await writeBatch(openStore(name), [['order/broken', { id: 'broken' }]], []);
    const again = inTab(name);
    expect(await again.claim()).toMatchObject({ kind: 'read', book, setAside: [{ key: 'order/broken' }] });
    await again.save(
      book,
      edited(book, (draft) => removeTransfer(draft, Object.keys(book.transfer)[0] ?? '')),
    );
    expect(await inTab(name).read()).toMatchObject({ setAside: [{ key: 'order/broken' }] });
  });

  const originals = async (name: string) =>
    (await entriesWithPrefix(openStore(name), 'original/')).map(([, value]) => value);

  it('keeps an original that it could not read when something is written in its place', async () => {
    const name = freshName();
    const { book } = smallBook();
    const repository = inTab(name);
    await repository.claim();
    await repository.save(emptyBook, book);
    const damaged = { ...settingsOf(book), currency: '!!!' };
    await writeBatch(openStore(name), [['settings/shop', damaged]], []);
    const again = inTab(name);
    expect(await again.claim()).toEqual({ kind: 'read', book, setAside: [], fellBack: ['currency'] });
    expect(await originals(name)).toEqual([]);
    for (const paper of ['letter', 'a4'] as const) {
      const other = edited(book, (draft) => Object.assign(draft.settings.shop ?? {}, { paper }));
      await again.save(book, other);
    }
    expect(await originals(name)).toEqual([{ key: 'settings/shop', version: MODEL_VERSION, value: damaged }]);
    expect(await inTab(name).read()).toMatchObject({ fellBack: [], setAside: [] });
  });

  it('lets history go on without steps that it could not read, and keeps those', async () => {
    const name = freshName();
    const { book, order } = smallBook();
    const step = (of: Book, to: string) => session(of, edits.editOrder(order, { name: to }), freshIds()).book;
    const twice = step(step(book, 'A'), 'B');
    const repository = inTab(name);
    await repository.claim();
    await repository.save(emptyBook, twice);
    const [first, second] = Object.keys(twice.step);
    await writeBatch(openStore(name), [[`step/${first}`, 'damaged']], []);
    const again = inTab(name);
    const read = await again.claim();
    if (read.kind !== 'read') throw new Error(read.kind);
    expect(Object.keys(read.book.step)).toEqual([]);
    const after = step(read.book, 'C');
    await again.save(read.book, after);
    expect(await inTab(name).read()).toEqual({ kind: 'read', book: after, setAside: [], fellBack: [] });
    expect(await originals(name)).toHaveLength(2);
    expect(await originals(name)).toContainEqual({
      key: `step/${second}`,
      version: MODEL_VERSION,
      value: twice.step[second ?? ''],
    });
  });

  it('brings an older version up, on the disk too', async () => {
    const name = freshName();
    const film = {
      id: 'f',
      name: 'Roll',
      width: 330_000,
      margins: { side: 5000, lead: 10_000, tail: 10_000 },
      lengthLeft: 1_000_000,
      price: { amount: 840, per: 1_000_000 },
      gap: 5000,
      spanMax: null,
      changed: '2026-01-05T08:00:00.000Z',
    };
    await writeBatch(
      openStore(name),
      [
        ['film/f', film],
        ['meta/version', 1],
      ],
      [],
    );
    const stored = () => entriesWithPrefix(openStore(name), '');
    const before = await stored();
    const upright = { kind: 'read', book: { film: { f: { margins: { left: 5000, right: 5000 } } } } };
    // A tab that looks on shows it, and leaves it to the one that writes.
    expect(await inTab(name).read()).toMatchObject(upright);
    expect(await stored()).toEqual(before);
    for (let claimed = 0; claimed < 2; claimed += 1) {
      expect(await inTab(name).claim()).toMatchObject(upright);
      expect(await stored()).toContainEqual(['meta/version', MODEL_VERSION]);
    }
  });

  it('hands out what an older version stored before it brings that up, and changes nothing if it cannot be kept', async () => {
    const name = freshName();
    const order = {
      id: 'o',
      code: 'HB',
      name: 'Hill',
      due: null,
      tint: 0,
      nextNumber: 1,
      changed: '2026-01-05T08:00:00.000Z',
    };
    await writeBatch(
      openStore(name),
      [
        ['order/o', order],
        ['meta/version', 2],
      ],
      [],
    );
    const refused = inTab(name, async () => Promise.reject(new DOMException('full', 'QuotaExceededError')));
    expect(await refused.claim()).toEqual({ kind: 'failed', problem: { code: 'quota' } });
    const kept: unknown[] = [];
    const repository = inTab(name, async (records, version) => {
      kept.push([...records], version);
    });
    expect(await repository.claim()).toMatchObject({ kind: 'read', book: { order: { o: { contact: '' } } } });
    expect(kept).toEqual([[['order/o', order]], 2]);
    await repository.claim();
    expect(kept.length).toBe(2);
  });

  it('begins anew where another tab brings the book up, or writes a newer one, before its own transaction', async () => {
    const order = { id: 'o', code: 'HB', name: 'Hill', changed: '2026-01-05T08:00:00.000Z' };
    const { book } = smallBook();
    for (const [version, reading] of [
      [MODEL_VERSION, { kind: 'read', book, setAside: [] }],
      [MODEL_VERSION + 1, { kind: 'newer', version: MODEL_VERSION + 1 }],
    ] as const) {
      const name = freshName();
      await writeBatch(
        openStore(name),
        [
          ['order/o', order],
          ['meta/version', 2],
        ],
        [],
      );
      const meanwhile = [...recordsOf(book), ['meta/version', version] as const];
      const repository = inTab(name, async () => writeBatch(openStore(name), meanwhile, ['order/o']));
      expect(await repository.claim()).toMatchObject(reading);
      expect(new Map(await entriesWithPrefix(openStore(name), ''))).toEqual(
        new Map<string, unknown>(meanwhile),
      );
    }
  });

  it('neither reads nor writes what a newer version has stored (rule 11)', async () => {
    const name = freshName();
    await writeBatch(openStore(name), [['meta/version', MODEL_VERSION + 1]], []);
    const repository = inTab(name);
    expect(await repository.claim()).toEqual({ kind: 'newer', version: MODEL_VERSION + 1 });
    expect(await repository.save(emptyBook, smallBook().book)).toMatchObject({ ok: false });
    const { use } = openStore(name);
    const all = await use('readonly', (store) => promisifyRequest(store.getAllKeys()));
    expect(all).toEqual(['meta/version']);
  });

  it('opens again after the connection was given up', async () => {
    const name = freshName();
    const { book } = smallBook();
    const repository = inTab(name);
    await repository.claim();
    repository.close();
    expect(await repository.save(emptyBook, book)).toMatchObject({ ok: true });
  });
});

describe('a batch', () => {
  it('is on the disk as a whole, or not at all', async () => {
    const name = freshName();
    const store = openStore(name);
    await expect(
      writeBatch(
        store,
        [
          ['a', 1],
          ['b', () => 'cannot be stored'],
        ],
        [],
      ),
    ).rejects.toThrow();
    const repository = inTab(name);
    expect(await repository.claim()).toEqual({ kind: 'empty' });
  });
});

describe('a write', () => {
  it('is on the disk, and not on its way there, when it is said to be saved', async () => {
    const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const repository = inTab(freshName());
    await repository.claim();
    await repository.save(emptyBook, smallBook().book);
    const writes = begun.mock.calls.filter(([, mode]) => mode === 'readwrite');
    expect(writes.length).toBeGreaterThan(0);
    for (const [, , options] of writes) expect(options).toEqual({ durability: 'strict' });
    begun.mockRestore();
  });
});
