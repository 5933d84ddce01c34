import {
  type DateOrder,
  type DateProblem,
  type Fabric,
  isAmbiguous,
  type LengthProblem,
  type LengthUnit,
  type LocalDate,
  type Micrometres,
  ok,
  parseDate,
  type Result,
  type Turning,
} from '../units';
import { type CountProblem, readCount, readTurn } from './cells';
import type { Columns, Mapped } from './columns';
import { readFabric } from './fabric';
import type { Column } from './headings';
import type { Left } from './left';
import { contactOf, type OrderHead, orderName } from './order-head';
import { isSize, readSide, readSize, type Side } from './size';

/** A due date before today; no count, which is taken for one; no height, which follows the artwork. */
export type Doubt = 'past-due' | 'no-count' | 'no-height';

/** A row that was understood: one transfer. */
export interface TableRow {
  /** Counted from 1, the heading and empty rows included, as a spreadsheet does. */
  readonly line: number;
  readonly order: string;
  /** The number of the order, as it stands there; empty where there is none. */
  readonly number: string;
  /** Whom to ask about the order, and what else is said of it. */
  readonly contact: string;
  readonly notes: string;
  readonly transfer: string;
  readonly width: Micrometres;
  readonly height: Micrometres;
  /** The size as it was typed, with a unit; a height that was not is empty, and as much as the width until the artwork comes. */
  readonly typed: { readonly width: string; readonly height: string };
  readonly count: number;
  readonly due: LocalDate | null;
  /** What is taken, and may not be meant. */
  readonly doubts: readonly Doubt[];
  readonly turn: Turning;
  /** What it goes on; `null` where that is not told. */
  readonly fabric: Fabric | null;
  /** The nearest row above of the same order, transfer and size, and whether all cells of the two are the same. */
  readonly repeats: { readonly line: number; readonly isWhole: boolean } | null;
}

/** What is wrong with one cell; `text` is what stands there. */
export type CellProblem =
  | { readonly column: 'order' | 'transfer'; readonly code: 'empty' }
  | { readonly column: 'width' | 'height' | 'size'; readonly code: LengthProblem; readonly text: string }
  | { readonly column: 'count'; readonly code: CountProblem | 'too-many-in-all'; readonly text: string }
  | { readonly column: 'due'; readonly code: DateProblem; readonly text: string }
  | { readonly column: 'turn' | 'fabric'; readonly code: 'unreadable'; readonly text: string };

/** What is read instead, wherever a text stands in a column. */
export interface Mend {
  readonly column: Column;
  readonly text: string;
  readonly as: string;
}

