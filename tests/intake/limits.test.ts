import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/intake';
import { LONGEST_CELL, MOST_COLUMNS, MOST_ROWS, MOST_SIGNS } from '../../src/intake/limits';
import { recordsOf } from '../../src/intake/records';
import { separatorOf } from '../../src/intake/separator';

import { today } from './today';

const ways = { unit: 'mm', dateOrder: null, today } as const;
const HEADING = 'order,transfer,width,height,count';
const rows = (count: number, row: (at: number) => string) =>
  [HEADING, ...Array.from({ length: count }, (_, at) => row(at))].join('\n');

const tooMuch: readonly (readonly [what: string, table: string, problem: object])[] = [
  ['100,000 good rows', rows(100_000, (at) => `Club,crest ${at},80,80,1`), { code: 'many-rows' }],
  ['100,000 bad rows', rows(100_000, () => 'Club,crest,abc,80,1'), { code: 'many-rows' }],
  ['one row too many', rows(MOST_ROWS, () => 'Club,crest,80,80,1'), { code: 'many-rows' }],
  ['100,000 columns', new Array(100_000).fill('width').join(), { code: 'many-columns', line: 1 }],
  [
    'a row of more columns',
    rows(3, (at) => (at === 1 ? ','.repeat(MOST_COLUMNS) : 'a,b,1,1,1')),
    { code: 'many-columns', line: 3 },
  ],
  [
    'a cell that is too long',
    rows(3, (at) => (at === 2 ? `a,${'x'.repeat(LONGEST_CELL + 1)},1,1,1` : 'a,b,1,1,1')),
    { code: 'long-cell', line: 4 },
  ],
  ['a line of 50 MB', 'x'.repeat(50_000_000), { code: 'too-long' }],
  ['a line of 8 MB', 'x'.repeat(MOST_SIGNS), { code: 'long-cell', line: 1 }],
  ['8 MB of quotes', '"a'.repeat(MOST_SIGNS / 2), { code: 'long-cell', line: 1 }],
  ['8 MB of separators', ';'.repeat(MOST_SIGNS), { code: 'many-columns', line: 1 }],
  ['8 MB of breaks', '\n'.repeat(MOST_SIGNS), { code: 'many-rows' }],
];

describe('a table that is too much', () => {
  it.each(tooMuch)('%s: nothing of it is read, and it is told of what', (_, table, problem) => {
    expect(readTable(table, ways)).toMatchObject({
      rows: [],
      bad: [],
      left: { text: '' },
      headings: [],
      problem,
    });
  });

  it('is read whole up to each limit', () => {
    const last = `Club,${'x'.repeat(LONGEST_CELL)},80,80,1${','.repeat(MOST_COLUMNS - 5)}`;
    const reading = readTable(`${rows(MOST_ROWS - 2, (at) => `Club,crest ${at},80,80,1`)}\n${last}`, ways);
    expect(reading.problem).toBeNull();
    expect(reading.rows).toHaveLength(MOST_ROWS - 1);
  });

  it('says how far it is, and does so in the end as at the beginning', () => {
    const shares: number[] = [];
    readTable(
      rows(5_000, () => 'Club,crest,80,80,1'),
      ways,
      (share) => shares.push(share),
    );
    expect(shares.length).toBeGreaterThan(5);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBeGreaterThan(0.9);
  });

  it('names a cell that is no figure by its beginning', () => {
    const [bad] = readTable(
      rows(1, () => `Club,crest,${'9'.repeat(LONGEST_CELL)},80,1`),
      ways,
    ).bad;
    expect(bad?.problems).toMatchObject([{ column: 'width', code: 'unreadable' }]);
    expect(JSON.stringify(bad).length).toBeLessThan(300);
  });
});

const anyTable = fc.oneof(
  fc.uint8Array({ maxLength: 500 }).map((bytes) => new TextDecoder().decode(bytes)),
  fc
    .array(
      fc.oneof(
        fc.constantFrom('"', '""', ',', ';', '\t', '\n', '\r\n', '\r', ' ', 'x', '80 mm'),
        fc.string({ maxLength: 3 }),
      ),
      {
        maxLength: 80,
      },
    )
    .map((parts) => parts.join('')),
);

describe('any text', () => {
  it('has the records that the library reads as a whole', () => {
    fc.assert(
      fc.property(anyTable, (text) => {
        const separator = separatorOf(text);
        const quoted = Papa.parse<string[]>(text, { delimiter: separator });
        const isBroken = quoted.errors.some(({ type }) => type === 'Quotes');
        const { data } = isBroken
          ? Papa.parse<string[]>(text, { delimiter: separator, quoteChar: '\u0000' })
          : quoted;
        expect(recordsOf(text, separator, () => undefined)).toEqual({ ok: true, value: data });
      }),
      { numRuns: 1_000 },
    );
  });

  it('is read without an error, and no row of it is lost', () => {
    fc.assert(
      fc.property(anyTable, (text) => {
        const { rows: good, bad, problem } = readTable(text, ways);
        const lines = [...good, ...bad].map(({ line }) => line);
        expect(new Set(lines).size).toBe(lines.length);
        if (problem) expect(lines).toEqual([]);
      }),
      { numRuns: 1_000 },
    );
  });
});
