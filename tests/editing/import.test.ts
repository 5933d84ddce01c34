import { describe, expect, it } from 'vitest';
import { edits, session } from '../../src/editing';
import { addRows, type RowToAdd } from '../../src/editing/import';
import { editOrder } from '../../src/editing/orders';
import { emptyBook } from '../../src/model';
import { countBy, fromMm, type LocalDate } from '../../src/units';
import { context, edited, freshIds, smallBook } from './book';

const [first, second] = ['2026-12-01' as LocalDate, '2026-12-02' as LocalDate];

const row = (order: string, due: LocalDate | null, other: Partial<RowToAdd> = {}): RowToAdd => ({
  line: 2,
  order,
  number: '',
  repeats: null,
  contact: '',
  notes: '',
  doubts: [],
  transfer: 'crest',
  width: fromMm(80),
  height: fromMm(60),
  typed: { width: '80 mm', height: '60 mm' },
  count: 2,
  due,
  replaces: null,
  turn: 'fixed',
  fabric: null,
  ...other,
});
/** The orders that rows make of a book, by name, with when they are due. */
const ordersAfter = (rows: readonly RowToAdd[], book = emptyBook) =>
  Object.values(edited(book, (draft) => addRows(draft, rows, freshIds())).order).map(({ name, due }) => ({
    name,
    due,
  }));

describe('rows of a table', () => {
  it('join the order of their name, whatever its case and the blanks around it, or make one', () => {
    const { book, order } = smallBook();
    const rows = [row(' HILL bakers ', null), row(' Mill ', null), row('mill', null)];
    expect(ordersAfter(rows, book).map(({ name }) => name)).toEqual(['Hill Bakers', 'Mill']);
    const after = edited(book, (draft) => addRows(draft, rows, freshIds()));
    expect(Object.values(after.transfer).filter((transfer) => transfer.order === order)).toHaveLength(3);
  });

  it.each([
    { rows: [null], due: null },
    { rows: [first], due: first },
    { rows: [null, second], due: second },
    { rows: [second, null], due: second },
    { rows: [second, first], due: first },
    { rows: [first, second], due: first },
  ])('make an order due with the soonest of them: $rows', ({ rows, due }) => {
    expect(
      ordersAfter(
        rows.map((each) => row('Mill', each)),
        emptyBook,
      ),
    ).toEqual([{ name: 'Mill', due }]);
  });

  it.each([
    { had: null, due: second },
    { had: first, due: first },
    { had: '2026-12-24' as LocalDate, due: second },
  ])('let an order that was due on $had be due with them if they are sooner', ({ had, due }) => {
    const { book, order } = smallBook();
    const before = edited(book, (draft) => {
      const own = draft.order[order];
      if (own) own.due = had;
    });
    expect(ordersAfter([row('Hill Bakers', second)], before)).toEqual([{ name: 'Hill Bakers', due }]);
  });

  it('become transfers as they are, with as many copies', () => {
    const after = edited(emptyBook, (draft) => addRows(draft, [row('Mill', null)], context()));
    const { transfer: name, width, height, typed, turn, count } = row('Mill', null);
    expect(Object.values(after.transfer)).toMatchObject([{ name, width, height, typed, turn }]);
    expect(Object.values(after.copy)).toHaveLength(count);
  });

  it.each([
    { had: '', rows: ['Ana Roca'], has: 'Ana Roca' },
    { had: '', rows: ['Ana Roca', '', 'ana roca', 'Leo'], has: 'Ana Roca\nLeo' },
    { had: 'Front desk', rows: ['Ana Roca'], has: 'Front desk\nAna Roca' },
    { had: 'Front desk, Ana Roca', rows: ['Ana Roca'], has: 'Front desk, Ana Roca' },
  ])('add what they say to what an order has: $had, $rows', ({ had, rows, has }) => {
    const { book, order } = smallBook();
    const before = edited(book, (draft) => editOrder(draft, order, { contact: had, notes: had }));
    const added = rows.map((said) => row('Hill Bakers', null, { contact: said, notes: said }));
    const own = edited(before, (draft) => addRows(draft, added, freshIds())).order[order];
    expect(own).toMatchObject({ contact: has.replaceAll('\n', ', '), notes: has });
  });

  it('of 3,000 orders, alike in their first letters, gives each a code of its own', () => {
    const rows = Array.from({ length: 3_000 }, (_, at) => row(`Oak Road ${at}`, null));
    const { book } = session(emptyBook, edits.addRows(rows), freshIds());
    const orders = Object.values(book.order);
    expect(orders).toHaveLength(3_000);
    expect(new Set(orders.map(({ code }) => code)).size).toBe(3_000);
    const tints = countBy(orders, ({ tint }) => tint);
    expect(Math.max(...tints.values()) - Math.min(...tints.values())).toBeLessThanOrEqual(1);
  });
});
