import type { TableRow } from '../intake';
import { copiesByTransfer, type Id, isFixed } from '../model';
import { addMarkedOrder, orderMarks, tellFabric } from './orders';
import { OrdersByName } from './orders-by-name';
import { type BookDraft, bookSoFar, type EditContext } from './step';
import { addTransfer, setCountOf } from './transfers';

/** A row of a table, and the transfer of the book whose count and date it replaces, if it is not to be one more. */
export interface RowToAdd extends TableRow {
  readonly replaces: Id<'transfer'> | null;
}

/** What is said already, and what is said besides. */
function withSaid(had: string, said: string, between: string): string {
  if (had === '') return said;
  return had.toLocaleLowerCase().includes(said.toLocaleLowerCase()) ? had : `${had}${between}${said}`;
}

/**
 * Adds the rows of a table as transfers. A row joins the order of its name, letters' case aside, or of its number; one from the
 * archive is at work again, and one that is not there yet is added. Its due date is the soonest of its rows; contact and notes are added
 * to what it has. A row that replaces a transfer sets its count, unless more are in print, its fabric where it tells one, and the
 * order's date, also to a later one.
 */
export function addRows(draft: BookDraft, rows: readonly RowToAdd[], context: EditContext): void {
  const orders = new OrdersByName(Object.values(draft.order));
  const marks = orderMarks(draft);
  replaceByRows(draft, rows, context);
  for (const row of rows) {
    if (row.replaces !== null) continue;
    const name = row.order.trim();
    const id = orders.of(row) ?? addMarkedOrder(draft, { name, due: row.due }, context, marks);
    orders.add({ id, name });
    tell(draft, id, row);
    const { transfer, width, height, typed, turn, fabric, count } = row;
    addTransfer(draft, id, { name: transfer, width, height, typed, turn, fabric }, count, context);
  }
}

/** Puts count and date of rows in place of those of transfers; the copies of the book are looked through once. */
function replaceByRows(draft: BookDraft, rows: readonly RowToAdd[], context: EditContext): void {
  if (rows.every(({ replaces }) => replaces === null)) return;
  const book = bookSoFar(draft);
  const copies = copiesByTransfer(book);
  for (const row of rows) {
    const transfer = row.replaces === null ? undefined : book.transfer[row.replaces];
    const order = transfer && draft.order[transfer.order];
    if (!order) continue;
    const own = (copies.get(transfer.id) ?? []).filter(({ role }) => role === 'ordered');
    if (own.filter((copy) => isFixed(book, copy)).length > row.count) continue;
    if (row.due !== null) order.due = row.due;
    if (row.fabric !== null) tellFabric(draft, [transfer.id], row.fabric);
    tell(draft, order.id, row);
    setCountOf(draft, transfer.id, own, row.count, context, 'ordered');
  }
}

/** Says of an order what a row says of it. */
function tell(draft: BookDraft, id: Id<'order'>, { due, contact, notes }: TableRow): void {
  const order = draft.order[id];
  if (!order) return;
  order.archived = false;
  if (due !== null && (order.due === null || due < order.due)) order.due = due;
  order.contact = withSaid(order.contact, contact, ', ');
  order.notes = withSaid(order.notes, notes, '\n');
}
