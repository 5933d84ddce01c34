import fc from 'fast-check';
import { v7 } from 'uuid';
import { describe, expect, it } from 'vitest';
import { addGarment, addOrder, addTransfer, type EditContext } from '../../src/editing';
import {
  asEntered,
  asId,
  type Book,
  bySize,
  garmentsByOrder,
  type Id,
  transfersByOrder,
} from '../../src/model';
import { fromMm } from '../../src/units';
import { edited, NOW, smallBook } from '../editing/book';

const ids: EditContext = { now: NOW, newId: () => asId(v7()) };
const size = {
  width: fromMm(50),
  height: fromMm(30),
  typed: { width: '50 mm', height: '30 mm' },
  turn: 'quarter',
} as const;

/** A book as it comes back from storage: each collection in the order of its keys. */
const reloaded = (book: Book): Book => {
  const inKeyOrder = <Records extends object>(records: Records) =>
    Object.fromEntries(Object.entries(records).sort(([a], [b]) => (a < b ? -1 : 1)));
  return { ...book, transfer: inKeyOrder(book.transfer), garment: inKeyOrder(book.garment) };
};

describe('rows', () => {
  it('keep the order that they were entered in when the book is read again, however fast they came', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ minLength: 1 }), { minLength: 1, maxLength: 40 }), (names) => {
        let order = '' as Id<'order'>;
        const book = edited(smallBook().book, (draft) => {
          order = addOrder(draft, { name: 'Fair', due: null }, ids);
          for (const name of names) addTransfer(draft, order, { name, ...size }, 1, ids);
        });
        const told = transfersByOrder(reloaded(book))
          .get(order)
          ?.map(({ name }) => name);
        expect(told).toEqual(names);
      }),
      { numRuns: 50 },
    );
  });

  it('of before ids told of time stay as they are, in front of those that came since', () => {
    const old = ['f0000000-0000-4000-8000-000000000000', '10000000-0000-4000-8000-000000000000'];
    const [first, second] = [v7(), v7()];
    const listed = asEntered([{ id: second }, { id: old[0] ?? '' }, { id: first }, { id: old[1] ?? '' }]);
    expect(listed.map(({ id }) => id)).toEqual([...old, first, second]);
  });

  it('of garments run from the smallest size to the largest, style by style', () => {
    let order = '' as Id<'order'>;
    const book = edited(smallBook().book, (draft) => {
      order = addOrder(draft, { name: 'Fair', due: null }, ids);
      for (const [style, of] of [
        ['Tee', 'L'],
        ['Hoodie', 'M'],
        ['Tee', 'XS'],
        ['Tee', '2XL'],
        ['Hoodie', 'S'],
        ['Tee', 'M'],
      ] as const)
        addGarment(draft, order, { style, colour: 'Black', shade: null, size: of, count: 1 }, ids);
    });
    const lines = garmentsByOrder(reloaded(book))
      .get(order)
      ?.map((line) => `${line.style} ${line.size}`);
    expect(lines).toEqual(['Tee XS', 'Tee M', 'Tee L', 'Tee 2XL', 'Hoodie S', 'Hoodie M']);
  });
});

describe('garment sizes', () => {
  const of = (size: string) => ({ style: '', size });
  // Letter sizes of the trade, from memory; no standard orders them across groups.
  const all = [
    ...['NB', '6M', '12M', '2T', '4T', '92', '104'],
    ...['5-6', '8', '10-12', '110', '164', 'YXS', 'YS', 'Youth M', 'YL', 'YXL'],
    ...['38', 'XXS', 'XS', 's', 'M', 'L', 'XL', 'XXL', '3XL', '4XL', '5XL'],
    'one size',
  ];

  it('run from the smallest to the largest, children first, what is no size last', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(all, { minLength: all.length }), (shuffled) => {
        expect(shuffled.toSorted((a, b) => bySize(of(a), of(b)))).toEqual(all);
      }),
    );
  });

  it('say the same in both ways of writing', () => {
    expect([
      bySize(of('2XL'), of('XXL')),
      bySize(of('2XS'), of('XXS')),
      bySize(of('Youth L'), of('YL')),
    ]).toEqual([0, 0, 0]);
  });
});
