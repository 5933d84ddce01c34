import type { Book } from './book';
import { copiesOfOrder, isFixed, isPrinted } from './lookup';
import type { Order } from './records';

/** How far an order is. `ready` may be laid out; `part-done` has some copies printed, `printed` all. */
export type OrderState = 'waiting' | 'ready' | 'in-run' | 'part-done' | 'printed' | 'packed' | 'collected';

/** The state of an order: what was said of it, and else what its copies tell. */
export function orderState(book: Book, order: Order): OrderState {
  if (order.progress !== 'open') return order.progress;
  const own = copiesOfOrder(book, order.id);
  const wanted = own.filter(({ role }) => role !== 'filler');
  const printed = wanted.filter((copy) => {
    const run = copy.run === null ? undefined : book.run[copy.run];
    return (
      copy.state === 'shelved' ||
      (run !== undefined && isPrinted(run)) ||
      (copy.place !== null && copy.place.y < (run?.printed?.to ?? 0))
    );
  });
  if (wanted.length > 0 && printed.length === wanted.length) return 'printed';
  if (printed.length > 0) return 'part-done';
  if (own.some((copy) => copy.place !== null || isFixed(book, copy))) return 'in-run';
  return order.awaits.proof || order.awaits.blanks ? 'waiting' : 'ready';
}
