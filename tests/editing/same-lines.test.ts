import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Answers,
  answerKey,
  type BookDraft,
  editOrder,
  edits,
  lockRun,
  repeatedRows,
  rowsToAdd,
  session,
  setPlaces,
} from '../../src/editing';
import { readTable } from '../../src/intake';
import { type Book, copiesByTransfer, emptyBook, openRuns } from '../../src/model';
import { fromMm, UPRIGHT } from '../../src/units';
import { today } from '../intake/today';
import { edited, freshIds, smallBook } from './book';

const ways = { unit: 'mm', dateOrder: null, today } as const;
const HEADING = 'Order #,Customer,Design,Width,Height,Qty,Due';
const read = (...lines: readonly string[]) => readTable([HEADING, ...lines].join('\n'), ways).rows;

/** Adds rows to a book, as is said of those that are there already. */
function taken(book: Book, rows: ReturnType<typeof read>, answer: Answers[string] | null = null): Book {
  const repeated = repeatedRows(book, rows);
  const answers: Answers = Object.fromEntries(
    repeated.flatMap(({ row, isEqual }) => {
      const said = answer ?? (isEqual ? 'skip' : null);
      return said ? [[answerKey(row), said]] : [];
    }),
  );
  return session(book, edits.addRows(rowsToAdd(rows, repeated, answers)), freshIds()).book;
}

/** The lines of a book: order, transfer, count, due. */
const linesOf = (book: Book) =>
  Object.values(book.transfer).map(({ id, order, name }) => [
    book.order[order]?.name,
    name,
    copiesByTransfer(book).get(id)?.length ?? 0,
    book.order[order]?.due,
  ]);

const row = fc.record({
  order: fc.integer({ min: 1, max: 4 }),
  design: fc.constantFrom('Star', 'Moon'),
  size: fc.constantFrom(40, 50),
  count: fc.integer({ min: 1, max: 3 }),
  due: fc.constantFrom('', '2026-12-03', '2026-12-10'),
});
const anyRows = fc
  .array(row, { minLength: 1, maxLength: 25 })
  .map((rows) =>
    read(
      ...rows.map(
        ({ order, design, size, count, due }) =>
          `#10${order},Mill ${order},${design},${size},40,${count},${due}`,
      ),
    ),
  );

