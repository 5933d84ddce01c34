import {
  type Book,
  copiesByTransfer,
  isFixed,
  type Order,
  type OrderState,
  orderStates,
  ordersByDue,
  ordersOnFilm,
  type Transfer,
  transfersByOrder,
} from '../../src/model';
import { withoutAccents } from '../../src/units';

export type Sorting = 'due' | 'name' | 'state';

/** A line of the list: an order's head, one of its transfers, or the place to add one. */
export type OrderLine = { readonly key: string; readonly order: Order } & (
  | { readonly kind: 'head'; readonly state: OrderState; readonly empty: boolean }
  | {
      readonly kind: 'transfer';
      readonly transfer: Transfer;
      readonly count: number;
      readonly spare: number;
      readonly placed: number;
      /** Ordered copies that are printed, or sent to print. */
      readonly fixed: number;
    }
  | { readonly kind: 'add' | 'space' }
);

/** A text as it is searched in: letters' case and accents aside. */
export const searchable = (text: string): string => withoutAccents(text).toLocaleLowerCase();

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
  const states = orderStates(book);
  const transfers = transfersByOrder(book);
  const copies = copiesByTransfer(book);
  const wanted = searchable(search.trim());
  const found = (...texts: string[]) => texts.some((text) => searchable(text).includes(wanted));
  const inArchive = Object.values(ordersOnFilm(book)).filter((order) => order.archived);
  const shown = archived ? inArchive : [...ordersByDue(book), ...(wanted === '' ? [] : inArchive)];
  const stateOf = (order: Order): OrderState => states.get(order.id) ?? 'ready';
  if (sorting === 'name') shown.sort((a, b) => a.name.localeCompare(b.name));
  if (sorting === 'state') {
    shown.sort((a, b) => stateOrder.indexOf(stateOf(a)) - stateOrder.indexOf(stateOf(b)));
  }
  const rank = (order: Order) => (order.id === first ? 0 : order.archived ? 2 : 1);
  shown.sort((a, b) => rank(a) - rank(b));
  return shown.flatMap((order): OrderLine[] => {
    const own = transfers.get(order.id) ?? [];
    const whole = found(order.name, order.code, book.order[order.id]?.code ?? '', order.contact, order.notes);
    const listed = whole ? own : own.filter(({ name }) => found(name));
    if (!whole && listed.length === 0) return [];
    return [
      { kind: 'head', key: order.id, order, state: stateOf(order), empty: own.length === 0 },
      ...listed.map((transfer): OrderLine => {
        const all = copies.get(transfer.id) ?? [];
        const ordered = all.filter(({ role }) => role === 'ordered');
        return {
          kind: 'transfer',
          key: transfer.id,
          order,
          transfer,
          count: ordered.length,
          spare: all.length - ordered.length,
          placed: all.filter(({ place }) => place !== null).length,
          fixed: ordered.filter((copy) => isFixed(book, copy)).length,
        };
      }),
      { kind: 'add', key: `${order.id} add`, order },
      { kind: 'space', key: `${order.id} space`, order },
    ];
  });
}
