import type { TableRow } from '../intake';
import type { Id, Order } from '../model';
import { addMarkedOrder, orderMarks } from './orders';
import type { BookDraft, EditContext } from './step';
import { addTransfer } from './transfers';

const keyOf = (name: string): string => name.trim().toLocaleLowerCase();

/** What is said already, and what is said besides. */
function withSaid(had: string, said: string, between: string): string {
  if (had === '') return said;
  return had.toLocaleLowerCase().includes(said.toLocaleLowerCase()) ? had : `${had}${between}${said}`;
}

/**
 * Adds the rows of a table as transfers. A row joins the order of its name (letters' case aside), and an
 * order that is not there yet is added. Its due date is the soonest of its rows; contact and notes are added to what it has.
 */
export function addRows(draft: BookDraft, rows: readonly TableRow[], context: EditContext): void {
  const orders = new Map<string, Id<'order'>>();
  for (const order of Object.values(draft.order) as Order[]) orders.set(keyOf(order.name), order.id);
  const marks = orderMarks(draft);
  for (const row of rows) {
    const key = keyOf(row.order);
    const id =
      orders.get(key) ?? addMarkedOrder(draft, { name: row.order.trim(), due: row.due }, context, marks);
    orders.set(key, id);
    const order = draft.order[id];
    if (order) {
      if (row.due !== null && (order.due === null || row.due < order.due)) order.due = row.due;
      order.contact = withSaid(order.contact, row.contact, ', ');
      order.notes = withSaid(order.notes, row.notes, '\n');
    }
    const { transfer: name, width, height, typed, turn, count } = row;
    addTransfer(draft, id, { name, width, height, typed, turn }, count, context);
  }
}
