import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { finishRun, lockRun, noteAir, noteCheck, noteFailedCheck, setPlaces } from '../../src/editing';
import type { Id, Instant } from '../../src/model';
import { dialectOf, ledgerTable, logTable, upkeepTable, writeCsv } from '../../src/output/csv';
import { fromMinutes, fromMm, fromVolume, type LocalDate, UPRIGHT } from '../../src/units';
import { closeIt, edited, freshIds, LATER, NOW, smallBook } from '../editing/book';

/** Reads a file back as a table program does. */
const readBack = (csv: string, delimiter: string): string[][] =>
  Papa.parse<string[]>(csv, { delimiter }).data;

describe('a table as CSV', () => {
  it('is read back as it was, whatever is typed: RFC 4180', () => {
    // What begins like a formula comes back with an apostrophe in front, and nothing else differs.
    const plain = fc
      .string()
      .filter((text) => !/^[\t\r\n]|(?:^|[,;|\t\r\n])[\s"\p{Cc}\p{Cf}]*[=+\-@＝＋－＠]/u.test(text));
    fc.assert(
      fc.property(
        fc.array(fc.tuple(plain, plain), { minLength: 1 }),
        fc.constantFrom(['point', ','] as const, ['comma', ';'] as const),
        (rows, [dialect, delimiter]) => {
          const csv = writeCsv({ headings: ['a', 'b'], rows }, dialect);
          expect(readBack(csv, delimiter)).toEqual([['a', 'b'], ...rows]);
        },
      ),
    );
  });

  it('ends its lines with CRLF and quotes what needs it: RFC 4180, section 2', () => {
    const csv = writeCsv({ headings: ['run', 'note'], rows: [['Run "1"', 'a, b\r\nc']] }, 'point');
    expect(csv).toBe('run,note\r\n"Run ""1""","a, b\r\nc"');
  });

  // OWASP, CSV Injection: what a cell must not begin with.
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', '＝1', '=HYPERLINK("x")'])(
    'runs no formula: %j',
    (typed) => {
      const [, row] = readBack(writeCsv({ headings: ['note'], rows: [[typed]] }, 'point'), ',');
      expect(row?.[0]).toBe(`'${typed}`);
    },
  );

  it.each([
    ['x;=1+1', "x;'=1+1"],
    ['x\t=1+1', "x\t'=1+1"],
    ['x|@SUM(A1)', "x|'@SUM(A1)"],
    ['x; "=1+1', 'x;\' "=1+1'],
    ['x\n=1+1', "x\n'=1+1"],
    [' =1+1', "' =1+1"],
    ['\t=1', "'\t'=1"],
    ['\u0000=1+1', "'\u0000=1+1"],
    ['\u200b\ufeff=1+1', "'\u200b\ufeff=1+1"],
    ['a - b = c', 'a - b = c'],
    ['10,-5', '10,-5'],
  ])('runs no formula whatever separator is guessed: %j', (typed, kept) => {
    const [, row] = readBack(writeCsv({ headings: ['note'], rows: [[typed]] }, 'point'), ',');
    expect(row?.[0]).toBe(kept);
  });

  it.each([';', '|', '\t', ','])(
    'begins no field with a sign where %j is guessed to part them',
    (guessed) => {
      const part = fc.constantFrom('=1+1', '-2', '+a', '@b', 'x', ' ', ';', ',', '|', '\t', '\n', '\u0000');
      const typed = fc.array(part, { maxLength: 8 }).map((parts) => parts.join(''));
      fc.assert(
        fc.property(typed, fc.constantFrom('point', 'comma'), (text, dialect) => {
          const csv = writeCsv({ headings: ['a', 'b'], rows: [['x', text]] }, dialect);
          for (const field of readBack(csv, guessed).flat()) expect(field).not.toMatch(/^[\s\0"]*[=+\-@]/);
        }),
      );
    },
  );

  it.each([
    ['en-GB', 'point', -1.5, '-1.5'],
    ['de-DE', 'comma', -1.5, '-1,5'],
    ['es-ES', 'comma', 1234.25, '1234,25'],
  ] as const)('writes figures as %s does: figures, below zero too', (locale, dialect, value, text) => {
    expect(dialectOf(locale)).toBe(dialect);
    expect(writeCsv({ headings: ['x'], rows: [[value], [null]] }, dialect)).toBe(`x\r\n${text}\r\n`);
  });
});

describe('the log and the ledger as tables', () => {
  const { book: empty } = smallBook();
  const run = Object.keys(empty.run)[0] as Id<'run'>;
  const printed = edited(empty, (draft) => {
    const copies = Object.values(draft.copy).slice(0, 3);
    setPlaces(
      draft,
      run,
      copies.map(({ id }, at) => [
        id,
        { x: fromMm(5), y: fromMm(10 + 90 * at), angle: UPRIGHT, pinned: false },
      ]),
    );
    lockRun(draft, run, freshIds());
    finishRun(draft, run, freshIds());
    const record = draft.run[run];
    if (record && record.state !== 'draft') record.state = 'pressed';
  });
  const book = closeIt(printed, run, freshIds());
  const same = <Key extends string>() => new Proxy({}, { get: (_, name) => name }) as Record<Key, string>;

  it('tell each run with what was planned and used, an unknown figure as nothing', () => {
    const table = logTable(book, 'metric', { columns: same(), spoiled: ({ reason }) => reason });
    const [headings = [], row = []] = readBack(writeCsv(table, 'point'), ',');
    const told = Object.fromEntries(headings.map((name, at) => [name, row[at]]));
    // 3 copies of 100 x 80 mm in 280 mm of a roll 330 mm wide.
    expect(told).toMatchObject({
      run: 'Run',
      copies: '3',
      filmPlanned: '0.28',
      filmUsed: '0.28',
      waste: '74',
    });
    expect(told.hands).toBe('');
    expect(Number(told.white)).toBeGreaterThan(0);
  });

  it('tell checks, what was taken back, and the air, in their order; a note runs nothing', () => {
    const day = '2026-11-25' as LocalDate;
    const noted = edited(book, (draft) => {
      const check = { check: 'stir' as Id<'check'>, machine: null, name: '=cmd()' };
      const doer = { by: 'AB', day };
      noteCheck(draft, { ...check, done: true, note: '@first; "quoted"' }, doer, freshIds(NOW));
      noteAir(draft, { temperature: 22.44, humidity: 0.473 }, { by: 'CD', day }, freshIds(LATER));
      const later = freshIds('2026-11-25T13:00:00.000Z' as Instant);
      noteCheck(draft, { ...check, done: false, note: '' }, doer, later);
      noteFailedCheck(
        draft,
        { check: 'nozzles' as Id<'check'>, machine: null, name: 'Nozzles', note: '' },
        { seconds: fromMinutes(12), colour: fromVolume(8, 'ml'), white: fromVolume(0, 'ml') },
        doer,
        freshIds('2026-11-25T14:00:00.000Z' as Instant),
      );
    });
    const table = upkeepTable(noted, {
      columns: same(),
      states: { done: 'done', failed: 'failed', takenBack: 'taken back' },
      reading: 'room',
    });
    const [headings, ...rows] = readBack(writeCsv(table, 'comma'), ';');
    expect(headings).toEqual([
      'at',
      'day',
      'what',
      'state',
      'temperature',
      'humidity',
      'minutes',
      'colour',
      'white',
      'by',
      'note',
      'entry',
    ]);
    expect(rows.map((row) => row.slice(0, 11))).toEqual([
      [NOW, day, "'=cmd()", 'done', '', '', '', '', '', 'AB', '\'@first; "quoted"'],
      [LATER, day, 'room', '', '22,4', '47,3', '', '', '', 'CD', ''],
      ['2026-11-25T13:00:00.000Z', day, "'=cmd()", 'taken back', '', '', '', '', '', 'AB', ''],
      ['2026-11-25T14:00:00.000Z', day, 'Nozzles', 'failed', '', '', '12', '8', '0', 'AB', ''],
    ]);
  });

  it('tell every entry, and their sum is what there is', () => {
    const table = ledgerTable(book, 'metric', { columns: same(), kinds: same(), units: same() });
    const [headings = [], ...rows] = readBack(writeCsv(table, 'comma'), ';');
    const change = headings.indexOf('change');
    const sum = rows.reduce((total, row) => total + Number(row[change]?.replace(',', '.')), 0);
    expect(rows).toHaveLength(Object.keys(book.entry).length);
    expect(sum).toBeCloseTo(9.72, 6);
  });
});
