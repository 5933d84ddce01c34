import type { TableRow } from '../intake';
import { sameTransfer } from '../intake/repeats';
import { asEntered, type Book, copiesByTransfer, type Id, isFixed, type Transfer } from '../model';
import { groupBy, type LocalDate } from '../units';
import type { RowToAdd } from './import';
import { OrdersByName } from './orders-by-name';

/** What is done with a row that is there already: nothing, its count and date in place of what is there, or one more. */
export type Answer = 'skip' | 'replace' | 'add';

/** What was said of rows, by their {@link answerKey}. */
export type Answers = Readonly<Record<string, Answer>>;

/** A row that says again what is in the book, or in a row above: the same order, transfer and size. */
export interface RepeatedRow {
  readonly row: TableRow;
  /** What is there. */
  readonly was: {
    /** The row above that says it; `null` if it is in the book. */
    readonly row: number | null;
    readonly count: number;
    readonly due: LocalDate | null;
    readonly archived: boolean;
  };
  /** The transfer of the book that says it. */
  readonly transfer: Id<'transfer'> | null;
  /** When the order would be due by the table. */
  readonly due: LocalDate | null;
  /** How many copies of it are printed, or sent to print: it cannot be replaced by fewer. */
  readonly least: number;
  /** It says nothing else, so that to skip it loses nothing. */
  readonly isEqual: boolean;
}

/** Tells what was said of a row from what was said of another that has come to stand there. */
export const answerKey = ({ line, order, transfer, count, due }: TableRow): string =>
  JSON.stringify([line, order, transfer, count, due]);

const sooner = (a: LocalDate | null | undefined, b: LocalDate | null): LocalDate | null =>
  a && (b === null || a < b) ? a : b;

/** Whether two may be of one fabric: one that is not told may be any. */
const isOneFabric = (a: Transfer['fabric'], b: Transfer['fabric']): boolean =>
  a === null || b === null || a === b;

/**
 * The rows of a table that are there already. Of several lines that are the same, the first row is held against the first in the book
 * and so on, and a row beyond those in the book against the row above. The time is linear in book and table.
 */
export function repeatedRows(book: Book, rows: readonly TableRow[]): RepeatedRow[] {
  const orders = new OrdersByName(Object.values(book.order));
  const copies = copiesByTransfer(book);
  const keyOf = (order: string, transfer: string) => `${order} ${transfer}`;
  const inBook = groupBy(asEntered(Object.values(book.transfer)), (transfer) =>
    keyOf(transfer.order, sameTransfer(transfer)),
  );
  const dues = new Map<string, LocalDate | null>();
  const orderKey = (row: TableRow) => orders.of(row) ?? row.order;
  for (const row of rows) dues.set(orderKey(row), sooner(dues.get(orderKey(row)), row.due));
  const byLine = new Map<number, TableRow>();
  return rows.flatMap((row): RepeatedRow[] => {
    byLine.set(row.line, row);
    const id = orders.of(row);
    const order = id && book.order[id];
    const key = keyOf(orderKey(row), sameTransfer({ ...row, name: row.transfer }));
    const due = dues.get(orderKey(row)) ?? null;
    const same = inBook.get(key) ?? [];
    const transfer = same.find(({ fabric }) => isOneFabric(fabric, row.fabric));
    if (transfer) same.splice(same.indexOf(transfer), 1);
    if (order && transfer) {
      const ordered = (copies.get(transfer.id) ?? []).filter(({ role }) => role === 'ordered');
      const { archived } = order;
      return [
        {
          row,
          was: { row: null, count: ordered.length, due: order.due, archived },
          transfer: transfer.id,
          due: due ?? order.due,
          least: ordered.filter((copy) => isFixed(book, copy)).length,
          isEqual:
            ordered.length === row.count &&
            (due === null || due === order.due) &&
            (row.fabric === null || row.fabric === transfer.fabric),
        },
      ];
    }
    const above = row.repeats && byLine.get(row.repeats.line);
    if (!above) return [];
    return [
      {
        row,
        was: { row: above.line, count: above.count, due: above.due, archived: false },
        transfer: null,
        due: row.due,
        least: 0,
        isEqual: row.repeats?.isWhole ?? false,
      },
    ];
  });
}

/** The rows of a table as they are to be added, by what was said of those that are there already; a row of which nothing was said is left out. */
export function rowsToAdd(
  rows: readonly TableRow[],
  repeated: readonly RepeatedRow[],
  answers: Answers,
): RowToAdd[] {
  const repeatedAt = new Map(repeated.map((each) => [each.row.line, each]));
  const added: RowToAdd[] = [];
  /** What a row has come to: a place among those added, or a transfer of the book that stays as it is. */
  const became = new Map<number, number | Id<'transfer'>>();
  const add = (row: TableRow, replaces: RowToAdd['replaces']) => {
    became.set(row.line, added.length);
    added.push({ ...row, replaces });
  };
  for (const row of rows) {
    const each = repeatedAt.get(row.line);
    if (!each) {
      add(row, null);
      continue;
    }
    const answer = answers[answerKey(row)];
    const there = each.transfer ?? became.get(each.was.row ?? row.line);
    if (answer === 'add') add(row, null);
    else if (there === undefined) continue;
    else if (answer !== 'replace') became.set(row.line, there);
    else if (typeof there !== 'number') add({ ...row, due: each.due }, there);
    else {
      added[there] = { ...row, replaces: added[there]?.replaces ?? null };
      became.set(row.line, there);
    }
  }
  return added;
}
