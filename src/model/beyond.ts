import { countBy } from '../units';
import type { Book } from './book';
import type { Copy } from './copy';

/** Ordered copies that some runs do not bring to the bag. */
export interface Beyond {
  /** Without a place on any film; those that were spoiled among them. */
  readonly waiting: number;
  /** On the film of other runs. */
  readonly elsewhere: number;
}

/** What of each order does not come with the runs that are meant; the book is looked through once for all orders. */
export function copiesBeyond(book: Book, isMeant: (run: string) => boolean): (order: string) => Beyond {
  const orderOf = ({ transfer }: Copy): string | undefined => book.transfer[transfer]?.order;
  const ordered = Object.values(book.copy).filter(({ role }) => role === 'ordered');
  const waiting = countBy(
    ordered.filter(({ state }) => state === 'waiting'),
    orderOf,
  );
  const elsewhere = countBy(
    ordered.filter((copy) => copy.state === 'placed' && (copy.run === null || !isMeant(copy.run))),
    orderOf,
  );
  return (order) => ({ waiting: waiting.get(order) ?? 0, elsewhere: elsewhere.get(order) ?? 0 });
}
