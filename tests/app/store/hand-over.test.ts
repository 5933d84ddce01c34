import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { handOverCodes, handOverFile, takeInBytes } from '../../../app/store/hand-over';
import { useShop } from '../../../app/store/shop';
import { tickJobs } from '../../../src/editing';
import type { Book } from '../../../src/model';
import { edited, smallBook } from '../../editing/book';
import { locked, run, uuids } from '../../hand-over/shop';

vi.mock('../../../app/store/artwork', () => ({
  loadThumbnail: async () => null,
  keepThumbnail: async () => undefined,
}));

/** A shop that has none of what is handed over. */
const other: Book = { ...smallBook().book, order: {}, transfer: {}, copy: {}, run: {} };
const initial = useShop.getState();

const open = (book: Book, follows = false): void =>
  useShop.setState({ ...initial, phase: { kind: 'open' }, book, follows });

/** The bytes that a device with a book hands over. */
async function handedOver(book: Book, kind: 'run' | 'ticks'): Promise<Uint8Array> {
  open(book);
  const file = await handOverFile(run, kind);
  if (!file) throw new Error('nothing to hand over');
  return new Uint8Array(await file.arrayBuffer());
}

beforeEach(() => open(locked));
afterAll(() => useShop.setState(initial));

describe('a run handed over', () => {
  it('is taken in by another device, by its name', async () => {
    const bytes = await handedOver(locked, 'run');
    open(other);
    const taken = await takeInBytes(bytes);
    expect(taken).toMatchObject({ ok: true, value: { kind: 'run', run, name: locked.run[run]?.name } });
    expect(useShop.getState().book.run[run]).toMatchObject({ state: 'locked', received: {} });
  });

  it('gets its ticks back', async () => {
    const ticked = edited(locked, (draft) =>
      tickJobs(draft, run, ['print/0'], { done: true, by: '' }, uuids(50)),
    );
    const bytes = await handedOver(ticked, 'ticks');
    open(locked);
    expect(await takeInBytes(bytes)).toMatchObject({ ok: true, value: { kind: 'ticks', ticks: 1 } });
    expect(Object.values(useShop.getState().book.tick)).toMatchObject([{ run, subject: 'print/0' }]);
  });

  it('is not taken in where another tab writes, nor damaged, and leaves the book as it was', async () => {
    const bytes = await handedOver(locked, 'run');
    open(other, true);
    expect(await takeInBytes(bytes)).toEqual({ ok: false, problem: 'not-writing' });
    open(other);
    const middle = bytes.length >> 1;
    const damaged = bytes.with(middle, (bytes[middle] ?? 0) ^ 1);
    expect(await takeInBytes(damaged)).toMatchObject({ ok: false });
    expect(useShop.getState().book).toBe(other);
  });

  it('has codes and a file; a run that is not there has neither', async () => {
    expect((await handOverCodes(run, 'run'))?.codes.length).toBeGreaterThan(0);
    expect(await handOverCodes('none', 'run')).toBeNull();
    expect(await handOverFile('none', 'run')).toBeNull();
  });
});
