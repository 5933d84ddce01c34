import {
  type Book,
  copiesByTransfer,
  embeddedIn,
  garmentsByOrder,
  type Id,
  placementsByOrder,
  quotesOf,
  transfersByOrder,
} from '../model';
import { orderMarks } from './orders';
import { own } from './own';
import { type BookDraft, bookSoFar, type EditContext } from './step';

/** Copies that runs tell of, though they may no longer be in the book. */
const embedded = (book: Book): Set<string> =>
  new Set(
    Object.values(book.run)
      .flatMap(embeddedIn)
      .flatMap(({ copies }) => copies.map(({ id }) => id)),
  );

/** Gives records their ids anew where these are taken, the same one wherever it is asked for. */
function idsFor({ newId }: EditContext) {
  const given = new Map<string, string>();
  return <Kind extends string>(kind: Kind, id: Id<Kind>, isTaken: (id: string) => boolean): Id<Kind> => {
    const key = `${kind}/${id}`;
    const known = given.get(key) ?? (isTaken(id) ? newId<Kind>() : id);
    given.set(key, known);
    return known as Id<Kind>;
  };
}

/** Puts an image's record, and those of what it was made from, where they are not there. */
function bringArtwork(draft: BookDraft, from: Book, id: string | null): void {
  const artwork = id === null ? undefined : from.artwork[id];
  if (!artwork || draft.artwork[artwork.id]) return;
  draft.artwork[artwork.id] = own(artwork);
  bringArtwork(draft, from, artwork.madeFrom?.artwork ?? null);
}

/**
 * Brings orders back from a book as it was: each with its garments, places, transfers, quotes and the records of its images. Its copies come
 * as waiting, whatever had become of them. No other order is touched: what has an id or a code that is taken gets another.
 * @returns how many orders and copies came
 */
export function bringOrders(
  draft: BookDraft,
  from: Book,
  orders: Iterable<string>,
  context: EditContext,
): { orders: number; copies: number } {
  const { now } = context;
  const before = bookSoFar(draft);
  const idOf = idsFor(context);
  const fixed = embedded(before);
  const marks = orderMarks(draft);
  const garments = garmentsByOrder(from);
  const placements = placementsByOrder(from);
  const transfers = transfersByOrder(from);
  const copies = copiesByTransfer(from);
  const came = { orders: 0, copies: 0 };
  const garmentId = (id: Id<'garment'>) => idOf('garment', id, (each) => each in before.garment);
  const placementId = (id: Id<'placement'>) => idOf('placement', id, (each) => each in before.placement);

  for (const id of new Set(orders)) {
    const order = from.order[id];
    if (!order) continue;
    const orderId = idOf('order', order.id, (each) => each in before.order);
    draft.order[orderId] = {
      ...own(order),
      id: orderId,
      code: marks.keep(order.code, order.name),
      progress: 'open',
      archived: false,
      changed: now,
    };
    came.orders += 1;
    for (const garment of garments.get(id) ?? []) {
      const garmentOf = garmentId(garment.id);
      draft.garment[garmentOf] = { ...own(garment), id: garmentOf, order: orderId, changed: now };
    }
    for (const placement of placements.get(id) ?? []) {
      const placed = placementId(placement.id);
      draft.placement[placed] = { ...own(placement), id: placed, order: orderId, changed: now };
      bringArtwork(draft, from, placement.artwork);
    }
    for (const quote of quotesOf(from, id)) {
      const quoteId = idOf('quote', quote.id, (each) => each in before.quote);
      draft.quote[quoteId] = { ...own(quote), id: quoteId, order: orderId, changed: now };
    }
    for (const transfer of transfers.get(id) ?? []) {
      const transferId = idOf('transfer', transfer.id, (each) => each in before.transfer);
      const { garment, grid } = transfer;
      draft.transfer[transferId] = {
        ...own(transfer),
        id: transferId,
        order: orderId,
        garment: garment && garmentId(garment),
        grid: grid && { ...grid, placement: placementId(grid.placement) },
        changed: now,
      };
      bringArtwork(draft, from, transfer.artwork);
      for (const { id: copy, number, role } of copies.get(transfer.id) ?? []) {
        const copyId = idOf('copy', copy, (each) => each in before.copy || fixed.has(each));
        draft.copy[copyId] = {
          id: copyId,
          transfer: transferId,
          number,
          role,
          state: 'waiting',
          run: null,
          place: null,
          changed: now,
        };
        came.copies += 1;
      }
    }
  }
  return came;
}
