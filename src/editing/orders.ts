import { type Id, type Order, TINTS } from '../model';
import { withoutAccents } from '../units';
import type { BookDraft, EditContext } from './step';
import { addTransfer, countOf, inPrint, removeTransfer, setCount } from './transfers';

/** Letters that stand for a name: the initials, or the first letters of a single word. */
function initials(name: string): string {
  const words = withoutAccents(name)
    .toUpperCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
  const letters = words.length > 1 ? words.map((word) => word[0]).join('') : (words[0] ?? '');
  return letters.slice(0, 2).padEnd(2, 'X');
}

/** Hands out what tells orders apart, each order of the book looked at once however many are added. */
interface OrderMarks {
  /** A code not yet in the book: the initials, then with another letter or a figure behind. */
  code(name: string): string;
  /** The tint fewest orders have. */
  tint(): number;
}

export function orderMarks(draft: BookDraft): OrderMarks {
  const taken = new Set<string>();
  const uses = new Array<number>(TINTS).fill(0);
  for (const { code, tint } of Object.values(draft.order)) {
    taken.add(code);
    uses[tint] = (uses[tint] ?? 0) + 1;
  }
  const tried = new Map<string, number>();
  return {
    code(name) {
      const base = initials(name);
      let [code, number] = [base, tried.get(base) ?? 1];
      while (taken.has(code)) {
        number += 1;
        code = `${base}${number}`.length > 4 ? `${base[0]}${number}` : `${base}${number}`;
      }
      tried.set(base, number);
      taken.add(code);
      return code;
    },
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
    fabric: 'cotton',
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

export function editOrder(draft: BookDraft, id: string, fields: Partial<OrderFields>): void {
  const order = draft.order[id];
  if (order) Object.assign(order, fields);
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

/** Adds an order like another: its transfers and as many copies, none of them placed. */
export function duplicateOrder(draft: BookDraft, id: string, name: string, context: EditContext): void {
  const order = draft.order[id];
  if (!order) return;
  const { contact, notes, handover, fabric, wants, supplied, pricing } = order;
  const copyOf = addOrder(draft, { name, due: null }, context);
  editOrder(draft, copyOf, {
    contact,
    notes,
    handover,
    fabric,
    wants,
    supplied,
    // Its designs are no longer new.
    pricing: { ...pricing, newDesigns: null },
  });
  for (const transfer of Object.values(draft.transfer)) {
    if (transfer.order !== id) continue;
    const { name: title, width, height, typed, turn, artwork, shade } = transfer;
    const added = addTransfer(draft, copyOf, { name: title, width, height, typed, turn, shade }, 0, context);
    const own = draft.transfer[added];
    if (own) own.artwork = artwork;
    for (const role of ['ordered', 'over', 'filler'] as const) {
      setCount(draft, added, countOf(draft, transfer.id, role), context, role);
    }
  }
}
