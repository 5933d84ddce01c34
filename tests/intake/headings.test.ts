import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/intake';
import { type Column, headingOf } from '../../src/intake/headings';
import { fromInches, fromMm } from '../../src/units';

import { today } from './today';

const ways = { unit: 'mm', dateOrder: null, today } as const;

// What tables of shops call their columns: common practice, no source.
describe('a heading', () => {
  it.each<[string, Column, string?]>([
    ['Lineitem quantity', 'count'],
    ['Line item qty', 'count'],
    ['Order Quantity', 'count'],
    ['cantidad de artículos', 'count'],
    ['Print Width', 'width'],
    ['print_width_in', 'width', 'in'],
    ['Width inches', 'width', 'in'],
    ['Artwork Height (cm)', 'height', 'cm'],
    ['Ancho de impresión (cm)', 'width', 'cm'],
    ['Alto del estampado', 'height'],
    ['Print Size', 'size'],
    ['Size (in)', 'size', 'in'],
    ['Width × Height', 'size'],
    ['Medidas', 'size'],
    ['Tamaño en mm', 'size', 'mm'],
    ['Lineitem name', 'transfer'],
    ['Product name', 'transfer'],
    ['Nombre del diseño', 'transfer'],
    ['Ship By', 'due'],
    ['need by', 'due'],
    ['Date Needed', 'due'],
    ['In-hands date', 'due'],
    ['Fecha límite', 'due'],
    ['Order #', 'number'],
    ['Order No.', 'number'],
    ['PO #', 'number'],
    ['Purchase order', 'number'],
    ['N.º de pedido', 'number'],
    ['Nº pedido', 'number'],
    ['Customer Name', 'customer'],
    ['Nombre del cliente', 'customer'],
    ['Contact', 'contact'],
    ['Teléfono', 'contact'],
    ['E-mail', 'email'],
    ['Email Address', 'email'],
    ['Correo electrónico', 'email'],
    ['Notes', 'notes'],
    ['Note to seller', 'notes'],
    ['Special instructions', 'notes'],
    ['Observaciones', 'notes'],
    ['May turn?', 'turn'],
  ])('%s is %s', (heading, column, unit) => {
    expect(headingOf(heading)).toMatchObject({ column, unit: unit ?? null });
  });

  it.each(['Order date', 'Print date', 'Item price', 'Artwork email', 'Unit price', 'Status', '#'])(
    '%s is none of ours',
    (heading) => {
      expect(headingOf(heading).column).toBeUndefined();
    },
  );
});

describe('a heading that may be of something else', () => {
  const table = (headings: string, cells: string) => readTable(`${headings}\n${cells}`, ways).rows[0];

  it.each([
    ['Order,Date,Design,Width,Height,Ship By', 'Mill,2026-11-01,Star,10,10,2026-12-04'],
    ['Order,Ship By,Design,Width,Height,Date', 'Mill,2026-12-04,Star,10,10,2026-11-01'],
    ['Pedido,Fecha,Diseño,Ancho,Alto,Fecha de entrega', 'Mill,2026-11-01,Star,10,10,2026-12-04'],
    ['Order,Product,Design,Width,Height,Due', 'Mill,T-shirt,Star,10,10,2026-12-04'],
    ['Order,Design,Width,Height,Date', 'Mill,Star,10,10,2026-12-04'],
  ])('yields to one with a name of its own, and else stands for it: %s', (headings, cells) => {
    expect(table(headings, cells)).toMatchObject({ due: '2026-12-04', transfer: 'Star' });
  });
});

