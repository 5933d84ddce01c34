import { type Copy, type Id, isFixed, type Transfer } from '../model';
import { putBack } from './shelf';
import type { BookDraft, EditContext } from './step';

/** What is entered for a transfer; the count becomes copies. */
export type TransferFields = Pick<Transfer, 'name' | 'width' | 'height' | 'typed' | 'turn'> &
  Partial<Pick<Transfer, 'shade' | 'fabric' | 'garment' | 'grid'>>;

export function addTransfer(
  draft: BookDraft,
  order: Id<'order'>,
  fields: TransferFields,
  count: number,
  context: EditContext,
): Id<'transfer'> {
  const id = context.newId<'transfer'>();
  draft.transfer[id] = {
    id,
    order,
    shade: null,
    fabric: null,
    garment: null,
    grid: null,
    ...fields,
    artwork: null,
    meant: [],
    changed: context.now,
  };
  addCopies(draft, id, 'ordered', count, context);
  return id;
}

export function editTransfer(draft: BookDraft, id: string, fields: Partial<TransferFields>): void {
  const transfer = draft.transfer[id];
  if (!transfer) return;
  Object.assign(transfer, fields);
  if (transfer.typed.height === '') transfer.height = transfer.width;
}

const copiesOf = (draft: BookDraft, transfer: string): Copy[] =>
  Object.values(draft.copy).filter((copy) => copy.transfer === transfer);

/** Whether copies of a transfer are printed, or sent to print. */
export const inPrint = (draft: BookDraft, transfer: string): boolean =>
  copiesOf(draft, transfer).some((copy) => isFixed(draft, copy));

export const countOf = (draft: BookDraft, transfer: string, role: Copy['role']): number =>
  copiesOf(draft, transfer).filter((copy) => copy.role === role).length;

/** Adds copies that wait for a place, numbered on within the order. */
function addCopies(
  draft: BookDraft,
  transfer: Id<'transfer'>,
  role: Copy['role'],
  count: number,
  context: EditContext,
): void {
  const order = draft.order[draft.transfer[transfer]?.order ?? ''];
  if (!order) return;
  for (let added = 0; added < count; added += 1) {
    const id = context.newId<'copy'>();
    const number = order.nextNumber + added;
    draft.copy[id] = {
      id,
      transfer,
      number,
      role,
      state: 'waiting',
      run: null,
      place: null,
      changed: context.now,
    };
  }
  order.nextNumber += count;
}

/** Removes a copy; one that came from the shelf goes back there. */
function removeCopy(draft: BookDraft, copy: Copy): void {
  putBack(draft, copy);
  delete draft.copy[copy.id];
}

/**
 * Makes the copies of a transfer as many as are wanted. Of those too many, the ones that are not
 * placed go first, then the ones with the highest numbers; one that is printed, or sent to print, never.
 */
export function setCount(
  draft: BookDraft,
  id: Id<'transfer'>,
  count: number,
  context: EditContext,
  role: Copy['role'] = 'ordered',
): void {
  const own = copiesOf(draft, id).filter((copy) => copy.role === role);
  setCountOf(draft, id, own, count, context, role);
}

/** Does as {@link setCount}. @param own the copies that the transfer has of that role */
export function setCountOf(
  draft: BookDraft,
  id: Id<'transfer'>,
  own: readonly Copy[],
  count: number,
  context: EditContext,
  role: Copy['role'],
): void {
  addCopies(draft, id, role, Math.max(0, count - own.length), context);
  const removable = own
    .filter((copy) => !isFixed(draft, copy))
    .sort(
      (a, b) =>
        Number(a.place !== null) - Number(b.place !== null) ||
        Number(a.state === 'shelved') - Number(b.state === 'shelved') ||
        b.number - a.number,
    );
  for (const copy of removable.slice(0, Math.max(0, own.length - count))) removeCopy(draft, copy);
}

/** Removes a transfer with its copies; one with copies in print stays. */
export function removeTransfer(draft: BookDraft, id: string): void {
  if (inPrint(draft, id)) return;
  for (const copy of copiesOf(draft, id)) removeCopy(draft, copy);
  delete draft.transfer[id];
}
