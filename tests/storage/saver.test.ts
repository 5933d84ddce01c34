import { describe, expect, it } from 'vitest';
import { type Book, emptyBook } from '../../src/model';
import { createSaver, type SaveState } from '../../src/storage/saver';
import { fail, ok } from '../../src/units';
import { edited, smallBook } from '../editing/book';

/** A repository whose writes end when told to. */
function slowRepository() {
  const written: [Book, Book][] = [];
  let finish: (works: boolean) => void = () => undefined;
  return {
    written,
    finish: (works = true) => finish(works),
    save: (before: Book, after: Book) => {
      written.push([before, after]);
      return new Promise<ReturnType<typeof ok<void>> | ReturnType<typeof fail<{ code: 'quota' }>>>(
        (resolve) => {
          finish = (works) => resolve(works ? ok(undefined) : fail({ code: 'quota' as const }));
        },
      );
    },
  };
}

const turn = () => new Promise((resolve) => setTimeout(resolve));
const books = [1, 2, 3].map((count) =>
  edited(smallBook().book, (draft) => {
    const [order] = Object.values(draft.order);
    if (order) order.name = `change ${count}`;
  }),
) as [Book, Book, Book];

describe('the saver', () => {
  it('writes at once, one at a time, and the newest next', async () => {
    const repository = slowRepository();
    const states: SaveState['kind'][] = [];
    const saver = createSaver(repository, emptyBook, {
      onState: ({ kind }) => states.push(kind),
      now: () => 7,
    });
    for (const book of books) saver.put(book);
    expect(repository.written).toHaveLength(1);
    repository.finish();
    await turn();
    repository.finish();
    await saver.flush();
    expect(repository.written.at(-1)?.[1]).toBe(books[2]);
    expect(repository.written).toHaveLength(2);
    expect(states.at(-1)).toBe('saved');
  });

  it('keeps what could not be written, says so, and writes it when tried again', async () => {
    const repository = slowRepository();
    const states: SaveState[] = [];
    const saver = createSaver(repository, emptyBook, {
      onState: (state) => states.push(state),
      now: () => 7,
    });
    saver.put(books[0]);
    repository.finish(false);
    await saver.flush();
    expect(states.at(-1)).toEqual({ kind: 'failed', problem: { code: 'quota' } });
    saver.retry();
    repository.finish();
    await saver.flush();
    expect(repository.written).toEqual([
      [emptyBook, books[0]],
      [emptyBook, books[0]],
    ]);
    expect(states.at(-1)).toEqual({ kind: 'saved', at: 7 });
  });
});
