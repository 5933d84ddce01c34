import { describe, expect, it } from 'vitest';
import { orderLines } from '../../app/orders/order-lines';
import { addOrder, editOrder } from '../../src/editing';
import { asId, type Id } from '../../src/model';
import type { LocalDate } from '../../src/units';
import { edited, freshIds, smallBook } from '../editing/book';

const { book: small, order: hill } = smallBook();
let old = asId<'order'>('none');
let last = asId<'order'>('none');
const book = edited(small, (draft) => {
  old = addOrder(draft, { name: 'Hill Fair', due: null }, freshIds());
  editOrder(draft, old, { archived: true });
  editOrder(draft, hill, { due: '2026-12-01' as LocalDate });
  last = addOrder(draft, { name: 'New order', due: null }, freshIds());
});

const heads = (asked: Partial<Parameters<typeof orderLines>[1]>, of = book): Id<'order'>[] =>
  orderLines(of, { search: '', sorting: 'due', archived: false, first: null, ...asked }).flatMap((line) =>
    line.kind === 'head' ? [line.order.id] : [],
  );

describe('the list of orders', () => {
  it('leaves the archive out, unless something is searched for', () => {
    expect(heads({})).toEqual([hill, last]);
    expect(heads({ search: 'hill' })).toEqual([hill, old]);
    expect(heads({ search: 'fair' })).toEqual([old]);
    expect(heads({ search: 'hill', sorting: 'name' })).toEqual([hill, old]);
    expect(heads({ archived: true })).toEqual([old]);
  });

  it('begins with the order that was just added', () => {
    expect(heads({ first: last })).toEqual([last, hill]);
    expect(heads({ first: last, sorting: 'name' })).toEqual([last, hill]);
    expect(heads({ first: asId('gone') })).toEqual([hill, last]);
  });
});
