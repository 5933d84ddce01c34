import type { Book } from './book';
import { embeddedIn } from './run';

type Orders = Book['order'];

const known = new WeakMap<Book['run'], { readonly of: Orders; readonly orders: Orders }>();

/**
 * The orders of a book, each under the code that it goes by: while copies of it are in print or on film of a run that is not closed,
 * the one that stands there, whatever code it was given since; then its own. The book's own collection where all are alike, and the
 * same object as long as orders and runs are.
 */
export function ordersOnFilm({ order: orders, run: runs }: Pick<Book, 'order' | 'run'>): Orders {
  const last = known.get(runs);
  if (last?.of === orders) return last.orders;
  const renamed: Record<string, Orders[string]> = {};
  for (const run of Object.values(runs)) {
    if (run.received || run.state === 'closed') continue;
    for (const { id, code } of embeddedIn(run).flatMap((snapshot) => snapshot.orders)) {
      const order = orders[id];
      if (order && order.code !== code && !renamed[id]) renamed[id] = { ...order, code };
    }
  }
  const shown = Object.keys(renamed).length === 0 ? orders : { ...orders, ...renamed };
  known.set(runs, { of: orders, orders: shown });
  return shown;
}
