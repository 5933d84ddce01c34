import type { Book, LedgerEntry } from '../model';
import { amountOf, itemOf, type Stock } from './amount';

/** For each entry that another undoes, the other. */
export function countersOf(ledger: Book['entry']): ReadonlyMap<string, LedgerEntry> {
  const counters = new Map<string, LedgerEntry>();
  for (const entry of Object.values(ledger)) if (entry.counters) counters.set(entry.counters, entry);
  return counters;
}

/** An entry, what undoes it, what undoes that, and so on. */
function chainOf(counters: ReadonlyMap<string, LedgerEntry>, first: LedgerEntry): readonly LedgerEntry[] {
  const chain = [first];
  for (let next = counters.get(first.id); next; next = counters.get(next.id)) chain.push(next);
  return chain;
}

/** Whether an entry no longer counts: it was undone, and the undoing was not. */
export const isUndone = (counters: ReadonlyMap<string, LedgerEntry>, entry: LedgerEntry): boolean =>
  chainOf(counters, entry).length % 2 === 0;

/** The end of an entry's chain: what the next counter-entry undoes. */
export const lastOf = (counters: ReadonlyMap<string, LedgerEntry>, entry: LedgerEntry): LedgerEntry =>
  chainOf(counters, entry).at(-1) ?? entry;

/** Entries of a run that still count. */
export function standing(
  ledger: Book['entry'],
  which: (entry: LedgerEntry) => boolean,
): readonly LedgerEntry[] {
  const counters = countersOf(ledger);
  return Object.values(ledger).filter((entry) => which(entry) && !isUndone(counters, entry));
}

/**
 * Why an entry cannot be made. `gone`: the roll or item it is of is no longer there. `less-than-nothing`: more would leave than
 * there is. `undone`: it is undone already. `by-run`: printing or closing a run made it, and going back in the run undoes it.
 */
export type EntryProblem = 'gone' | 'less-than-nothing' | 'undone' | 'by-run';

/** Whether so much of an item can come or go. */
export function entryProblem(stock: Stock, id: string, amount: number): EntryProblem | null {
  const present = amountOf(stock, id);
  if (present === null) return 'gone';
  return amount < 0 && present + amount < 0 ? 'less-than-nothing' : null;
}

/** The entry at the start of a chain of counter-entries. */
function rootOf(ledger: Book['entry'], entry: LedgerEntry): LedgerEntry {
  const before = entry.counters === null ? undefined : ledger[entry.counters];
  return before ? rootOf(ledger, before) : entry;
}

/** Whether a step of a run made an entry, and not a hand. */
const isByRun = ({ kind, run, order }: LedgerEntry): boolean =>
  run !== null && (kind === 'printed' || kind === 'used' || (kind === 'spoiled' && order !== null));

/** Whether a hand may undo an entry. */
export function counterProblem(stock: Stock, entry: LedgerEntry): EntryProblem | null {
  if (!itemOf(stock, entry.item)) return 'gone';
  if (isByRun(rootOf(stock.entry, entry))) return 'by-run';
  if (countersOf(stock.entry).has(entry.id)) return 'undone';
  return entryProblem(stock, entry.item, -entry.amount);
}
