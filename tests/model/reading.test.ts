import { describe, expect, it } from 'vitest';
import { edits, session } from '../../src/editing';
import { bookOf, openBook, readRecord, type Settings, settingsOf } from '../../src/model';
import { freshIds, smallBook } from '../editing/book';
import { playedBook } from '../editing/played-book';
import { stored } from './stored';

const { book: small, order, front } = smallBook();
const lockedBook = () => {
  const [run] = Object.values(small.run);
  const [copy] = Object.values(small.copy);
  if (!run || !copy) throw new Error('the small book lacks a run');
  const place = { x: 5_000, y: 10_000, angle: 0, pinned: false };
  const laid = session(small, edits.setPlaces(run.id, [[copy.id, place as never]]), freshIds()).book;
  return { book: session(laid, edits.lockRun(run.id, null), freshIds()).book, run, copy };
};
const settings = (): Settings => {
  const own = settingsOf(small);
  if (!own) throw new Error('the small book has settings');
  return own;
};

/** A value with another at a place in it. */
function changed(value: unknown, [name, ...path]: readonly string[], to: unknown): unknown {
  if (name === undefined) return to;
  const fields: Readonly<Record<string, unknown>> = Object(value);
  return { ...fields, [name]: changed(fields[name], path, to) };
}

describe('a record', () => {
  const film = Object.values(small.film)[0];
  const copy = Object.values(small.copy)[0];
  const placed = { ...copy, state: 'placed', run: 'r' };
  const place = { x: 0, y: 0, angle: 0, pinned: false };
  it.each([
    ['a day that the calendar has not', 'order', small.order[order], 'due', '2026-99-99'],
    ['a 30th of February', 'order', small.order[order], 'due', '2026-02-30'],
    ['a number that is not whole', 'order', small.order[order], 'nextNumber', 0.5],
    ['an instant of another form', 'order', small.order[order], 'changed', '5'],
    ['an id that every object knows', 'transfer', small.transfer[front], 'order', 'constructor'],
    ['a currency of no letters', 'settings', settings(), 'currency', '!!!'],
    ['a unit that nobody knows', 'settings', settings(), 'unit', 'furlong'],
    ['a language that the app does not speak', 'settings', settings(), 'language', 'tlh'],
    ['half a tray', 'settings', settings(), 'station.trays', 0.5],
    ['negative watts', 'settings', settings(), 'costs.watts.press', -5],
    ['film wider than any printer', 'film', film, 'width', 9e15],
    ['more film than there is', 'film', film, 'lengthLeft', 9e15],
    ['a transfer without an end', 'transfer', small.transfer[front], 'width', 9e15],
    ['a place beside any film', 'copy', { ...placed, place }, 'place.x', 9e15],
    ['a place beyond any film', 'copy', { ...placed, place }, 'place.y', 9e15],
    ['a whole turn', 'copy', { ...placed, place }, 'place.angle', 3600],
    ['a part of a tenth of a degree', 'copy', { ...placed, place }, 'place.angle', 0.5],
    ['a number beyond what is counted', 'copy', copy, 'number', 9e15],
    ['a name of a book’s length', 'order', small.order[order], 'name', 'x'.repeat(3_000_000)],
  ] as const)('with %s is not read', (_, collection, record, path, value) => {
    expect(readRecord(collection, record)).not.toBeNull();
    expect(readRecord(collection, changed(record, path.split('.'), value))).toBeNull();
  });
});

