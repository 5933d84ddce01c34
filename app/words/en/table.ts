import type { CellProblem, Column, TableReading } from '../../../src/intake';
import { MOST_COPIES, MOST_COPIES_IN_ALL } from '../../../src/intake/cells';
import { LONGEST_CELL, MOST_COLUMNS, MOST_ROWS, MOST_SIGNS } from '../../../src/intake/limits';
import { counted, type Ways, whole } from '../format';
import { copies, transfers } from './counts';
import { dateProblems, lengthProblems } from './problems';

const columns: Record<Column, string> = {
  order: 'Order',
  number: 'Order number',
  customer: 'Customer',
  contact: 'Contact',
  email: 'E-mail',
  transfer: 'Transfer',
  width: 'Width',
  height: 'Height',
  size: 'Size, width × height',
  count: 'Qty',
  due: 'Due',
  turn: 'May turn',
  fabric: 'Fabric',
  notes: 'Notes',
};

function countProblem(problem: Extract<CellProblem, { column: 'count' }>, ways: Ways): string {
  switch (problem.code) {
    case 'unreadable':
      return 'write a whole number in figures, such as 12.';
    case 'zero':
      return 'there must be at least one copy.';
    case 'too-many':
      return `no transfer takes more than ${whole(MOST_COPIES, ways)} copies; check the figure.`;
    case 'too-many-in-all':
      return `with these the table would bring more than ${whole(MOST_COPIES_IN_ALL, ways)} copies; add it in parts.`;
  }
}

/** One cell of a pasted table that could not be used: what stands there, and how to mend it. */
function cellProblem(problem: CellProblem, ways: Ways): string {
  const stands = 'text' in problem && problem.text !== '' ? ` “${problem.text}”` : '';
  const name = `${columns[problem.column]}${stands}:`;
  switch (problem.column) {
    case 'order':
      return `${name} name the order; an empty cell stands for the order above it, and there is none.`;
    case 'transfer':
      return `${name} name the transfer, so that its copies can be told apart.`;
    case 'width':
    case 'height':
      return `${name} ${lengthProblems[problem.code]}`;
    case 'size':
      return `${name} ${problem.code === 'unreadable' ? 'write width by height, such as 11 x 13 in.' : lengthProblems[problem.code]}`;
    case 'count':
      return `${name} ${countProblem(problem, ways)}`;
    case 'due':
      return `${name} ${dateProblems[problem.code]}`;
    case 'turn':
      return `${name} write yes, no, half or any.`;
    case 'fabric':
      return `${name} write what it is made of, such as cotton, 50/50, polyester or other.`;
  }
}

/** What keeps a table from being read at all. */
function problemOf(problem: NonNullable<TableReading['problem']>, ways: Ways): string {
  switch (problem.code) {
    case 'missing-columns':
      return `The heading has no column for ${problem.columns.map((column) => columns[column].toLowerCase()).join(', ')}. Add it, or leave the heading out and keep the order of columns named above.`;
    case 'too-long':
      return `The table has more than ${whole(MOST_SIGNS, ways)} characters. Add it in parts.`;
    case 'many-rows':
      return `The table has more than ${whole(MOST_ROWS, ways)} rows. Add it in parts.`;
    case 'many-columns':
      return `Row ${problem.line} has more than ${whole(MOST_COLUMNS, ways)} columns. Leave out those that are not needed.`;
    case 'long-cell':
      return `Row ${problem.line} has a cell of more than ${whole(LONGEST_CELL, ways)} characters. Close its quote, or shorten it.`;
  }
}

/** What became of rows. */
interface TakenRows {
  readonly added: number;
  readonly replaced: number;
  readonly skipped: number;
}