describe('who an order is of', () => {
  const first = (heading: string, ...lines: string[]) => readTable([heading, ...lines].join('\n'), ways).rows;

  it.each([
    ['Order', 'Spring fair', { order: 'Spring fair', contact: '' }],
    ['Customer', 'Mill', { order: 'Mill', contact: '' }],
    ['Order,Customer', 'Spring fair,Mill', { order: 'Spring fair', contact: 'Mill' }],
    ['Order #', '#1041', { order: '#1041', contact: '' }],
    ['Order #,Customer', '#1041,Mill', { order: '#1041 Mill', contact: '' }],
    ['Order #,Order,Customer', '1041,Spring fair,Mill', { order: '1041 Spring fair', contact: 'Mill' }],
    [
      'Customer,Contact,E-mail',
      'Mill,Ana Roca,ana@mill.example',
      { order: 'Mill', contact: 'Ana Roca, ana@mill.example' },
    ],
    ['Customer,Contact', 'Mill,mill', { order: 'Mill', contact: '' }],
    ['Customer,Notes', 'Mill,leave at the desk', { order: 'Mill', notes: 'leave at the desk' }],
  ])('is told by %s: %s', (heading, cells, told) => {
    expect(first(`${heading},Design,Width,Height`, `${cells},Star,10,10`)).toMatchObject([told]);
  });

  it('is said once of an order that is listed in several rows', () => {
    const rows = first(
      'Order number,Customer,E-mail,Design,Width,Height',
      '#1041,Mill,ana@mill.example,Star,10,10',
      '#1041,,,Moon,10,10',
      ',,,Sun,10,10',
      '#1042,Fair,,Star,10,10',
      '#1041,,,Tail,10,10',
    );
    expect(rows.map(({ order }) => order)).toEqual([
      '#1041 Mill',
      '#1041 Mill',
      '#1041 Mill',
      '#1042 Fair',
      '#1041 Mill',
    ]);
  });

  it('goes with a row that is handed back to be mended', () => {
    const text =
      'Order number,Customer,Design,Width,Height\n#1041,Mill,Star,10,10\n#1041,,Moon,abc,10\n,,Sun,abc,10';
    const { left } = readTable(text, ways);
    const mended = readTable(left.text.replaceAll('abc', '10'), ways);
    expect(mended.rows.map(({ order }) => order)).toEqual(['#1041 Mill', '#1041 Mill']);
  });
});

describe('a size in one column', () => {
  const read = (size: string, heading = 'Size', unit: 'mm' | 'in' = 'mm') =>
    readTable(`Order;Design;${heading}\nFair;Star;${size}`, { unit, dateOrder: null, today });
  // 1 in = 25.4 mm exactly: NIST SP 811, appendix B.
  const inches = { width: fromInches(11), height: fromInches(13) };

  it.each([
    ['11 x 13 in', inches],
    ['11in x 13in', inches],
    ['11" x 13"', inches],
    ['11"x13"', inches],
    ['11 × 13 inches', inches],
    ['11 by 13 in', inches],
    ['11 in W x 13 in H', inches],
    ['13" H x 11" W', inches],
    ['279,4 x 330,2', inches],
    ['27,94 por 33,02 cm', inches],
    ['280*330 mm', { width: fromMm(280), height: fromMm(330) }],
    ['3 1/2 x 4 1/4 in', { width: fromMm(88.9), height: fromMm(107.95) }],
  ])('%s', (size, sides) => {
    expect(read(size)).toMatchObject({ bad: [], rows: [sides] });
  });

  it('takes the unit of its heading or of the shop, and keeps it', () => {
    expect(read('11 x 13', 'Size (in)').rows).toMatchObject([
      { ...inches, typed: { width: '11 in', height: '13 in' } },
    ]);
    expect(read('11 x 13', 'Print size', 'in').rows).toMatchObject([inches]);
  });

  it('may stand where the width does, without a height', () => {
    expect(readTable('Fair,Star,11 x 13 in,,4', ways).rows).toMatchObject([{ ...inches, count: 4 }]);
  });

  it('is asked for where a column of sizes says something else', () => {
    expect(read('XL').bad).toMatchObject([
      { problems: [{ column: 'size', code: 'unreadable', text: 'XL' }] },
    ]);
    expect(read('11 x 0 in').bad).toMatchObject([{ problems: [{ column: 'size', code: 'not-positive' }] }]);
    expect(read('').bad).toMatchObject([{ problems: [{ column: 'size', code: 'empty' }] }]);
  });

  it('is no matter where width and height are given: it is a garment’s', () => {
    const text = 'Order,Design,Width,Height,Size\nFair,Star,10,12,XL';
    expect(readTable(text, ways)).toMatchObject({
      bad: [],
      rows: [{ width: fromMm(10), height: fromMm(12) }],
    });
  });
});
