import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/intake';
import { fromMm } from '../../src/units';

import { today } from './today';

const ways = { unit: 'mm', dateOrder: null, today } as const;
const read = (text: string) => readTable(text, ways);

describe('a table of orders', () => {
  it('is read with a heading, units and quotes', () => {
    const { rows, bad } = read(
      [
        'Order,Transfer,Width,Height,Count,Due,May turn',
        'Harbour Rowing,"Crest, left chest","3 1/2""",3.5in,9,2026-11-27,yes',
        'Corner Oven,Badge,140 mm,"14,0 cm",4,27.11.2026,no',
      ].join('\r\n'),
    );
    expect(bad).toEqual([]);
    expect(rows).toEqual([
      {
        line: 2,
        order: 'Harbour Rowing',
        number: '',
        repeats: null,
        contact: '',
        notes: '',
        transfer: 'Crest, left chest',
        width: 88_900,
        height: 88_900,
        typed: { width: '3 1/2"', height: '3.5in' },
        count: 9,
        due: '2026-11-27',
        doubts: [],
        turn: 'quarter',
        fabric: null,
      },
      {
        line: 3,
        order: 'Corner Oven',
        number: '',
        repeats: null,
        contact: '',
        notes: '',
        transfer: 'Badge',
        width: 140_000,
        height: 140_000,
        typed: { width: '140 mm', height: '14,0 cm' },
        count: 4,
        due: '2026-11-27',
        doubts: [],
        turn: 'fixed',
        fabric: null,
      },
    ]);
  });

  it.each([
    ['tabs, as copied from a spreadsheet', 'Fair\tStar\t216\t216\t4\t\t'],
    ['semicolons and decimal commas', 'Fair;Star;216,0;216,0;4;;'],
    ['commas', 'Fair,Star,216,216,4,,'],
  ])('is read with %s, without a heading', (_, text) => {
    expect(read(text).rows).toMatchObject([
      { order: 'Fair', transfer: 'Star', width: 216_000, height: 216_000, count: 4 },
    ]);
  });

  it('takes columns in any order, by other names, with units in the heading', () => {
    const { rows } = read('Qty\tDesign\tCustomer\tHeight (in)\tWidth [cm]\n3\tStar\tFair\t2\t5');
    expect(rows).toMatchObject([
      {
        order: 'Fair',
        transfer: 'Star',
        width: 50_000,
        height: 50_800,
        count: 3,
        typed: { width: '5 cm', height: '2 in' },
      },
    ]);
  });

  it('lets an empty order stand for the one above', () => {
    const { rows } = read('Fair,Star,10,10,1\n,Moon,10,10,2');
    expect(rows.map(({ order }) => order)).toEqual(['Fair', 'Fair']);
  });

  it('names a bad row with its number and every reason, and keeps the good ones (rule 7)', () => {
    const { rows, bad, left } = read(
      'order,transfer,width,height,count,due,may turn\nFair,Star,abc,0,10000000,30.2.2026,maybe\n\nFair,Moon,10,10,1,,\n,,5,5,x,,',
    );
    expect(rows).toHaveLength(1);
    expect(bad).toEqual([
      {
        line: 2,
        problems: [
          { column: 'width', code: 'unreadable', text: 'abc' },
          { column: 'height', code: 'not-positive', text: '0' },
          { column: 'count', code: 'too-many', text: '10000000' },
          { column: 'due', code: 'no-such-day', text: '30.2.2026' },
          { column: 'turn', code: 'unreadable', text: 'maybe' },
        ],
      },
      {
        line: 5,
        problems: [
          { column: 'transfer', code: 'empty' },
          { column: 'count', code: 'unreadable', text: 'x' },
        ],
      },
    ]);
    expect(left.text.split('\n')[0]).toBe('order,transfer,width,height,count,due,may turn');
    // What is handed back to be mended still means the same order.
    expect(left.text.split('\n')[2]).toMatch(/^Fair,/);
  });

  it('asks which comes first where dates could be read in two ways', () => {
    const text = 'Fair,Star,10,10,1,3/4/2026,';
    expect(read(text).ambiguousDate).toBe('3/4/2026');
    expect(readTable(text, { ...ways, dateOrder: 'day-first' }).rows[0]?.due).toBe('2026-04-03');
  });

  it('is read as a Spanish shop keeps it', () => {
    const table =
      'Pedido;Diseño;Ancho (cm);Alto en mm;Cantidad;Fecha de entrega;Se puede girar\n' +
      'Remo del Puerto;espalda;8,9;120,5;4;01.12.2026;Sí\n;manga;3 pulg;40;2;;no';
    expect(readTable(table, ways)).toMatchObject({
      bad: [],
      rows: [
        {
          order: 'Remo del Puerto',
          transfer: 'espalda',
          width: fromMm(89),
          height: fromMm(120.5),
          count: 4,
          due: '2026-12-01',
          turn: 'quarter',
          fabric: null,
        },
        { order: 'Remo del Puerto', transfer: 'manga', width: fromMm(76.2), turn: 'fixed' },
      ],
    });
  });

  it('says which columns a heading lacks', () => {
    expect(read('order,transfer,count\nFair,Star,3').problem).toEqual({
      code: 'missing-columns',
      columns: ['width'],
    });
  });

  it('takes a width alone, of one row or of all, and says so: the height follows the artwork', () => {
    const told = (text: string) =>
      read(text).rows.map(({ width, height, typed, doubts }) => ({ width, height, typed, doubts }));
    const follows = {
      width: fromMm(89),
      height: fromMm(89),
      typed: { width: '89 mm', height: '' },
      doubts: ['no-height'],
    };
    expect(told('order,transfer,print width,count\nFair,Star,89 mm,3')).toEqual([follows]);
    expect(told('order,transfer,width,height,count\nFair,Star,89 mm,,3\nFair,Moon,89 mm,40 mm,3')).toEqual([
      follows,
      { ...follows, height: fromMm(40), typed: { width: '89 mm', height: '40 mm' }, doubts: [] },
    ]);
    expect(read('order,transfer,width,height\nFair,Star,,40 mm').bad).toMatchObject([
      { problems: [{ column: 'width', code: 'empty' }] },
    ]);
  });

  it.each([
    [
      'an order',
      'Name,Lineitem name,Width,Height,Shipping Name',
      { order: '#2101 Ana Field', transfer: 'Crest' },
    ],
    ['its transfer', 'Order,Name,Width,Height', { order: '#2101', transfer: 'Crest' }],
    [
      'nothing where the order has a column',
      'Name,Order,Width,Height,Design',
      { order: 'Crest', transfer: 'Ana Field' },
    ],
  ])('reads a name as %s, by what other columns there are', (_, heading, told) => {
    expect(read(`${heading}\n#2101,Crest,90 mm,80 mm,Ana Field`).rows).toMatchObject([told]);
  });

  it('is not swallowed by a quote that is never closed', () => {
    const { rows } = read('Fair,"Star,10,10,1\nFair,Moon,10,10,1\nFair,Sun,10,10,1');
    expect(rows.map(({ transfer }) => transfer)).toContain('Sun');
  });

  it('does not bring more copies than anyone can mean', () => {
    const { rows, bad } = read(
      Array.from({ length: 5 }, (_, row) => `Fair,Star ${row},10,10,5000`).join('\n'),
    );
    expect(rows).toHaveLength(4);
    expect(bad).toMatchObject([{ line: 5, problems: [{ code: 'too-many-in-all' }] }]);
  });

  it('gives nothing for nothing', () => {
    expect(read(' \n\n').rows).toEqual([]);
    expect(read('').problem).toBeNull();
  });
});

