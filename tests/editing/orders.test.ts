import { describe, expect, it } from 'vitest';
import {
  addOrder,
  addTransfer,
  duplicateOrder,
  editOrder,
  editTransfer,
  removeOrder,
  setCount,
  setPlaces,
} from '../../src/editing';
import { type Book, emptyBook, type Id } from '../../src/model';
import { fromMm, type LocalDate, UPRIGHT } from '../../src/units';
import { context, edited, freshIds, smallBook } from './book';

describe('orders', () => {
  it('get a code from the initials of their name, and from its other letters where that is taken', () => {
    const ids = context();
    const book = edited(emptyBook, (draft) => {
      for (const name of ['Canal Chess Club', 'Crooked Candle', 'café été', 'Pottery', '', '!!']) {
        addOrder(draft, { name, due: null }, ids);
      }
    });
    expect(Object.values(book.order).map(({ code }) => code)).toEqual(['CC', 'CR', 'CE', 'PO', 'XX', 'X2X']);
  });

  it('get different tints, however many there are', () => {
    const ids = context();
    const book = edited(emptyBook, (draft) => {
      for (let number = 0; number < 40; number += 1) addOrder(draft, { name: `N${number}`, due: null }, ids);
    });
    expect(new Set(Object.values(book.order).map(({ tint }) => tint)).size).toBe(40);
  });

  it('take their transfers and copies along when they go', () => {
    const { book, order } = smallBook();
    const after = edited(book, (draft) => removeOrder(draft, order));
    expect([after.order, after.transfer, after.copy]).toEqual([{}, {}, {}]);
  });
});

describe('an order like another', () => {
  const said = {
    contact: 'a friend',
    notes: 'fold twice',
    handover: 'ship',
    wants: 'transfers',
    supplied: true,
  } as const;
  const shade = '#204060';
  /** An order with everything said of it, a copy on film, one over and one filler, beside another order; and with its duplicate. */
  function duplicated() {
    const small = smallBook();
    const book = edited(small.book, (draft) => {
      const due = '2026-12-01' as LocalDate;
      editOrder(draft, small.order, {
        ...said,
        due,
        rush: true,
        progress: 'packed',
        pricing: { aim: null, newDesigns: 2, discount: 0.1 },
      });
      editTransfer(draft, small.front, { turn: 'fixed', shade });
      setCount(draft, small.front, 1, freshIds(), 'over');
      setCount(draft, small.tag, 1, freshIds(), 'filler');
      const [copy] = Object.values(draft.copy);
      const [run] = Object.values(draft.run);
      const place = { x: fromMm(5), y: fromMm(10), angle: UPRIGHT, pinned: false };
      if (copy && run) setPlaces(draft, run.id, [[copy.id, place]]);
      const own = draft.transfer[small.front];
      if (own) own.artwork = 'image' as Id<'artwork'>;
      const other = addOrder(draft, { name: 'Mill', due: null }, freshIds());
      const size = { width: fromMm(20), height: fromMm(20), typed: { width: '20 mm', height: '20 mm' } };
      addTransfer(draft, other, { name: 'mill', ...size, turn: 'fixed' }, 4, freshIds());
    });
    const after = edited(book, (draft) => duplicateOrder(draft, small.order, 'Again', freshIds()));
    return { small, book, after, again: Object.values(after.order).find(({ name }) => name === 'Again') };
  }

  /** The transfers of an order by all that is the same in its duplicate, and their copies by role. */
  const transfersOf = (of: Book, order: string | undefined) =>
    Object.values(of.transfer)
      .filter((transfer) => transfer.order === order)
      .map(({ id, name, width, height, typed, turn, artwork, shade: on }) => ({
        ...{ name, width, height, typed, turn, artwork, shade: on },
        roles: Object.values(of.copy)
          .filter((copy) => copy.transfer === id)
          .map(({ role }) => role),
      }));

  it('has its transfers, their images and as many copies of each kind, none of them on film', () => {
    const { small, book, after, again } = duplicated();
    const added = transfersOf(after, again?.id);
    expect(added).toEqual(transfersOf(book, small.order));
    expect(added).toMatchObject([
      { artwork: 'image', shade, turn: 'fixed', roles: ['ordered', 'ordered', 'ordered', 'over'] },
      { roles: ['ordered', 'ordered', 'filler'] },
    ]);
    const copies = Object.values(after.copy).filter(({ id }) => !book.copy[id]);
    expect(copies.map(({ state, place }) => [state, place])).toEqual(copies.map(() => ['waiting', null]));
  });

  it('has what was said of it, but not when it was due, how far it was and which designs were new', () => {
    const { small, book, again } = duplicated();
    expect(again).toMatchObject({
      ...said,
      due: null,
      rush: false,
      progress: 'open',
      pricing: { aim: null, newDesigns: null, discount: 0.1 },
    });
    expect(again?.code).not.toBe(book.order[small.order]?.code);
  });

  it('leaves the first and all others as they are, and is none of one that is gone', () => {
    const { book, after } = duplicated();
    for (const name of ['order', 'transfer', 'copy'] as const)
      expect(Object.entries(after[name]).filter(([id]) => book[name][id])).toEqual(
        Object.entries(book[name]),
      );
    expect(edited(book, (draft) => duplicateOrder(draft, 'gone', 'Again', freshIds()))).toEqual(book);
  });
});
