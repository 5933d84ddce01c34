import type { Book, Order } from '../../model';
import { onlyFields } from '../../units';

const COSTED_BY = ['id', 'code', 'wants', 'supplied', 'pricing', 'progress', 'archived'] as const;

/** What of an order tells what it costs. */
export type CostedOrder = Pick<Order, (typeof COSTED_BY)[number]>;

/** All of a book that the costs of a laid run are reckoned from. */
export interface CostedBook extends Pick<Book, 'transfer' | 'copy' | 'garment' | 'spoilage'> {
  readonly order: Readonly<Record<string, CostedOrder>>;
}

/** What of a book's orders tells what they cost; the same as long as that is. */
export const costedOrders = onlyFields<Order, (typeof COSTED_BY)[number]>(COSTED_BY);
