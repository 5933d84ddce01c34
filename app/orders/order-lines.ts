import {
  type Book,
  copiesByTransfer,
  isFixed,
  type Order,
  type OrderState,
  orderState,
  ordersByDue,
  ordersOnFilm,
  type Transfer,
  transfersByOrder,
} from '../../src/model';
import { onceFor, withoutAccents } from '../../src/units';

export type Sorting = 'due' | 'name' | 'state';

/** A line of the list: an order's head, one of its transfers, or the place to add one. */
export type OrderLine = { readonly key: string; readonly order: Order } & (
  | { readonly kind: 'head'; readonly empty: boolean }
  | { readonly kind: 'transfer'; readonly transfer: Transfer }
  | { readonly kind: 'add' | 'space' }
);

/** A text as it is searched in: letters' case and accents aside. */
export const searchable = (text: string): string => withoutAccents(text).toLocaleLowerCase();

/** What an order and a transfer are found by: texts of one line each, or several. */
const textOf = {
  order: onceFor(({ name, code, contact, notes }: Order) =>
    searchable([name, code, contact, notes].join('\n')),
  ),
  transfer: onceFor(({ name }: Transfer) => searchable(name)),
};

/** How many copies of a transfer there are, how many lie on film, and how many of those ordered are printed, or sent to print. */
export function copyCounts(book: Book, transfer: string) {
  const all = copiesByTransfer(book).get(transfer) ?? [];
  const ordered = all.filter(({ role }) => role === 'ordered');
  return {
    ordered: ordered.length,
    spare: all.length - ordered.length,
    placed: all.filter(({ place }) => place !== null).length,
    fixed: ordered.filter((copy) => isFixed(book, copy)).length,
  };
}

const stateOrder: readonly OrderState[] = [
  'waiting',
  'ready',
  'in-run',
  'part-done',
  'printed',
  'packed',
  'collected',
];

/**
 * The orders and transfers that hold what is searched for, in the order asked for; what is searched for is looked for in the archive
 * too, behind those at work.
 * @param first the order that was just added, before all others
 */
export function orderLines(
  book: Book,
  {
    search,
    sorting,
    archived,
    first,
  }: { search: string; sorting: Sorting; archived: boolean; first: string | null },
): OrderLine[] {
  const transfers = transfersByOrder(book);
  const wanted = searchable(search.trim());
  const inArchive = Object.values(ordersOnFilm(book)).filter((order) => order.archived);
  const shown = archived ? inArchive : [...ordersByDue(book), ...(wanted === '' ? [] : inArchive)];
  if (sorting === 'name') shown.sort((a, b) => a.name.localeCompare(b.name));
  if (sorting === 'state') {
    const places = new Map(shown.map((order) => [order, stateOrder.indexOf(orderState(book, order))]));
    const placeOf = (order: Order): number => places.get(order) ?? 0;
    shown.sort((a, b) => placeOf(a) - placeOf(b));
  }
  const added = shown.filter(({ id }) => id === first);
  const others = shown.filter(({ id }) => id !== first);
  const atWork = others.filter((order) => !order.archived);
  const behind = others.filter((order) => order.archived);
  return [...added, ...atWork, ...behind].flatMap((order): OrderLine[] => {
    const own = transfers.get(order.id) ?? [];
    // By the code that stands on film, and by its own.
    const asStored = book.order[order.id] ?? order;
    const whole =
      textOf.order(order).includes(wanted) || (asStored !== order && textOf.order(asStored).includes(wanted));
    const listed = whole ? own : own.filter((transfer) => textOf.transfer(transfer).includes(wanted));
    if (!whole && listed.length === 0) return [];
    return [
      { kind: 'head', key: order.id, order, empty: own.length === 0 },
      ...listed.map((transfer): OrderLine => ({ kind: 'transfer', key: transfer.id, order, transfer })),
      { kind: 'add', key: `${order.id} add`, order },
      { kind: 'space', key: `${order.id} space`, order },
    ];
  });
}
