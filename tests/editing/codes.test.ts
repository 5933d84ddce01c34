import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addOrder, codeFlaw, editOrder, lockRun, setPlaces, takenCodes } from '../../src/editing';
import { type Book, type Copy, emptyBook, type Id } from '../../src/model';
import { fromMm, UPRIGHT } from '../../src/units';
import { edited, freshIds, smallBook } from './book';

const named = (names: readonly string[]): Book =>
  edited(emptyBook, (draft) => {
    const ids = freshIds();
    for (const name of names) addOrder(draft, { name, due: null }, ids);
  });
const codes = (book: Book) => Object.values(book.order).map(({ code }) => code);

/** Names as shops have them: numbers of a web shop, clubs, words, nothing. */
const anyName = fc.oneof(
  fc.integer({ min: 1, max: 3000 }).map((number) => `#${number}`),
  fc.tuple(fc.constantFrom('Order', 'Team', 'Club', 'Año'), fc.nat({ max: 300 })).map((all) => all.join(' ')),
  fc.constantFrom('Canal Chess Club', 'Crooked Candle', 'C', '12', '!!', '', 'Ünï', 'Ä1', '東京 3', 'straße'),
  fc.string({ maxLength: 12 }),
);

describe('codes', () => {
  it('end in a letter and never begin alike, whatever orders are called', () => {
    fc.assert(
      fc.property(fc.array(anyName, { maxLength: 120, size: 'max' }), (names) => {
        const all = codes(named(names));
        expect(all.filter((code) => !/^[\p{L}\p{N}]{1,4}$/u.test(code))).toEqual([]);
        const flaws = all.map((code, at) => codeFlaw(code, [...all.slice(0, at), ...all.slice(at + 1)]));
        expect(flaws.filter((flaw) => flaw !== null)).toEqual([]);
      }),
    );
  });

  it('keep the end of an order’s own number readable', () => {
    expect(codes(named(['#1041', '#1042', '#2041', 'Team 12', 'A-7 of 9']))).toEqual([
      '041A',
      '042A',
      '041B',
      '12T',
      '9A',
    ]);
  });

  it('are still found where a thousand orders are called the same', () => {
    expect(new Set(codes(named(Array.from({ length: 1000 }, () => 'Crest')))).size).toBe(1000);
  });

  it('follow a new name while nothing is in print, but not if they were typed', () => {
    const { book, order } = smallBook();
    const codeOf = (own: Book) => own.order[order]?.code;
    const rename = (own: Book, name = '#1041') => edited(own, (draft) => editOrder(draft, order, { name }));
    expect(codeOf(rename(book))).toBe('041A');
    expect(codeOf(rename(book, 'Hill Bakery'))).toBe('HB');
    expect(codeOf(rename(edited(book, (draft) => editOrder(draft, order, { code: 'ZED' }))))).toBe('ZED');
    const run = Object.keys(book.run)[0] as Id<'run'>;
    const [copy] = Object.values(book.copy) as [Copy];
    const place = { x: fromMm(5), y: fromMm(10), angle: UPRIGHT, pinned: false };
    const locked = edited(
      edited(book, (draft) => setPlaces(draft, run, [[copy.id, place]])),
      (draft) => lockRun(draft, run, freshIds()),
    );
    expect(codeOf(rename(locked))).toBe('HB');
  });

  it('that stand on locked film are taken by no other order until the run is closed, whatever their order has since', () => {
    const { book, order } = smallBook();
    const run = Object.keys(book.run)[0] as Id<'run'>;
    const [copy] = Object.values(book.copy) as [Copy];
    const place = { x: fromMm(5), y: fromMm(10), angle: UPRIGHT, pinned: false };
    const printed = edited(
      edited(
        edited(book, (draft) => setPlaces(draft, run, [[copy.id, place]])),
        (draft) => lockRun(draft, run, freshIds()),
      ),
      (draft) => editOrder(draft, order, { code: 'ZED', archived: true }),
    );
    const old = book.order[order]?.code ?? '';
    expect(takenCodes(printed).open).toContain(old);
    expect(takenCodes(printed, order).all).not.toContain(old);
    const name = book.order[order]?.name ?? '';
    const another = edited(printed, (draft) => addOrder(draft, { name, due: null }, freshIds()));
    const given = Object.values(another.order).at(-1)?.code ?? '';
    expect(codeFlaw(given, [old])).toBeNull();
    const closed = edited(printed, (draft) => {
      const own = draft.run[run];
      if (own && own.state !== 'draft') own.state = 'closed';
    });
    expect(takenCodes(closed).all).not.toContain(old);
  });

  it('and tints of archived orders are free for others, as far as they are not the same', () => {
    const book = named(Array.from({ length: 8 }, (_, at) => `Order ${at}`));
    const [, second] = Object.values(book.order);
    if (!second) throw new Error('no order');
    const after = edited(book, (draft) => {
      editOrder(draft, second.id, { archived: true });
      addOrder(draft, { name: 'New', due: null }, freshIds());
    });
    expect(Object.values(after.order).at(-1)?.tint).toBe(second.tint);
  });
});
