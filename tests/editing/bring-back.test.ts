import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edits, redo, removeOrder, session, undo } from '../../src/editing';
import {
  artworkInUse,
  type Book,
  collectionNames,
  copiesByTransfer,
  openBook,
  recordsOf,
  transfersByOrder,
} from '../../src/model';
import { context, edited, freshIds, smallBook } from './book';
import { playedBook } from './played-book';

/** What an order is, whatever ids it has. */
function told(book: Book, id: string) {
  const { code, name, contact, due } = book.order[id] ?? expect.fail('no such order');
  const byTransfer = copiesByTransfer(book);
  const transfers = (transfersByOrder(book).get(id) ?? []).map((transfer) => ({
    name: transfer.name,
    size: [transfer.width, transfer.height],
    artwork: transfer.artwork,
    copies: (byTransfer.get(transfer.id) ?? []).map(({ number, role }) => `${number} ${role}`).sort(),
  }));
  const of = (collection: 'garment' | 'placement' | 'quote') =>
    Object.values(book[collection]).filter(({ order }) => order === id).length;
  return {
    order: { code, name, contact, due },
    transfers: transfers.sort((a, b) => JSON.stringify(a).localeCompare(JSON.stringify(b))),
    counts: [of('garment'), of('placement'), of('quote')],
  };
}

const withoutSteps = ({ step, ...rest }: Book) => rest;

describe('orders that are brought back', () => {
  it('come back as they were after they were removed, and go again by one undo', () => {
    const { book, order } = smallBook();
    const removed = edited(book, (draft) => removeOrder(draft, order));
    expect(removed.order).toEqual({});
    const { book: back, result } = session(removed, edits.bringOrders(book, [order]), context());
    expect(result).toEqual({ orders: 1, copies: 5 });
    expect(told(back, order)).toEqual(told(book, order));
    expect(withoutSteps(undo(back, context()).book)).toEqual(withoutSteps(removed));
  });

  it('come beside one that is still there, under ids and a code of their own', () => {
    const { book, order } = smallBook();
    const { book: back } = session(book, edits.bringOrders(book, [order, order]), freshIds());
    const [other, ...more] = Object.keys(back.order).filter((id) => id !== order);
    expect(more).toEqual([]);
    expect(back.order[order]).toBe(book.order[order]);
    const [was, is] = [told(book, order), told(back, other ?? '')];
    expect({ ...is.order, code: was.order.code }).toEqual(was.order);
    expect([is.transfers, is.counts]).toEqual([was.transfers, was.counts]);
    expect(is.order.code.startsWith(was.order.code)).toBe(false);
  });

  it('come whole from any book into any other, touch no other record, and can be undone and done again', () => {
    const books = [1, 2, 3, 4, 5, 6].map((seed) => playedBook(40 + 10 * seed, seed));
    const anyOf = fc.constantFrom(...books);
    fc.assert(
      fc.property(anyOf, anyOf, fc.infiniteStream(fc.boolean()), (present, from, takes) => {
        const wanted = Object.keys(from.order).filter(() => takes.next().value);
        const { book, result, changed } = session(present, edits.bringOrders(from, wanted), freshIds());
        expect([changed, result?.orders]).toEqual([wanted.length > 0, wanted.length]);
        // What was there is the very record that it was.
        for (const name of collectionNames) {
          if (name === 'step') continue;
          for (const [id, record] of Object.entries(present[name])) expect(book[name][id]).toBe(record);
        }
        const came = Object.keys(book.order).filter((id) => !(id in present.order));
        const nameless = (of: Book, id: string) => ({
          ...told(of, id),
          order: { ...told(of, id).order, code: '' },
        });
        const sorted = (all: object[]) => all.map((each) => JSON.stringify(each)).sort();
        expect(sorted(came.map((id) => nameless(book, id)))).toEqual(
          sorted(wanted.map((id) => nameless(from, id))),
        );
        for (const id of artworkInUse(book)) if (id in from.artwork) expect(book.artwork).toHaveProperty(id);
        for (const copy of Object.values(book.copy))
          if (!(copy.id in present.copy))
            expect(copy).toMatchObject({ state: 'waiting', run: null, place: null });
        expect(openBook(recordsOf(book), null).setAside).toEqual([]);
        const back = undo(book, freshIds()).book;
        if (changed) {
          expect(withoutSteps(back)).toEqual(withoutSteps(present));
          expect(Object.keys(redo(back, freshIds()).book.order)).toHaveLength(Object.keys(book.order).length);
        }
      }),
      { numRuns: 60 },
    );
  });
});
