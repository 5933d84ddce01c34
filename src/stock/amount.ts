import type { Book, Film, LedgerEntry, Roll, Sheets, StockUnit, Supply, SupplyKind } from '../model';
import { inOrder } from '../units';

/** A book's stock: films with their running sums, other items, and the ledger. */
export type Stock = Pick<Book, 'film' | 'item' | 'entry'>;

/** What is left of a film, in its base unit: micrometres of a roll, sheets of a stack. */
export const leftOfFilm = (
  film: Pick<Roll, 'kind' | 'lengthLeft'> | Pick<Sheets, 'kind' | 'sheetsLeft'>,
): number => (film.kind === 'roll' ? film.lengthLeft : film.sheetsLeft);

const supplyUnits: Readonly<Record<SupplyKind, StockUnit>> = {
  colour: 'volume',
  white: 'volume',
  powder: 'mass',
  blank: 'pieces',
};

/** The base unit an item is counted in. */
export const unitOf = (item: Film | Supply): StockUnit => {
  if (item.kind === 'roll') return 'length';
  return item.kind === 'sheets' ? 'sheets' : supplyUnits[item.kind];
};

/** The sum of all entries of each item, by its id. */
export function sumsOf(ledger: Book['entry']): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { item, amount } of Object.values(ledger)) sums.set(item, (sums.get(item) ?? 0) + amount);
  return sums;
}

/** How much of an item there is; `null` if it is gone. */
export function amountOf({ film, item, entry }: Stock, id: string): number | null {
  const own = film[id];
  if (own) return leftOfFilm(own);
  return item[id] ? (sumsOf(entry).get(id) ?? 0) : null;
}

/** The film or the item that an entry is of; `null` if it is gone. */
export function itemOf({ film, item }: Pick<Stock, 'film' | 'item'>, id: string): Film | Supply | null {
  const own = film[id];
  if (own) return own;
  const supply = item[id];
  return supply && supply.kind !== 'film' ? supply : null;
}

/** The entries of an item, the latest first. */
export const entriesOf = (ledger: Book['entry'], id: string): LedgerEntry[] =>
  Object.values(ledger)
    .filter(({ item }) => item === id)
    .toReversed()
    .sort((a, b) => inOrder(b.at, a.at));
