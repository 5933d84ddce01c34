import type { Artwork, Id, Transfer } from '../model';
import type { BookDraft, EditContext } from './step';

/** What is entered for a transfer; the count becomes copies. */
export type TransferFields = Pick<Transfer, 'name' | 'width' | 'height' | 'typed' | 'turn'>;

export function addTransfer(
  draft: BookDraft,
  order: Id<'order'>,
  fields: TransferFields,
  count: number,
  context: EditContext,
): Id<'transfer'> {
  const id = context.newId() as Id<'transfer'>;
  draft.transfer[id] = { id, order, ...fields, artwork: null, changed: context.now };
  addCopies(draft, id, count, context);
  return id;
}

export function editTransfer(draft: BookDraft, id: string, fields: Partial<TransferFields>): void {
  const transfer = draft.transfer[id];
  if (transfer) Object.assign(transfer, fields);
}

/** Adds copies that wait for a place, numbered on within the order. */
function addCopies(draft: BookDraft, transferId: Id<'transfer'>, count: number, context: EditContext): void {
  const order = draft.order[draft.transfer[transferId]?.order ?? ''];
  if (!order) return;
  for (let added = 0; added < count; added += 1) {
    const id = context.newId() as Id<'copy'>;
    draft.copy[id] = {
      id,
      transfer: transferId,
      number: order.nextNumber + added,
      place: null,
      changed: context.now,
    };
  }
  order.nextNumber += count;
}

/**
 * Makes the copies of a transfer as many as are wanted. Of those too many, the ones that are not
 * placed go first, then the ones with the highest numbers.
 */
export function setCount(draft: BookDraft, id: Id<'transfer'>, count: number, context: EditContext): void {
  const own = Object.values(draft.copy).filter((copy) => copy.transfer === id);
  addCopies(draft, id, Math.max(0, count - own.length), context);
  own.sort((a, b) => Number(a.place !== null) - Number(b.place !== null) || b.number - a.number);
  for (const copy of own.slice(0, Math.max(0, own.length - count))) delete draft.copy[copy.id];
}

export function removeTransfer(draft: BookDraft, id: string): void {
  for (const copy of Object.values(draft.copy)) if (copy.transfer === id) delete draft.copy[copy.id];
  delete draft.transfer[id];
}

/** Gives a transfer its artwork; its printed size stays what it was. */
export function setArtwork(draft: BookDraft, id: string, artwork: Artwork): void {
  const transfer = draft.transfer[id];
  if (!transfer) return;
  draft.artwork[artwork.id] = artwork;
  transfer.artwork = artwork.id;
}
