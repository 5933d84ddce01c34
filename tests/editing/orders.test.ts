import { describe, expect, it } from 'vitest';
import { addOrder, removeOrder } from '../../src/editing';
import { emptyBook } from '../../src/model';
import { context, edited, smallBook } from './book';

describe('orders', () => {
  it('get a code from the initials of their name, and another where that is taken', () => {
    const ids = context();
    const book = edited(emptyBook, (draft) => {
      for (const name of ['Canal Chess Club', 'Crooked Candle', 'café été', 'Pottery', '', '!!']) {
        addOrder(draft, { name, due: null }, ids);
      }
    });
    expect(Object.values(book.order).map(({ code }) => code)).toEqual(['CC', 'CC2', 'CE', 'PO', 'XX', 'XX2']);
  });

  it('get different tints as long as there are any', () => {
    const ids = context();
    const book = edited(emptyBook, (draft) => {
      for (let number = 0; number < 8; number += 1) addOrder(draft, { name: `N${number}`, due: null }, ids);
    });
    expect(new Set(Object.values(book.order).map(({ tint }) => tint)).size).toBe(8);
  });

  it('take their transfers and copies along when they go', () => {
    const { book, order } = smallBook();
    const after = edited(book, (draft) => removeOrder(draft, order));
    expect([after.order, after.transfer, after.copy]).toEqual([{}, {}, {}]);
  });
});