describe('RFC 4180', () => {
  const heading = 'order,transfer,width,height\r\n';

  // The examples of section 2, in cells of our table.
  it.each([
    ['1: records end with CRLF', `${heading}aaa,bbb,10,10\r\nzzz,yyy,10,10\r\n`, ['bbb', 'yyy']],
    [
      '2: the last record may lack its line break',
      `${heading}aaa,bbb,10,10\r\nzzz,yyy,10,10`,
      ['bbb', 'yyy'],
    ],
    ['5: fields may be quoted', `${heading}"aaa","bbb","10","10"`, ['bbb']],
    ['6: quoted fields may hold commas and line breaks', `${heading}aaa,"b,\r\nbb",10,10`, ['b, bb']],
    ['7: a quote in a quoted field is doubled', `${heading}aaa,"b""bb",10,10`, ['b"bb']],
  ])('%s', (_, text, transfers) => {
    expect(read(text).rows.map(({ transfer }) => transfer)).toEqual(transfers);
  });

  it('round-trips any names', () => {
    const name = fc.string({ minLength: 1, maxLength: 30 }).map((text) => `x${text}x`.replace(/\s+/g, ' '));
    fc.assert(
      fc.property(fc.array(name, { minLength: 1, maxLength: 5 }), (names) => {
        const records = [
          ['order', 'transfer', 'width', 'height'],
          ...names.map((transfer) => ['Fair', transfer, '10', '10']),
        ];
        expect(read(Papa.unparse(records)).rows.map(({ transfer }) => transfer)).toEqual(names);
      }),
    );
  });
});