export const table = {
  mapTitle: (used: number, unused: number, ways: Ways) =>
    unused === 0
      ? `Columns: all ${whole(used, ways)} are used`
      : `Columns: ${whole(used, ways)} used, ${whole(unused, ways)} not`,
  mapKept: 'What you choose here is remembered for tables with the same headings.',
  mapTo: (heading: string) => `“${heading}” is`,
  notUsed: 'not used',
  columns,
  title: 'Paste a table of orders',
  hint: 'One transfer a row: order, transfer, width, height, qty, due, may turn. With a heading, also order number, customer, contact, e-mail, fabric and notes, in any order. Sizes may be written as 89 mm, 8,9 cm, 3.5in, 3 1/2" or 11 x 13 in.',
  label: 'Table',
  empty: 'Paste a table, or type rows separated by commas, semicolons or tabs.',
  size: 'Size',
  problem: problemOf,
  limits: (ways: Ways) =>
    `At most ${whole(MOST_ROWS, ways)} rows and ${whole(MOST_COLUMNS, ways)} columns are read at once, with ${whole(LONGEST_CELL, ways)} characters a cell.`,
  notShown: 'The table is too long to be typed over here. Mend it in the spreadsheet and open it again.',
  isRead: (share: string) => `${share} of the table is read`,
  stop: 'Stop reading',
  stopped: 'The table is not read. Nothing was added.',
  readAgain: 'Read it again',
  cellProblem,
  understood: (count: number, ways: Ways) => `${counted(count, 'row', 'rows', ways)} understood`,
  bad: (count: number, ways: Ways) => `${counted(count, 'row', 'rows', ways)} to mend`,
  mendAll: 'The same in several rows',
  readAs: (column: string, text: string) =>
    text === '' ? `Where “${column}” is empty, read` : `Read “${text}” under “${column}” as`,
  inRows: (count: number, ways: Ways) => `In ${counted(count, 'row', 'rows', ways)}`,
  isReadAs: (column: string, text: string, as: string) => `${column}: “${text}” is read as “${as}”.`,
  takeBack: 'Take back',
  row: 'Row',
  inDatesSuchAs: (date: string) => `In dates such as ${date}`,
  twoDays: (date: string) => `${date} could be two different days. Change it here if the other is meant.`,
  doubts: {
    'past-due': (count: number, ways: Ways) =>
      `${counted(count, 'row has', 'rows have', ways)} a due date that is past.`,
    'no-count': (count: number, ways: Ways) =>
      `${counted(count, 'row has', 'rows have', ways)} no quantity; one copy is taken.`,
    'no-height': (count: number, ways: Ways) =>
      `${counted(count, 'row has', 'rows have', ways)} no height; it follows the artwork, and until then is as much as the width.`,
  },
  onLines: (lines: readonly number[], more: number, ways: Ways) =>
    more > 0
      ? `(Rows ${lines.join(', ')} and ${whole(more, ways)} more)`
      : `(${lines.length === 1 ? 'Row' : 'Rows'} ${lines.join(', ')})`,
  badRow: (line: number) => `Row ${line}`,
  again: {
    title: (count: number, ways: Ways) => `${counted(count, 'row is', 'rows are', ways)} there already`,
    forAll: 'With all of them:',
    all: { skip: 'Skip all', replace: 'Replace all', add: 'Add all' },
    label: (line: number) => `What to do with row ${line}`,
    answers: {
      ask: 'choose',
      skip: 'skip the row',
      replace: 'replace what is there',
      add: 'add it as well',
    },
    inBook: (archived: boolean): string => (archived ? 'In the archive:' : 'In the orders:'),
    inRow: (line: number) => `In row ${line}:`,
    here: 'In this row:',
    copies: (count: number, ways: Ways) => copies(count, ways),
    inPrint: (least: number, count: number, ways: Ways) =>
      `It cannot be replaced by ${whole(count, ways)}: ${counted(least, 'copy is', 'copies are', ways)} printed or sent to print.`,
    open: (count: number, ways: Ways) =>
      `Choose what to do with ${counted(count, 'row that is', 'rows that are', ways)} there already.`,
  },
  add: ({ added, replaced, skipped }: TakenRows, ways: Ways) => {
    if (replaced > 0) {
      const replace = `replace ${transfers(replaced, ways)}`;
      return added > 0
        ? `Add ${whole(added, ways)}, ${replace}`
        : `${replace.charAt(0).toUpperCase()}${replace.slice(1)}`;
    }
    return added === 0 && skipped > 0 ? 'Leave all as it is' : `Add ${transfers(added, ways)}`;
  },
  added: ({ added, replaced, skipped }: TakenRows, bad: number, ways: Ways) =>
    [
      ...(added > 0 || replaced + skipped === 0 ? [`${transfers(added, ways)} added.`] : []),
      ...(replaced > 0 ? [`${transfers(replaced, ways)} replaced.`] : []),
      ...(skipped > 0 ? [`${counted(skipped, 'row', 'rows', ways)} skipped.`] : []),
      ...(bad > 0 ? [`${counted(bad, 'row', 'rows', ways)} left to mend are still in the box.`] : []),
    ].join(' '),
  unreadableFile: (name: string) =>
    `${name} is not a text table. Save the sheet as CSV (comma or semicolon separated) and open that.`,
};