describe('stored records', () => {
  it('are all of the book, whatever edits led to it', () => {
    for (const seed of [1, 2, 3]) {
      const book = playedBook(150, seed);
      expect(bookOf(stored(book))).toEqual({ book, setAside: [] });
    }
  });

  const damage = (...changes: readonly (readonly [string, unknown])[]) => {
    const records = stored(small);
    for (const [key, value] of changes) {
      if (value === undefined) records.delete(key);
      else records.set(key, value);
    }
    return bookOf(records);
  };

  it('that hang on a damaged one are set aside with it, however far off, and no others', () => {
    const { book, setAside } = damage([`order/${order}`, { ...small.order[order], due: '2026-99-99' }]);
    expect(book).toEqual({ ...small, order: {}, transfer: {}, copy: {} });
    expect(setAside).toContainEqual({
      key: `order/${order}`,
      collection: 'order',
      name: 'Hill Bakers',
      lacks: null,
    });
    expect(setAside).toContainEqual(
      expect.objectContaining({ key: `transfer/${front}`, lacks: `order/${order}` }),
    );
    expect(setAside).toHaveLength(1 + 2 + 5);
  });

  it('of a transfer that is not there are set aside', () => {
    const { book } = damage([`transfer/${front}`, undefined]);
    expect(Object.values(book.copy).map(({ transfer }) => transfer)).not.toContain(front);
    expect(Object.keys(book.copy)).toHaveLength(2);
  });

  it('under another key than their id are set aside', () => {
    const { book, setAside } = damage(['transfer/other', small.transfer[front]]);
    expect(book).toEqual(small);
    expect(setAside.map(({ key }) => key)).toEqual(['transfer/other']);
  });

  it('that undo one another in a circle are set aside', () => {
    const entry = Object.values(small.entry)[0];
    const own = entry ?? {
      item: 'x',
      name: '',
      unit: 'mass',
      kind: 'counter',
      amount: 1,
      run: null,
      order: null,
      note: '',
      at: '2026-11-25T12:00:00.000Z',
      changed: '2026-11-25T12:00:00.000Z',
    };
    const { book } = damage(
      ['entry/a', { ...own, id: 'a', counters: 'b' }],
      ['entry/b', { ...own, id: 'b', counters: 'a' }],
    );
    expect(book).toEqual(small);
  });

  it('of a locked run without what it embeds are set aside, and copies on it', () => {
    const { book, run, copy } = lockedBook();
    const { book: read } = bookOf(stored(book).set(`run/${run.id}`, { ...book.run[run.id], snapshot: null }));
    expect(read.run).toEqual({});
    expect(Object.keys(read.copy)).toHaveLength(4);
    expect(read.copy[copy.id]).toBeUndefined();
    expect(read.order).toEqual(book.order);
  });

  it('of history hold together: none is left that would lead to a book that never was', () => {
    const renamed = session(small, edits.editOrder(order, { name: 'A' }), freshIds()).book;
    const twice = session(renamed, edits.editOrder(order, { name: 'B' }), freshIds()).book;
    const [first, second] = Object.keys(twice.step);
    const { book, setAside } = bookOf(stored(twice).set(`step/${first}`, { id: first }));
    expect(book).toEqual({ ...twice, step: {} });
    expect(setAside.map(({ key }) => key)).toEqual([`step/${first}`, `step/${second}`]);
    const gone = bookOf(stored(twice).set(`order/${order}`, null));
    expect(gone.book.step).toEqual({});
  });
});

describe('settings', () => {
  const open = (value: unknown) => openBook(new Map([['settings/shop', value]]), settings());

  it('that are damaged are those of a new shop field by field, and all others stay', () => {
    const own = { ...settings(), unit: 'in', paper: 'letter' };
    const read = open(
      changed(changed({ ...own, currency: '!!!' }, ['station', 'trays'], 0.5), ['station', 'wetLimit'], 77),
    );
    expect(read.fellBack).toEqual(['currency', 'station']);
    expect(read.setAside).toEqual([]);
    expect(settingsOf(read.book)).toEqual({
      ...own,
      station: { ...settings().station, wetLimit: 77 },
    });
  });

  it('lose a machine that cannot be read, and have that of a new shop where none is left', () => {
    const { station } = settings();
    const [printer] = station.printers;
    const other = { ...printer, id: 'other', name: 'By the window' };
    const kept = open({
      ...settings(),
      station: { ...station, printers: [{ ...printer, feed: 'x' }, other] },
    });
    expect(settingsOf(kept.book)?.station.printers).toEqual([other]);
    const none = open({ ...settings(), station: { ...station, printers: [], people: [], wetLimit: 77 } });
    expect(settingsOf(none.book)?.station).toEqual({ ...station, wetLimit: 77 });
  });

  it('lose of a list the entries that cannot be read, and no others', () => {
    const { pricing } = settings();
    const breaks = [
      { from: 24, off: 0.05 },
      { from: 0.5, off: 0.1 },
    ];
    const read = open({ ...settings(), pricing: { ...pricing, breaks } });
    expect(settingsOf(read.book)?.pricing.breaks).toEqual([{ from: 24, off: 0.05 }]);
    expect(read.fellBack).toEqual(['pricing']);
  });

  it.each([undefined, null, 5, 'x', [], {}])('that are %j are those of a new shop', (value) => {
    const read = open(value);
    expect(settingsOf(read.book)).toEqual(settings());
    expect(read.fellBack).toHaveLength(Object.keys(settings()).length);
  });
});
