import { type Id, type Order, TINTS } from '../model';
import type { BookDraft, EditContext } from './step';
import { removeTransfer } from './transfers';

/** Letters that stand for a name: the initials, or the first letters of a single word. */
function initials(name: string): string {
  const words = name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toUpperCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
  const letters = words.length > 1 ? words.map((word) => word[0]).join('') : (words[0] ?? '');
  return letters.slice(0, 2).padEnd(2, 'X');
}

/** A code not yet in the book: the initials, then with another letter or a figure behind. */
function freeCode(draft: BookDraft, name: string): string {
  const taken = new Set(Object.values(draft.order).map((order) => order.code));
  const base = initials(name);
  if (!taken.has(base)) return base;
  for (let number = 2; ; number += 1) {
    const code = `${base}${number}`.length > 4 ? `${base[0]}${number}` : `${base}${number}`;
    if (!taken.has(code)) return code;
  }
}

/** The tint fewest orders have. */
function freeTint(draft: BookDraft): number {
  const uses = new Array<number>(TINTS).fill(0);
  for (const order of Object.values(draft.order)) uses[order.tint] = (uses[order.tint] ?? 0) + 1;
  return uses.indexOf(Math.min(...uses));
}

/** Adds an order with a code and a tint of its own. */
export function addOrder(
  draft: BookDraft,
  fields: { name: string; due: Order['due']; code?: string },
  { newId, now }: EditContext,
): Id<'order'> {
  const id = newId() as Id<'order'>;
  const code = fields.code ?? freeCode(draft, fields.name);
  draft.order[id] = {
    id,
    code,
    name: fields.name,
    due: fields.due,
    tint: freeTint(draft),
    nextNumber: 1,
    changed: now,
  };
  return id;
}

export function editOrder(
  draft: BookDraft,
  id: string,
  fields: Partial<Pick<Order, 'name' | 'due' | 'code'>>,
): void {
  const order = draft.order[id];
  if (order) Object.assign(order, fields);
}

/** Removes an order with its transfers and their copies. */
export function removeOrder(draft: BookDraft, id: string): void {
  for (const transfer of Object.values(draft.transfer)) {
    if (transfer.order === id) removeTransfer(draft, transfer.id);
  }
  delete draft.order[id];
}