describe('a line that is there already', () => {
  it('is one of the same order, design and size, in the book or in a row above', () => {
    const book = taken(emptyBook, read('#1041,Mill,Star,40,40,5,2026-12-03', '#1041,,Moon,40,40,5,'));
    const rows = read(
      '#1041,Mill,STAR,40,40,8,2026-12-10',
      '#1041,Mill,Star,41,40,8,2026-12-10',
      '#1042,Mill,Star,40,40,8,2026-12-10',
      '#1042,Mill,star,40,40,9,',
    );
    expect(repeatedRows(book, rows)).toMatchObject([
      {
        row: { line: 2 },
        was: { row: null, count: 5, due: '2026-12-03' },
        due: '2026-12-10',
        isEqual: false,
      },
      { row: { line: 5 }, was: { row: 4, count: 8 }, isEqual: false },
    ]);
  });

  it('is known by the number of its order, whatever else its name says', () => {
    const book = taken(emptyBook, read('1041,Mill,Star,40,40,5,'));
    expect(repeatedRows(book, read('#1041,Mill and sons,Star,40,40,5,'))).toMatchObject([{ isEqual: true }]);
    expect(linesOf(taken(book, read('#1041,Mill and sons,Moon,40,40,5,')))).toEqual([
      ['1041 Mill', 'Star', 5, null],
      ['1041 Mill', 'Moon', 5, null],
    ]);
  });

  it('is asked about within a table unless all of the row is the same', () => {
    const rows = read('1,A,Star,40,40,5,', '1,A,Star,40,40,5,', '1,A,Star,40,40,5,2026-12-03');
    expect(repeatedRows(emptyBook, rows).map(({ isEqual }) => isEqual)).toEqual([true, false]);
  });

  it('changes nothing when the table it came with is read again', () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        const first = taken(emptyBook, rows, 'add');
        const repeated = repeatedRows(first, rows);
        expect(repeated.map(({ isEqual }) => isEqual)).toEqual(rows.map(() => true));
        expect(taken(first, rows)).toEqual(first);
      }),
    );
  });

  it('is as many lines more as are added, each with its count; replaced or skipped, none', () => {
    fc.assert(
      fc.property(
        anyRows,
        anyRows,
        fc.array(fc.constantFrom('skip', 'replace', 'add'), { minLength: 25, maxLength: 25 }),
        (before, rows, said) => {
          const book = taken(emptyBook, before, 'add');
          const repeated = repeatedRows(book, rows);
          const answers: Answers = Object.fromEntries(
            repeated.map(({ row }, at) => [answerKey(row), said[at] ?? 'skip']),
          );
          const after = session(book, edits.addRows(rowsToAdd(rows, repeated, answers)), freshIds()).book;
          const added = rows.length - Object.values(answers).filter((answer) => answer !== 'add').length;
          expect(linesOf(after).length).toBe(linesOf(book).length + added);
        },
      ),
    );
  });

  it('takes count and date from the row that replaces it, also a later date', () => {
    const book = taken(emptyBook, read('1,A,Star,40,40,5,2026-12-03', '1,A,Moon,40,40,5,2026-12-03'));
    const rows = read('1,A,Star,40,40,8,2026-12-10', '1,A,Sun,40,40,1,2026-12-12');
    expect(linesOf(taken(book, rows, 'replace'))).toEqual([
      ['1 A', 'Star', 8, '2026-12-10'],
      ['1 A', 'Moon', 5, '2026-12-10'],
      ['1 A', 'Sun', 1, '2026-12-10'],
    ]);
    expect(linesOf(taken(book, read('1,A,Star,40,40,8,'), 'replace'))[0]).toEqual([
      '1 A',
      'Star',
      8,
      '2026-12-03',
    ]);
  });

  it('replaces the row above it in the table, whatever became of that', () => {
    const rows = read('1,A,Star,40,40,5,', '1,A,Star,40,40,8,', '1,A,Star,40,40,9,');
    expect(linesOf(taken(emptyBook, rows, 'replace'))).toEqual([['1 A', 'Star', 9, null]]);
    const book = taken(emptyBook, rows.slice(0, 1));
    const repeated = repeatedRows(book, rows);
    const [first, second, third] = repeated.map(({ row }) => answerKey(row));
    const answers: Answers = { [`${first}`]: 'skip', [`${second}`]: 'skip', [`${third}`]: 'replace' };
    const after = session(book, edits.addRows(rowsToAdd(rows, repeated, answers)), freshIds()).book;
    expect(linesOf(after)).toEqual([['1 A', 'Star', 9, null]]);
  });

  it('is not replaced by fewer copies than are in print', () => {
    const { book: draft, front } = smallBook();
    const run = openRuns(draft)[0]?.id ?? expect.fail();
    const copies = Object.values(draft.copy).filter(({ transfer }) => transfer === front);
    const inPrint = copies.length;
    const book = edited(draft, (open) => {
      setPlaces(
        open,
        run,
        copies.map(({ id }, at) => [
          id,
          { x: fromMm(5), y: fromMm(10 + at * 90), angle: UPRIGHT, pinned: false },
        ]),
      );
      lockRun(open, run, freshIds());
    });
    const line = (count: number) =>
      readTable(`Order,Design,Width,Height,Qty\nHill Bakers,front,100,80,${count}`, ways).rows;
    const linesOf = (of: Book) => [copiesByTransfer(of).get(front)?.length];
    expect(repeatedRows(book, line(inPrint - 1))).toMatchObject([{ least: inPrint }]);
    // Said all the same, it changes nothing.
    expect(linesOf(taken(book, line(inPrint - 1), 'replace'))).toEqual(linesOf(book));
    expect(linesOf(taken(book, line(inPrint + 2), 'replace'))).toEqual([inPrint + 2]);
  });

  it('brings its order back from the archive, unless it is skipped', () => {
    const had = taken(emptyBook, read('1,A,Star,40,40,5,'));
    const book = edited(had, (draft: BookDraft) => {
      for (const id of Object.keys(draft.order)) editOrder(draft, id, { archived: true });
    });
    const archived = (after: Book) => Object.values(after.order).map((order) => order.archived);
    const rows = read('1,A,Star,40,40,6,');
    expect(repeatedRows(book, rows)).toMatchObject([{ was: { archived: true } }]);
    expect(archived(taken(book, rows, 'skip'))).toEqual([true]);
    expect(archived(taken(book, rows, 'replace'))).toEqual([false]);
    expect(archived(taken(book, rows, 'add'))).toEqual([false]);
  });
});
