import type { Book } from '../model';
import { amountOf } from '../stock';
import type { LocalDate } from '../units';

/** Something in stock whose best-before date is over. */
export interface PastDate {
  readonly id: string;
  readonly name: string;
  readonly lot: string;
  readonly bestBefore: LocalDate;
}

/** Film, ink and powder of which there is some left, past its best-before date; the oldest first. */
export function pastDate(book: Book, today: LocalDate): PastDate[] {
  return Object.values(book.item)
    .flatMap((item): PastDate[] => {
      const { id, lot, bestBefore } = item;
      const own = item.kind === 'film' ? book.film[id] : item;
      const isOver = bestBefore !== null && bestBefore < today;
      if (!own || own.archived || !isOver || (amountOf(book, id) ?? 0) <= 0) return [];
      return [{ id, name: own.name, lot, bestBefore }];
    })
    .sort((a, b) => a.bestBefore.localeCompare(b.bestBefore));
}
