import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/intake';
import { today } from './today';

const ways = { unit: 'mm', dateOrder: null, today } as const;
const heading = 'order,transfer,width,height,count';
const good = 'Fair,Star,10,10,1';
const bad = 'Fair,Star,ten,10,1';

const linesOf = (text: string, more: Partial<Parameters<typeof readTable>[1]> = {}) => {
  const { rows, bad: left } = readTable(text, { ...ways, ...more });
  return { rows: rows.map(({ line }) => line), bad: left.map(({ line }) => line) };
};

describe('rows that are left of a table once the others are taken', () => {
  it('keep the numbers that they have in the whole of it', () => {
    const { left } = readTable([heading, good, bad, '', good, bad, bad].join('\n'), ways);
    expect(linesOf(left.text, { left })).toEqual({ rows: [], bad: [3, 6, 7] });
  });

  it('keep them without a heading, and when they are left a second time', () => {
    const first = readTable([good, bad, good, bad, good, bad].join('\n'), ways).left;
    const second = readTable(first.text.replace('ten', '10'), { ...ways, left: first });
    expect(second.rows.map(({ line }) => line)).toEqual([2]);
    expect(linesOf(second.left.text, { left: second.left })).toEqual({ rows: [], bad: [4, 6] });
  });

  it('keep them while one is taken out or added', () => {
    const { left } = readTable([heading, good, bad, good, bad, good, bad].join('\n'), ways);
    const [first, ...rows] = left.text.split('\n');
    const without = [first, rows[0], rows[2]].join('\n').replaceAll('ten', '10');
    // The middle one of three equal rows could be any of them: the last is told apart by what it says.
    expect(linesOf([first, rows[1], rows[2]].join('\n').replace('ten', '12'), { left }).rows).toHaveLength(1);
    expect(linesOf(without, { left }).rows).toHaveLength(2);
    expect(linesOf([...left.text.split('\n'), good].join('\n'), { left })).toEqual({
      rows: [8],
      bad: [3, 5, 7],
    });
  });

  it('keep them whichever are mended', () => {
    fc.assert(
      fc.property(
        fc.array(fc.boolean(), { minLength: 1, maxLength: 30 }),
        fc.array(fc.boolean(), { minLength: 30, maxLength: 30 }),
        (areBad, areMended) => {
          const rows = areBad.map((isBad, at) => (isBad ? `Fair,S${at},ten,10,1` : `Fair,S${at},10,10,1`));
          const { bad: was, left } = readTable([heading, ...rows].join('\n'), ways);
          const mended = left.text
            .split('\n')
            .map((row, at) => (areMended[at] ? row.replace('ten', '10') : row))
            .join('\n');
          const now = linesOf(mended, { left });
          expect([...now.rows, ...now.bad].sort((a, b) => a - b)).toEqual(was.map(({ line }) => line));
        },
      ),
    );
  });
});
