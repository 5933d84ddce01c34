import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PageBlock, type PageSpace, pagesOf } from '../../src/output/paging';

const room: PageSpace = { first: 100, later: 140, heading: 10 };
const row = (height = 10): PageBlock => ({ height, inTable: true, withBefore: false });
const sums: PageBlock = { height: 25, inTable: true, withBefore: true };
const rows = (count: number) => Array.from({ length: count }, () => row());

describe('blocks over pages', () => {
  it.each<[string, PageBlock[], number[]]>([
    ['nothing: one page', [], [0]],
    ['as many as fit', rows(9), [0]],
    ['one more begins a page', rows(10), [0, 9]],
    ['a heading takes room on each page', rows(9 + 13 + 1), [0, 9, 22]],
    ['sums take the last row with them', [...rows(9), sums], [0, 8]],
    ['sums stay where there is room', [...rows(6), sums], [0]],
    [
      'text behind the table needs no heading',
      [...rows(9), { height: 140, inTable: false, withBefore: false }, row(1)],
      [0, 9, 10],
    ],
    ['a block higher than a page has one of its own', [row(), row(500), row()], [0, 1, 2]],
  ])('%s', (_, blocks, starts) => {
    expect(pagesOf(blocks, room)).toEqual(starts);
  });

  it('cuts nothing, loses nothing, and fills no page over its edge', () => {
    const block = fc.record({
      height: fc.integer({ min: 1, max: 60 }),
      inTable: fc.boolean(),
      withBefore: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 80 }), (blocks) => {
        const starts = pagesOf(blocks, room);
        expect(starts).toEqual([...new Set(starts)].sort((a, b) => a - b));
        for (const [page, from] of starts.entries()) {
          const own = blocks.slice(from, starts[page + 1]);
          const heading = own[0]?.inTable ? room.heading : 0;
          const height = own.reduce((sum, each) => sum + each.height, heading);
          if (page > 0) expect(height).toBeLessThanOrEqual(room.later);
          // The first group may be higher than the first page has room for: it has nowhere better to be.
          else if (own.slice(1).some(({ withBefore }) => !withBefore))
            expect(height).toBeLessThanOrEqual(room.first);
        }
      }),
    );
  });
});
