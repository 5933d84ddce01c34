import { describe, expect, it } from 'vitest';
import { readTable, sharedFaults } from '../../src/intake';
import { fromMm } from '../../src/units';
import { today } from './today';

const ways = { unit: 'mm', dateOrder: null, today } as const;
const table = [
  'Order;Design;Width;Height;Count;Due',
  'Fair;Star;large;10;4;asap',
  'Fair;Moon;large;10;4;',
  'Mill;Sun;small;10;4;asap',
  'Mill;;5;10;4;asap',
  'Mill;Tail;large;10;0;',
].join('\n');

describe('a fault that several rows share', () => {
  it('is told once, the most frequent first', () => {
    expect(sharedFaults(readTable(table, ways).bad)).toEqual([
      { column: 'width', text: 'large', rows: 3 },
      { column: 'due', text: 'asap', rows: 3 },
    ]);
  });

  it('is no fault of the table as a whole, nor one of the order', () => {
    const many = Array.from({ length: 6 }, (_, at) => `Fair;Star ${at};10;10;5000`).join('\n');
    expect(sharedFaults(readTable(many, ways).bad)).toEqual([]);
    expect(sharedFaults(readTable(';Star;10;10;1\n;Moon;10;10;1', ways).bad)).toEqual([]);
  });

  it('is mended in all of them by one text, and in no other column or row', () => {
    const mends = [
      { column: 'width', text: 'large', as: '28 cm' },
      { column: 'due', text: 'asap', as: '' },
    ] as const;
    const { rows, bad } = readTable(table, { ...ways, mends });
    expect(rows.map(({ transfer, width, due }) => ({ transfer, width, due }))).toEqual([
      { transfer: 'Star', width: fromMm(280), due: null },
      { transfer: 'Moon', width: fromMm(280), due: null },
    ]);
    expect(bad).toMatchObject([
      { line: 4, problems: [{ column: 'width', text: 'small' }] },
      { line: 5, problems: [{ column: 'transfer' }] },
      { line: 6, problems: [{ column: 'count', code: 'zero' }] },
    ]);
  });

  it('is told again where the text that mends it is none', () => {
    const mends = [{ column: 'width', text: 'large', as: 'wide' }] as const;
    expect(readTable(table, { ...ways, mends }).bad[0]?.problems[0]).toMatchObject({ text: 'wide' });
    const again = [...mends, { column: 'width', text: 'wide', as: '28 cm' }] as const;
    expect(readTable(table, { ...ways, mends: again }).rows).toMatchObject([{ transfer: 'Moon' }]);
  });
});
