import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { editOrder, removeTransfer } from '../../src/editing';
import { emptyBook, MODEL_VERSION } from '../../src/model';
import { openRepository } from '../../src/storage';
import { openStore, writeBatch } from '../../src/storage/database';
import { edited, smallBook } from '../editing/book';

let last = 0;
const freshName = () => {
  last += 1;
  return `test-${last}`;
};

describe('the repository', () => {
  it('gives back what was saved', async () => {
    const name = freshName();
    const { book } = smallBook();
    const first = openRepository(name);
    expect(await first.load()).toEqual({ kind: 'empty' });
    expect(await first.save(emptyBook, book)).toEqual({ ok: true, value: undefined });
    first.close();
    expect(await openRepository(name).load()).toEqual({ kind: 'read', book, setAside: [] });
  });

  it('writes changes and removals, and nothing else', async () => {
    const name = freshName();
    const { book, order, tag } = smallBook();
    const repository = openRepository(name);
    await repository.load();
    await repository.save(emptyBook, book);
    const after = edited(book, (draft) => {
      editOrder(draft, order, { name: 'Renamed' });
      removeTransfer(draft, tag);
    });
    await repository.save(book, after);
    expect(await openRepository(name).load()).toEqual({ kind: 'read', book: after, setAside: [] });
  });

  it('writes nothing before what is stored has been read', async () => {
    await expect(openRepository(freshName()).save(emptyBook, smallBook().book)).rejects.toThrow();
  });

  it('sets aside what it cannot read and leaves it where it is (rule 11)', async () => {
    const name = freshName();
    const { book } = smallBook();
    const repository = openRepository(name);
    await repository.load();
    await repository.save(emptyBook, book);
    await writeBatch(openStore(name), [['order/broken', { id: 'broken' }]], []);
    const again = openRepository(name);
    expect(await again.load()).toEqual({ kind: 'read', book, setAside: ['order/broken'] });
    await again.save(
      book,
      edited(book, (draft) => removeTransfer(draft, Object.keys(book.transfer)[0] ?? '')),
    );
    expect(await openRepository(name).load()).toMatchObject({ setAside: ['order/broken'] });
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
    for (let opened = 0; opened < 2; opened += 1) {
      const reading = await openRepository(name).load();
      expect(reading).toMatchObject({
        kind: 'read',
        book: { film: { f: { margins: { left: 5000, right: 5000 } } } },
      });
    }
  });

  it('neither reads nor writes what a newer version has stored (rule 11)', async () => {
    const name = freshName();
    await writeBatch(openStore(name), [['meta/version', MODEL_VERSION + 1]], []);
    const repository = openRepository(name);
    expect(await repository.load()).toEqual({ kind: 'newer', version: MODEL_VERSION + 1 });
    await expect(repository.save(emptyBook, smallBook().book)).rejects.toThrow();
  });

  it('opens again after the connection was given up', async () => {
    const name = freshName();
    const { book } = smallBook();
    const repository = openRepository(name);
    await repository.load();
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
    const repository = openRepository(name);
    expect(await repository.load()).toEqual({ kind: 'empty' });
  });
});
