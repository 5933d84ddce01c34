import type { Book, Transfer } from '../../model';
import { onceFor } from '../../units';
import type { CostedBook, CostedOrder } from './costed';

/** What makes two transfers one design: the image, whatever its size; without one each transfer is a design of its own. */
const designOf = ({ id, artwork }: Transfer): string => artwork ?? id;

/** The orders that have each design, and the designs of each order. */
interface Designs {
  readonly ordersOf: ReadonlyMap<string, ReadonlySet<string>>;
  readonly of: ReadonlyMap<string, ReadonlySet<string>>;
}

const designsIn = onceFor((transfers: Book['transfer']): Designs => {
  const ordersOf = new Map<string, Set<string>>();
  const of = new Map<string, Set<string>>();
  for (const transfer of Object.values(transfers)) {
    const design = designOf(transfer);
    ordersOf.set(design, (ordersOf.get(design) ?? new Set()).add(transfer.order));
    of.set(transfer.order, (of.get(transfer.order) ?? new Set()).add(design));
  }
  return { ordersOf, of };
});

const isDone = ({ progress, archived }: CostedOrder): boolean => progress !== 'open' || archived;

/**
 * How many designs of an order are new: those that no order which is done has, nor one at work whose code comes first. What was typed
 * on the order prevails.
 */
export function newDesigns(book: Pick<CostedBook, 'order' | 'transfer'>, order: CostedOrder): number {
  if (order.pricing.newDesigns !== null) return order.pricing.newDesigns;
  const isBefore = (id: string): boolean => {
    const other = book.order[id];
    return (
      other !== undefined && id !== order.id && (isDone(other) ? !isDone(order) : other.code < order.code)
    );
  };
  const { ordersOf, of } = designsIn(book.transfer);
  const own = [...(of.get(order.id) ?? [])];
  return own.filter((design) => ![...(ordersOf.get(design) ?? [])].some(isBefore)).length;
}
