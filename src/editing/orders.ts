import {
  commonFabric,
  type FabricLineId,
  type Garment,
  type Id,
  linesFor,
  type Order,
  TINTS,
  type Transfer,
  tellsFabric,
} from '../model';
import { Codes, isMadeFor, takenCodes } from './codes';
import type { BookDraft, EditContext } from './step';
import { addTransfer, countOf, inPrint, removeTransfer, setCount } from './transfers';

/** Hands out what tells orders apart, each order of the book looked at once however many are added. */
interface OrderMarks {
  /** A code made for a name, which begins like none of an order at work, nor they like it. */
  code(name: string): string;
  /** The code that an order came with, if it does as well. */
  keep(code: string, name: string): string;
  /** The first tint that no order at work has, or that fewest have. */
  tint(): number;
}

/** Marks for orders to come. @param but an order that is looked past */
export function orderMarks(draft: BookDraft, but?: string): OrderMarks {
  const codes = new Codes(takenCodes(draft, but));
  const uses = new Array<number>(TINTS).fill(0);
  for (const { id, tint, archived } of Object.values(draft.order)) {
    if (id !== but && !archived) uses[tint] = (uses[tint] ?? 0) + 1;
  }
  return {
    code: (name) => codes.take(name),
    keep: (code, name) => codes.keep(code, name),
    tint() {
      const least = uses.indexOf(Math.min(...uses));
      uses[least] = (uses[least] ?? 0) + 1;
      return least;
    },
  };
}

/** What an order begins with. */
interface NewOrder {
  name: string;
  due: Order['due'];
  code?: string;
}

/** Adds an order with a code and a tint of its own. */
export const addOrder = (draft: BookDraft, fields: NewOrder, context: EditContext): Id<'order'> =>
  addMarkedOrder(draft, fields, context, orderMarks(draft));

/** Adds one of several orders, which take their codes and tints from the same marks. */
export function addMarkedOrder(
  draft: BookDraft,
  fields: NewOrder,
  { newId, now }: EditContext,
  marks: OrderMarks,
): Id<'order'> {
  const id = newId<'order'>();
  const code = fields.code ?? marks.code(fields.name);
  draft.order[id] = {
    id,
    code,
    name: fields.name,
    contact: '',
    notes: '',
    due: fields.due,
    dueTime: null,
    rush: false,
    awaits: { proof: false, blanks: false },
    handover: 'collect',
    wants: 'garments',
    supplied: false,
    pricing: { aim: null, newDesigns: null, discount: 0 },
    progress: 'open',
    archived: false,
    tint: marks.tint(),
    nextNumber: 1,
    changed: now,
  };
  return id;
}

/** What of an order is typed or ticked. */
export type OrderFields = Omit<Order, 'id' | 'tint' | 'nextNumber' | 'changed'>;

/** Changes an order. A code that was made for its name follows a new name, as long as nothing of the order is in print. */
export function editOrder(draft: BookDraft, id: string, fields: Partial<OrderFields>): void {
  const order = draft.order[id];
  if (!order) return;
  const { name, code } = fields;
  if (name !== undefined && code === undefined && mayFollow(draft, order, name)) {
    order.code = orderMarks(draft, id).code(name);
  }
  Object.assign(order, fields);
}

/** Whether an order's code is to follow its name: it was made for the one it has, and would not be for the new one. */
function mayFollow(draft: BookDraft, { id, code, name }: Order, next: string): boolean {
  if (!isMadeFor(code, name) || isMadeFor(code, next)) return false;
  return !Object.values(draft.transfer).some((own) => own.order === id && inPrint(draft, own.id));
}

/** Removes an order with its transfers, garments and their copies; one with copies in print stays. */
export function removeOrder(draft: BookDraft, id: string): void {
  const own = Object.values(draft.transfer).filter((transfer) => transfer.order === id);
  if (own.some((transfer) => inPrint(draft, transfer.id))) return;
  for (const transfer of own) removeTransfer(draft, transfer.id);
  for (const garment of Object.values(draft.garment))
    if (garment.order === id) delete draft.garment[garment.id];
  for (const placement of Object.values(draft.placement)) {
    if (placement.order === id) delete draft.placement[placement.id];
  }
  for (const quote of Object.values(draft.quote)) {
    if (quote.order === id) delete draft.quote[quote.id];
  }
  delete draft.order[id];
}

/** What a transfer goes on: what it tells by itself, or what all garments do that it is for. */
function fabricOf(draft: BookDraft, transfer: Transfer): Transfer['fabric'] {
  const lines = Object.values(draft.garment).filter(({ order }) => order === transfer.order);
  const own = linesFor(draft, transfer, lines);
  return own ? commonFabric(own) : transfer.fabric;
}

/** Tells what lines are made of, garments of orders or transfers that are listed by hand. */
export function tellFabric(
  draft: BookDraft,
  lines: readonly FabricLineId[],
  fabric: Garment['fabric'],
): void {
  for (const id of lines) {
    const transfer = draft.transfer[id];
    const line = draft.garment[id] ?? (transfer && tellsFabric(transfer) ? transfer : undefined);
    if (line) line.fabric = fabric;
  }
}

/**
 * Adds an order like another: its transfers and as many copies, none of them placed.
 * @returns the order that was added; `null` if there is none like it
 */
export function duplicateOrder(
  draft: BookDraft,
  id: string,
  name: string,
  context: EditContext,
): Id<'order'> | null {
  const order = draft.order[id];
  if (!order) return null;
  const { contact, notes, handover, wants, supplied, pricing } = order;
  const copyOf = addOrder(draft, { name, due: null }, context);
  editOrder(draft, copyOf, {
    contact,
    notes,
    handover,
    wants,
    supplied,
    // Its designs are no longer new.
    pricing: { ...pricing, newDesigns: null },
  });
  for (const transfer of Object.values(draft.transfer)) {
    if (transfer.order !== id) continue;
    const { name: title, width, height, typed, turn, artwork, shade } = transfer;
    const fabric = fabricOf(draft, transfer);
    const fields = { name: title, width, height, typed, turn, shade, fabric };
    const added = addTransfer(draft, copyOf, fields, 0, context);
    const own = draft.transfer[added];
    if (own) own.artwork = artwork;
    for (const role of ['ordered', 'over', 'filler'] as const) {
      setCount(draft, added, countOf(draft, transfer.id, role), context, role);
    }
  }
  return copyOf;
}
