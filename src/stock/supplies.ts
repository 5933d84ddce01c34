import type { Blank, Book, Supply, SupplyKind } from '../model';
import { standing } from './counter';

/** All of a kind that is kept, by name. */
export const suppliesOf = ({ item }: Pick<Book, 'item'>, kind: SupplyKind): Supply[] =>
  Object.values(item)
    .filter((each): each is Supply => each.kind === kind && !each.archived)
    .sort((a, b) => a.name.localeCompare(b.name, undefined, { numeric: true }));

/** What a run draws on: the opened ones of a kind, or the first where none is noted as opened. */
export function inUse(book: Pick<Book, 'item'>, kind: SupplyKind): Supply[] {
  const all = suppliesOf(book, kind);
  const opened = all.filter(({ opened: day }) => day !== null);
  return opened.length > 0 ? opened : all.slice(0, 1);
}

/** An amount in as many parts as there are items to draw on, whole and summing to it exactly; the first take what is left over. */
export function shared(amount: number, parts: number): number[] {
  if (parts === 0) return [];
  const least = Math.trunc(amount / parts);
  const over = amount - least * parts;
  return Array.from({ length: parts }, (_, at) => least + (at < Math.abs(over) ? Math.sign(over) : 0));
}

const plain = (text: string): string => text.trim().toLocaleLowerCase();

/** Whether a blank in stock is the garment of an order's line. */
export const isSameBlank = (
  a: Pick<Blank, 'style' | 'colour' | 'size'>,
  b: Pick<Blank, 'style' | 'colour' | 'size'>,
): boolean =>
  plain(a.style) === plain(b.style) && plain(a.colour) === plain(b.colour) && plain(a.size) === plain(b.size);

/** How many of an item runs have used for an order, by the entries that still count. */
export const takenFor = (ledger: Book['entry'], id: string, order: string): number =>
  standing(ledger, (entry) => entry.item === id && entry.order === order && entry.kind === 'used').reduce(
    (sum, { amount }) => sum - amount,
    0,
  );

/** How much of some items left for a run, by the entries that still count: what came back is not in it. */
export const takenByRun = ({ entry }: Pick<Book, 'entry'>, run: string, ids: readonly string[]): number =>
  Object.values(entry).reduce(
    (sum, each) => (each.run === run && ids.includes(each.item) ? sum - each.amount : sum),
    0,
  );

/** How many of a blank a run has taken for an order, by the entries that still count. */
export function takenBlanks(
  ledger: Book['entry'],
  run: string,
  blank: string,
  order: string,
): Record<'used' | 'spoiled', number> {
  const own = standing(ledger, (entry) => entry.run === run && entry.item === blank && entry.order === order);
  const of = (kind: 'used' | 'spoiled') =>
    own.reduce((sum, entry) => (entry.kind === kind ? sum - entry.amount : sum), 0);
  return { used: of('used'), spoiled: of('spoiled') };
}
