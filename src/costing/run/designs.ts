import type { Book, Order, Transfer } from '../../model';

/** What makes two transfers one design: the image, whatever its size; without one each transfer is a design of its own. */
const designOf = ({ id, artwork }: Transfer): string => artwork ?? id;

const cache = new WeakMap<Book['transfer'], ReadonlyMap<string, ReadonlySet<string>>>();

/** The orders that have each design. */
function ordersByDesign(transfers: Book['transfer']): ReadonlyMap<string, ReadonlySet<string>> {
  const known = cache.get(transfers);
  if (known) return known;
  const orders = new Map<string, Set<string>>();
  for (const transfer of Object.values(transfers)) {
    const design = designOf(transfer);
    orders.set(design, (orders.get(design) ?? new Set()).add(transfer.order));
  }
  cache.set(transfers, orders);
  return orders;
}

const isDone = ({ progress, archived }: Order): boolean => progress !== 'open' || archived;

/**
 * How many designs of an order are new: those that no order which is done has, nor one at work whose code comes first. What was typed
 * on the order prevails.
 */
export function newDesigns(book: Pick<Book, 'order' | 'transfer'>, order: Order): number {
  if (order.pricing.newDesigns !== null) return order.pricing.newDesigns;
  const isBefore = (id: string): boolean => {
    const other = book.order[id];
    return (
      other !== undefined && id !== order.id && (isDone(other) ? !isDone(order) : other.code < order.code)
    );
  };
  let count = 0;
  for (const orders of ordersByDesign(book.transfer).values()) {
    if (orders.has(order.id) && ![...orders].some(isBefore)) count += 1;
  }
  return count;
}
