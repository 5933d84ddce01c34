import Papa from 'papaparse';
import {
  type DateOrder,
  type DateProblem,
  type LengthProblem,
  type LengthUnit,
  type LocalDate,
  type Micrometres,
  parseDate,
  parseLength,
  unitNamed,
} from '../units';
import { type CountProblem, MOST_COPIES_IN_ALL, readCount, readTurn } from './cells';
import { type Column, type Columns, columnsOf, neededColumns } from './columns';
import type { TableLimit } from './limits';
import { recordsOf } from './records';
import { separatorOf } from './separator';

/** A row that was understood: one transfer. */
export interface TableRow {
  /** Counted from 1, the heading and empty rows included, as a spreadsheet does. */
  readonly line: number;
  readonly order: string;
  readonly transfer: string;
  readonly width: Micrometres;
  readonly height: Micrometres;
  /** The size as it was typed, with a unit. */
  readonly typed: { readonly width: string; readonly height: string };
  readonly count: number;
  readonly due: LocalDate | null;
  readonly turn: 'quarter' | 'fixed';
}

/** What is wrong with one cell; `text` is what stands there. */
export type CellProblem =
  | { readonly column: 'order' | 'transfer'; readonly code: 'empty' }
  | { readonly column: 'width' | 'height'; readonly code: LengthProblem; readonly text: string }
  | { readonly column: 'count'; readonly code: CountProblem | 'too-many-in-all'; readonly text: string }
  | { readonly column: 'due'; readonly code: DateProblem; readonly text: string }
  | { readonly column: 'turn'; readonly code: 'unreadable'; readonly text: string };

interface BadRow {
  readonly line: number;
  readonly problems: readonly CellProblem[];
}

export interface TableReading {
  readonly rows: readonly TableRow[];
  readonly bad: readonly BadRow[];
  /** The heading and the bad rows as a table again, to be mended. */
  readonly badText: string;
  /** A date can be read in two ways until the shop has said which comes first. */
  readonly needsDateOrder: boolean;
  /** Headings that mean no column yet. */
  readonly unknown: readonly string[];
  /** Why nothing at all could be read. */
  readonly problem:
    | { readonly code: 'missing-columns'; readonly columns: readonly Column[] }
    | TableLimit
    | null;
}

/** How a table is read. */
export interface TableWays {
  readonly unit: LengthUnit;
  readonly dateOrder: DateOrder | null;
  /** Which column a heading means, where the shop has said so. */
  readonly columns?: Readonly<Record<string, string>>;
}

/** A longer text is no figure, and takes long to tell so. */
const LONGEST_FIGURE = 100;
const UNREADABLE = { ok: false, problem: 'unreadable' } as const;

/** Reads a figure, of which all that is too long is none. */
const figure = <Reading>(text: string, read: (text: string) => Reading): Reading | typeof UNREADABLE =>
  text.length > LONGEST_FIGURE ? UNREADABLE : read(text);

/** What stands in a cell, as far as it is shown. */
const shown = (text: string): string =>
  text.length > LONGEST_FIGURE ? `${text.slice(0, LONGEST_FIGURE)}…` : text;

/** Reads one record; `orderAbove` is what an empty order cell stands for, as in a grouped list. */
function readRecord(
  record: readonly string[],
  line: number,
  { at, units }: Columns,
  orderAbove: string,
  { unit, dateOrder }: TableWays,
): { row: TableRow | null; problems: CellProblem[] } {
  const cell = (column: Column): string => {
    const index = at[column];
    return index === undefined ? '' : (record[index] ?? '').trim().replace(/\s+/g, ' ');
  };
  const problems: CellProblem[] = [];
  const order = cell('order') || orderAbove;
  const transfer = cell('transfer');
  if (order === '') problems.push({ column: 'order', code: 'empty' });
  if (transfer === '') problems.push({ column: 'transfer', code: 'empty' });
  const size = (column: 'width' | 'height') => {
    const text = cell(column);
    const own = units[column] ?? unit;
    const read = figure(text, (short) => parseLength(short, own));
    if (!read.ok) problems.push({ column, code: read.problem, text: shown(text) });
    return { length: read.ok ? read.value : null, typed: unitNamed(text) === null ? `${text} ${own}` : text };
  };
  const width = size('width');
  const height = size('height');
  const count = figure(cell('count'), readCount);
  if (!count.ok) problems.push({ column: 'count', code: count.problem, text: shown(cell('count')) });
  const due = cell('due') === '' ? null : figure(cell('due'), (short) => parseDate(short, dateOrder));
  if (due && !due.ok) problems.push({ column: 'due', code: due.problem, text: shown(cell('due')) });
  const turn = readTurn(cell('turn'));
  if (!turn.ok) problems.push({ column: 'turn', code: turn.problem, text: shown(cell('turn')) });
  if (problems.length > 0 || width.length === null || height.length === null || !count.ok || !turn.ok) {
    return { row: null, problems };
  }
  const row: TableRow = {
    line,
    order,
    transfer,
    width: width.length,
    height: height.length,
    typed: { width: width.typed, height: height.typed },
    count: count.value,
    due: due?.ok ? due.value : null,
    turn: turn.value,
  };
  return { row, problems };
}

const NOTHING: TableReading = {
  rows: [],
  bad: [],
  badText: '',
  needsDateOrder: false,
  unknown: [],
  problem: null,
};

/**
 * Reads a table of orders, pasted or opened: CSV by RFC 4180, tabs or semicolons, with or without a heading. Good
 * rows are kept, bad ones named with what is wrong in each cell.
 * @param ways.unit the unit of bare numbers, where the heading names none
 * @param ways.dateOrder how `3/4/2026` is read; `null` if the shop has not said
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
  const columns = columnsOf(heading, ways.columns);
  const taken = new Set(Object.values(columns.at));
  const unknown = columns.isHeading ? heading.filter((cell, at) => cell.trim() !== '' && !taken.has(at)) : [];
  const missing = neededColumns.filter((column) => columns.at[column] === undefined);
  if (missing.length > 0) {
    const problem = { code: 'missing-columns', columns: missing } as const;
    return { rows: [], bad: [], badText: text, needsDateOrder: false, unknown, problem };
  }
  const rows: TableRow[] = [];
  const bad: BadRow[] = [];
  const badRecords = columns.isHeading ? [heading] : [];
  let orderAbove = '';
  let inAll = 0;
  for (const [index, record] of records.entries()) {
    if (isBlank(record) || (columns.isHeading && index === first)) continue;
    const line = index + 1;
    const { row, problems } = readRecord(record, line, columns, orderAbove, ways);
    const orderAt = columns.at.order;
    const order = orderAt === undefined ? '' : (record[orderAt] ?? '').trim();
    if (order !== '') orderAbove = order;
    if (row && inAll + row.count <= MOST_COPIES_IN_ALL) {
      inAll += row.count;
      rows.push(row);
      continue;
    }
    const tooMany: CellProblem[] = row
      ? [{ column: 'count', code: 'too-many-in-all', text: String(row.count) }]
      : problems;
    bad.push({ line, problems: tooMany });
    // Out of its place, an empty order cell would stand for another order.
    badRecords.push(
      orderAt !== undefined && order === ''
        ? record.with(Math.min(orderAt, record.length - 1), orderAbove)
        : record,
    );
  }
  return {
    rows,
    bad,
    badText: bad.length > 0 ? Papa.unparse(badRecords, { delimiter: separator, newline: '\n' }) : '',
    needsDateOrder: bad.some(({ problems }) =>
      problems.some(({ column, code }) => column === 'due' && code === 'ambiguous'),
    ),
    unknown,
    problem: null,
  };
}
