import { describe, expect, it } from 'vitest';
import { type Mapped, readTable, tableKey } from '../../src/intake';
import { today } from './today';

const ways = { unit: 'mm', dateOrder: null, today } as const;
const text = 'Order,Item,Motif,Width,Height,Qty\nFair,Tee,Star,10,10,4';

const said = (columns: Mapped['columns'], heading = 'Order,Item,Motif,Width,Height,Qty'): Mapped => ({
  tables: { [tableKey(heading.split(','))]: columns },
  columns: {},
});

describe('what was said of the headings of a table', () => {
  it('is told with what each means', () => {
    expect(readTable(text, ways).headings).toEqual([
      { text: 'Order', column: 'order' },
      { text: 'Item', column: null },
      { text: 'Motif', column: 'transfer' },
      { text: 'Width', column: 'width' },
      { text: 'Height', column: 'height' },
      { text: 'Qty', column: 'count' },
    ]);
  });

  it('holds for a heading that is known by itself', () => {
    const { rows, headings } = readTable(text, { ...ways, mapped: said({ item: 'notes' }) });
    expect(rows).toMatchObject([{ transfer: 'Star', notes: 'Tee', count: 4 }]);
    expect(headings.map(({ column }) => column)).toEqual([
      'order',
      'notes',
      'transfer',
      'width',
      'height',
      'count',
    ]);
  });

  it('takes a column from the heading that has it by itself', () => {
    const { rows } = readTable(text, { ...ways, mapped: said({ item: 'transfer' }) });
    expect(rows).toMatchObject([{ transfer: 'Tee' }]);
  });

  it('leaves out a heading that is known by itself', () => {
    const { rows, headings } = readTable(text, { ...ways, mapped: said({ qty: 'none' }) });
    expect(rows).toMatchObject([{ count: 1, doubts: ['no-count'] }]);
    expect(headings.at(-1)).toEqual({ text: 'Qty', column: null });
  });

  it('holds whatever the order, case and blanks of the same headings', () => {
    const other = 'QTY,Motif ,item,Height, Width,Order\n4,Star,Tee,10,10,Fair';
    const { rows } = readTable(other, { ...ways, mapped: said({ item: 'notes', motif: 'transfer' }) });
    expect(rows).toMatchObject([{ transfer: 'Star', notes: 'Tee', count: 4 }]);
  });

  it('says nothing of a known heading in a table of other headings', () => {
    const mapped = said({ item: 'notes' }, 'Order,Item,Motif,Width,Height,Qty,Due');
    expect(readTable(text, { ...ways, mapped }).rows).toMatchObject([{ transfer: 'Star', notes: '' }]);
  });

  it('goes before what was said of a heading in other tables', () => {
    const mapped = { ...said({ motif: 'none' }), columns: { motif: 'notes' } };
    expect(readTable(text, { ...ways, mapped }).rows).toMatchObject([{ transfer: 'Tee', notes: '' }]);
    expect(
      readTable(text, { ...ways, mapped: { tables: {}, columns: { motif: 'notes' } } }).rows,
    ).toMatchObject([{ transfer: 'Tee', notes: 'Star' }]);
  });
});