/** How a table is read. */
export interface TableWays {
  readonly unit: LengthUnit;
  readonly dateOrder: DateOrder | null;
  /** What a day without a year, or of the week, is counted from. */
  readonly today: LocalDate;
  /** Which columns headings mean, where the shop has said so. */
  readonly mapped?: Mapped;
  /** What the table is left of, if others of its rows are taken already. */
  readonly left?: Left | null;
  /** What is read instead of what stands in cells, one after the other. */
  readonly mends?: readonly Mend[];
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

/** What stands in a column of a record, blanks tidied; nothing where the table has no such column. */
export function cellOf(record: readonly string[], { at }: Columns, column: Column): string {
  const index = at[column];
  return index === undefined ? '' : (record[index] ?? '').trim().replace(/\s+/g, ' ');
}

/** The due date of a record, if it is another day by day or by month first. */
export function ambiguousDue(record: readonly string[], columns: Columns, today: LocalDate): string | null {
  const text = cellOf(record, columns, 'due');
  return text.length <= LONGEST_FIGURE && isAmbiguous(text, today) ? text : null;
}

type Cell = (column: Column) => string;
type SideReading = Result<Side, CellProblem>;

/** Where the size of a record stands: in a column each, or both sides in one cell. */
function whereSize(cell: Cell, { at }: Columns): 'apart' | 'width' | 'size' {
  if (cell('height') !== '') return 'apart';
  if (cell('width') !== '') return isSize(cell('width')) ? 'width' : 'apart';
  return at.size === undefined || (at.width !== undefined && cell('size') === '') ? 'apart' : 'size';
}

function readSides(cell: Cell, columns: Columns, unit: LengthUnit): Record<'width' | 'height', SideReading> {
  const problem = (column: 'width' | 'height' | 'size', code: LengthProblem) =>
    ({ ok: false, problem: { column, code, text: shown(cell(column)) } }) as const;
  const unitOf = (column: Column) => columns.units[column] ?? unit;
  const side = (column: 'width' | 'height'): SideReading => {
    const read = figure(cell(column), (short) => readSide(short, unitOf(column)));
    return read.ok ? read : problem(column, read.problem);
  };
  const where = whereSize(cell, columns);
  if (where === 'apart') {
    const width = side('width');
    const follows = width.ok && cell('height') === '';
    return { width, height: follows ? ok({ length: width.value.length, typed: '' }) : side('height') };
  }
  const read = figure(cell(where), (short) => readSize(short, unitOf(where)));
  if (!read.ok) return { width: problem(where, read.problem), height: problem(where, read.problem) };
  return { width: ok(read.value.width), height: ok(read.value.height) };
}

/** Reads one record of an order: the transfer it is, or each problem of it. */
export function readRecord(
  record: readonly string[],
  line: number,
  columns: Columns,
  head: OrderHead,
  { unit, dateOrder, today, mends = [] }: TableWays,
): Result<Omit<TableRow, 'repeats'>, CellProblem[]> {
  const cell: Cell = (column) => {
    const stands = cellOf(record, columns, column);
    return mends.reduce(
      (text, mend) => (mend.column === column && mend.text === text ? mend.as : text),
      stands,
    );
  };
  const problems: CellProblem[] = [];
  const order = orderName(head);
  const transfer = cell('transfer');
  if (order === '') problems.push({ column: 'order', code: 'empty' });
  if (transfer === '') problems.push({ column: 'transfer', code: 'empty' });
  const { width, height } = readSides(cell, columns, unit);
  if (!width.ok) problems.push(width.problem);
  if (!height.ok && (width.ok || width.problem.column !== height.problem.column))
    problems.push(height.problem);
  const count = figure(cell('count'), readCount);
  if (!count.ok) problems.push({ column: 'count', code: count.problem, text: shown(cell('count')) });
  const due =
    cell('due') === '' ? ok(null) : figure(cell('due'), (short) => parseDate(short, dateOrder, today));
  if (!due.ok) problems.push({ column: 'due', code: due.problem, text: shown(cell('due')) });
  const turn = readTurn(cell('turn'));
  if (!turn.ok) problems.push({ column: 'turn', code: turn.problem, text: shown(cell('turn')) });
  const fabric = figure(cell('fabric'), readFabric);
  if (!fabric.ok) problems.push({ column: 'fabric', code: fabric.problem, text: shown(cell('fabric')) });
  if (problems.length > 0 || !width.ok || !height.ok || !count.ok || !due.ok || !turn.ok || !fabric.ok) {
    return { ok: false, problem: problems };
  }
  const doubts: Doubt[] = [];
  if (due.value !== null && due.value < today) doubts.push('past-due');
  if (cell('count') === '') doubts.push('no-count');
  if (height.value.typed === '') doubts.push('no-height');
  return ok({
    line,
    order,
    number: head.number,
    contact: contactOf(head, cell('contact'), cell('email')),
    notes: cell('notes'),
    transfer,
    width: width.value.length,
    height: height.value.length,
    typed: { width: width.value.typed, height: height.value.typed },
    count: count.value,
    due: due.value,
    doubts,
    turn: turn.value,
    fabric: fabric.value,
  });
}
