import type { Id, LedgerEntry } from '../model';
import { counterProblem, countersOf, itemOf, lastOf, leftOfFilm, unitOf } from '../stock';
import { um } from '../units';
import { type BookDraft, bookSoFar, type EditContext } from './step';

/** Why an amount changes, and for whom. */
export type Reason = Pick<LedgerEntry, 'kind'> & Partial<Pick<LedgerEntry, 'run' | 'order' | 'note'>>;

/** Changes what is left of a film, if the id is that of one; of nothing else is the sum kept. */
function shiftFilm(draft: BookDraft, id: string, amount: number): void {
  const film = draft.film[id];
  if (film?.kind === 'roll') film.lengthLeft = um(film.lengthLeft + amount);
  else if (film) film.sheetsLeft += amount;
}

/**
 * The one way an amount in stock changes: adds an entry, and keeps a film's running sum. No more leaves a film than it has; an
 * item may fall below nothing, which says that it has to be counted.
 * @returns the entry, or `null` where nothing changes or the item is gone
 */
export function enter(
  draft: BookDraft,
  id: string,
  amount: number,
  { kind, run = null, order = null, note = '' }: Reason,
  { newId, now }: EditContext,
): Id<'entry'> | null {
  const item = itemOf(draft, id);
  if (!item) return null;
  const film = draft.film[id];
  const change = film ? Math.max(amount, -leftOfFilm(film)) : amount;
  if (change === 0) return null;
  const entry = newId<'entry'>();
  draft.entry[entry] = {
    id: entry,
    item: item.id,
    name: item.name,
    unit: unitOf(item),
    kind,
    amount: change,
    run,
    order,
    counters: null,
    note,
    at: now,
    changed: now,
  };
  shiftFilm(draft, id, change);
  return entry;
}

/** Adds the entry that undoes another, or that undoes what undid it; the ledger alone. */
export function reverse(draft: BookDraft, id: string, { newId, now }: EditContext, note = ''): void {
  const first = draft.entry[id];
  if (!first) return;
  const last = lastOf(countersOf(draft.entry), first);
  const counter = newId<'entry'>();
  const { item, name, unit, amount, run, order } = last;
  draft.entry[counter] = {
    id: counter,
    item,
    name,
    unit,
    kind: 'counter',
    amount: -amount,
    run,
    order,
    counters: last.id,
    note,
    at: now,
    changed: now,
  };
}

/** Undoes an entry by another, and what is left of its film with it. The item is there; see `counterProblem`. */
export function counterEntry(draft: BookDraft, id: string, context: EditContext, note = ''): void {
  const entry = draft.entry[id];
  if (!entry) return;
  const last = lastOf(countersOf(draft.entry), entry);
  const { item, amount } = last;
  reverse(draft, id, context, note);
  shiftFilm(draft, item, -amount);
}

/** Undoes an entry by hand; nothing changes where a hand may not, see `counterProblem`. */
export function counterByHand(draft: BookDraft, id: string, context: EditContext): void {
  const stock = bookSoFar(draft);
  const entry = stock.entry[id];
  if (entry && counterProblem(stock, entry) === null) counterEntry(draft, id, context);
}
