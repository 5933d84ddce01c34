import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/intake';
import { today } from './today';

const read = (cells: string, dateOrder: 'day-first' | 'month-first' | null = null) =>
  readTable(`Order;Design;Width;Height;Count;Due\nFair;Star;10;10;${cells}`, {
    unit: 'mm',
    dateOrder,
    today,
  });

describe('when a row is due', () => {
  it.each([
    ['Dec 3, 2026', '2026-12-03'],
    ['30 Nov 2026', '2026-11-30'],
    ['Wed', '2026-12-02'],
    ['3 de diciembre de 2026', '2026-12-03'],
  ])('is read of %s', (text, due) => {
    expect(read(`4;${text}`)).toMatchObject({ rows: [{ due, doubts: [] }], ambiguousDate: null });
  });

  it.each([
    ['month-first', '2026-12-02'],
    ['day-first', '2027-02-12'],
  ] as const)('of 12/2 is said to be ambiguous, though it is read %s', (order, due) => {
    expect(read('4;12/2', order)).toMatchObject({ rows: [{ due }], ambiguousDate: '12/2' });
  });

  it('of 12/2 is asked for where nobody has said which comes first', () => {
    expect(read('4;12/2')).toMatchObject({
      bad: [{ problems: [{ column: 'due', code: 'ambiguous' }] }],
      ambiguousDate: '12/2',
    });
  });
});

describe('what is taken is told where it may not be meant', () => {
  it.each([
    ['a due date that is past', '4;2026-11-25', ['past-due']],
    ['no count', ';2026-11-26', ['no-count']],
    ['both', ';Nov 20', ['past-due', 'no-count']],
    ['neither', '4;', []],
  ])('%s', (_, cells, doubts) => {
    expect(read(cells).rows).toMatchObject([{ doubts }]);
  });
});
