import Papa from 'papaparse';
import { MOST_COPIES_IN_ALL } from './cells';
import { type Columns, columnsOf, type Heading, headingsOf, missingColumns } from './columns';
import type { Column } from './headings';
import { type Left, lineNumbers } from './left';
import type { TableLimit } from './limits';
import { headColumns, type OrderHead, orderHeads } from './order-head';
import { recordsOf } from './records';
import { repeatedAbove } from './repeats';
import { ambiguousDue, type CellProblem, cellOf, readRecord, type TableRow, type TableWays } from './row';
import { type Separator, separatorOf } from './separator';

interface BadRow {
  readonly line: number;
  readonly problems: readonly CellProblem[];
}

export interface TableReading {
  readonly rows: readonly TableRow[];
  readonly bad: readonly BadRow[];
  /** The heading and the bad rows, to be mended. */
  readonly left: Left;
  /** The first date that is another day by day or by month first, whichever it was read by. */
  readonly ambiguousDate: string | null;
  /** The headings, if it has some, and what each means. */
  readonly headings: readonly Heading[];
  /** Why nothing at all could be read. */
  readonly problem:
    | { readonly code: 'missing-columns'; readonly columns: readonly Column[] }
    | TableLimit
    | null;
}

/** A record that names its order itself: out of its place, an empty cell would stand for another. */
function withHead(record: readonly string[], { at }: Columns, head: OrderHead): string[] {
  const whole = [...record];
  for (const column of headColumns) {
    const index = at[column];
    if (index === undefined) continue;
    while (whole.length <= index) whole.push('');
    if ((whole[index] ?? '').trim() === '') whole[index] = head[column];
  }
  return whole;
}

/** The number of each record, in the table that it is left of, if it is of one. */
function numbersOf(records: readonly string[][], separator: Separator, left: Left | null): number[] {
  const was = left && recordsOf(left.text, separator, () => undefined);
  return left && was?.ok ? lineNumbers(records, was.value, left.lines) : records.map((_, at) => at + 1);
}

const NOTHING: TableReading = {
  rows: [],
  bad: [],
  left: { text: '', lines: [] },
  ambiguousDate: null,
  headings: [],
  problem: null,
};

/**
 * Reads a table of orders, pasted or opened: CSV by RFC 4180, tabs or semicolons, with or without a heading. Good
 * rows are kept, bad ones named with what is wrong in each cell.
 * @param ways.unit the unit of bare numbers, where the heading names none
 * @param ways.dateOrder how `3/4/2026` is read; `null` if the shop has not said
 * @param ways.today what a day without a year is counted from
 * @param ways.left where the table is what was left of another, whose numbers its rows keep
 * @param onShare is told how much of a long table is read, from 0 to 1
 */
export function readTable(
  text: string,
  ways: TableWays,
  onShare: (share: number) => void = () => undefined,
): TableReading {
  const separator = separatorOf(text);
  const read = recordsOf(text.replace(/^\ufeff/, ''), separator, onShare);
  if (!read.ok) return { ...NOTHING, problem: read.problem };
  const records = read.value;
  const isBlank = (record: readonly string[]) => record.every((cell) => cell.trim() === '');
  const first = records.findIndex((record) => !isBlank(record));
  const heading = records[first];
  if (!heading) return NOTHING;
  const columns = columnsOf(heading, ways.mapped);
  const headings = headingsOf(heading, columns);
  const lines = numbersOf(records, separator, ways.left ?? null);
  const missing = missingColumns(columns);
  if (missing.length > 0) {
    const problem = { code: 'missing-columns', columns: missing } as const;
    return { ...NOTHING, left: { text, lines }, headings, problem };
  }
  const rows: TableRow[] = [];
  const bad: BadRow[] = [];
  const badRecords = columns.isHeading ? [heading] : [];
  const badLines = columns.isHeading ? [lines[first] ?? 1] : [];
  const headOf = orderHeads();
  const repeatsOf = repeatedAbove();
  let inAll = 0;
  let ambiguousDate: string | null = null;
  for (const [index, record] of records.entries()) {
    if (isBlank(record) || (columns.isHeading && index === first)) continue;
    const line = lines[index] ?? index + 1;
    const head = headOf({
      number: cellOf(record, columns, 'number'),
      order: cellOf(record, columns, 'order'),
      customer: cellOf(record, columns, 'customer'),
    });
    ambiguousDate ??= ambiguousDue(record, columns, ways.today);
    const read = readRecord(record, line, columns, head, ways);
    if (read.ok && inAll + read.value.count <= MOST_COPIES_IN_ALL) {
      inAll += read.value.count;
      rows.push({ ...read.value, repeats: repeatsOf(read.value, withHead(record, columns, head)) });
      continue;
    }
    const problems: readonly CellProblem[] = read.ok
      ? [{ column: 'count', code: 'too-many-in-all', text: String(read.value.count) }]
      : read.problem;
    bad.push({ line, problems });
    badRecords.push(withHead(record, columns, head));
    badLines.push(line);
  }
  return {
    rows,
    bad,
    left:
      bad.length > 0
        ? { text: Papa.unparse(badRecords, { delimiter: separator, newline: '\n' }), lines: badLines }
        : NOTHING.left,
    ambiguousDate,
    headings,
    problem: null,
  };
}
