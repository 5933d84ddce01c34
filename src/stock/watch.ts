import { asEntered, type Book, type Film, type StockItem, type Supply } from '../model';
import type { LocalDate } from '../units';
import { leftOfFilm, sumsOf } from './amount';

/** Why an item is said to want a look. */
export type Warning = 'below-reorder' | 'past-best-before' | 'below-nothing';

/** What is noted of an item's box; nothing of a film that nobody has noted anything of. */
export const boxOf = (book: Pick<Book, 'item'>, id: string): StockItem | null => book.item[id] ?? null;

function warningsOf(amount: number, box: StockItem | null, today: LocalDate): Warning[] {
  const warnings: Warning[] = [];
  if (amount < 0) warnings.push('below-nothing');
  else if (box !== null && box.reorder !== null && amount < box.reorder) warnings.push('below-reorder');
  if (box !== null && box.bestBefore !== null && box.bestBefore < today && amount > 0)
    warnings.push('past-best-before');
  return warnings;
}

/** Something in stock, how much there is of it, and what is to be said. */
export interface Stocked {
  readonly item: Film | Supply;
  readonly box: StockItem | null;
  readonly amount: number;
  readonly warnings: readonly Warning[];
}

/** All that is in stock and not put away: films first, then supplies. */
export function stocked(book: Book, today: LocalDate): Stocked[] {
  const sums = sumsOf(book.entry);
  const films = asEntered(Object.values(book.film)).map((item) => ({ item, amount: leftOfFilm(item) }));
  const supplies = asEntered(Object.values(book.item)).flatMap((item) =>
    item.kind === 'film' ? [] : [{ item, amount: sums.get(item.id) ?? 0 }],
  );
  return [...films, ...supplies]
    .filter(({ item }) => !item.archived)
    .map(({ item, amount }) => {
      const box = boxOf(book, item.id);
      return { item, box, amount, warnings: warningsOf(amount, box, today) };
    });
}

/** Films and other items that were put away, by name. */
export const putAway = ({ film, item }: Pick<Book, 'film' | 'item'>): (Film | Supply)[] =>
  [...Object.values(film), ...Object.values(item).filter((each): each is Supply => each.kind !== 'film')]
    .filter(({ archived }) => archived)
    .sort((a, b) => a.name.localeCompare(b.name, undefined, { numeric: true }));
