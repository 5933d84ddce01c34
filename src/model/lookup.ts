import type { Book } from './book';
import type { Copy, Film, Order, Run, Settings, Transfer } from './records';

const byDue = (a: Order, b: Order): number =>
  (a.due ?? '9999').localeCompare(b.due ?? '9999') || a.code.localeCompare(b.code);

/** Orders, soonest due first, those without a date last. */
export const ordersByDue = (book: Book): Order[] => Object.values(book.order).sort(byDue);

/** Groups by a key, in the order of the list. */
function groupBy<Item, Key>(items: Iterable<Item>, keyOf: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}

export const transfersByOrder = (book: Book): Map<string, Transfer[]> =>
  groupBy(Object.values(book.transfer), (transfer) => transfer.order);

/** The copies of each transfer, in the order of their numbers. */
export const copiesByTransfer = (book: Book): Map<string, Copy[]> =>
  groupBy(
    Object.values(book.copy).sort((a, b) => a.number - b.number),
    (copy) => copy.transfer,
  );

export const settingsOf = (book: Book): Settings | undefined => book.settings.shop;

/** The run that is being worked on and its film. */
export function draftOf(book: Book): { run: Run; film: Film } | undefined {
  const run = Object.values(book.run).find((candidate) => candidate.state === 'draft');
  const film = run && book.film[run.film];
  return film && { run, film };
}
