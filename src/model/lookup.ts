import { groupBy, inOrder, onceFor } from '../units';
import type { Book } from './book';
import type { Copy } from './copy';
import { ordersOnFilm } from './film-codes';
import { bySize } from './garments';
import type { Quote } from './quote';
import type { Film, Garment, Order, Placement, Settings, Transfer } from './records';
import { embeddedIn, type Run } from './run';

/** What tells when an order is wanted, beside the code that it goes by. */
type Wanted = Pick<Order, 'id' | 'code' | 'due' | 'dueTime' | 'rush'>;

/** Orders in a rush first, then those that are due sooner, those without a date last; 0 for two that are due alike. */
const bySooner = (a: Wanted, b: Wanted): number =>
  Number(b.rush) - Number(a.rush) ||
  inOrder(a.due ?? '9999', b.due ?? '9999') ||
  inOrder(a.dueTime ?? '99', b.dueTime ?? '99');

const byDue = (a: Wanted, b: Wanted): number => bySooner(a, b) || a.code.localeCompare(b.code);

/** The turn of each order, from 0: those that are due alike have the same. */
export function turnsOf(orders: Iterable<Wanted>): Map<Order['id'], number> {
  const turns = new Map<Order['id'], number>();
  let turn = -1;
  let last: Wanted | null = null;
  for (const order of [...orders].sort(byDue)) {
    if (last === null || bySooner(last, order) !== 0) turn += 1;
    turns.set(order.id, turn);
    last = order;
  }
  return turns;
}

const openByDue = onceFor((orders: Book['order']): readonly Order[] =>
  Object.values(orders)
    .filter((order) => !order.archived)
    .sort(byDue),
);

/** Orders under the codes they go by, those in a rush first, then soonest due first, those without a date last; archived ones left out. */
export const ordersByDue = (book: Pick<Book, 'order' | 'run'>): readonly Order[] =>
  openByDue(ordersOnFilm(book));

/** Whether an id begins with the time at which it was given, as those of version 7 do (RFC 9562, 5.7). */
const tellsTime = (id: string): boolean => id.length === 36 && id[14] === '7';

/**
 * Records in the order in which they were entered, which their ids tell, whatever the order in which they were stored. Ids of before
 * tell none: their records come first, as they are.
 */
export const asEntered = <Entry extends { readonly id: string }>(records: Iterable<Entry>): Entry[] =>
  [...records].sort((a, b) =>
    tellsTime(a.id) && tellsTime(b.id)
      ? inOrder(a.id, b.id)
      : Number(tellsTime(a.id)) - Number(tellsTime(b.id)),
  );

/** Records by what they belong to, grouped once a collection. */
type Groups<Entry> = ReadonlyMap<string, readonly Entry[]>;

const transfersGrouped = onceFor(
  (transfers: Book['transfer']): Groups<Transfer> =>
    groupBy(asEntered(Object.values(transfers)), ({ order }) => order),
);

export const transfersByOrder = (book: Pick<Book, 'transfer'>): Groups<Transfer> =>
  transfersGrouped(book.transfer);

const garmentsGrouped = onceFor((garments: Book['garment']): Groups<Garment> => {
  const kinds = groupBy(asEntered(Object.values(garments)), ({ order, style, colour }) =>
    JSON.stringify([order, style, colour]),
  );
  const lines = [...kinds.values()].flatMap((kind) => kind.sort(bySize));
  return groupBy(lines, ({ order }) => order);
});

/** Lines of garments as they were entered, those of one style and colour by their sizes. */
export const garmentsByOrder = (book: Pick<Book, 'garment'>): Groups<Garment> =>
  garmentsGrouped(book.garment);

const placementsGrouped = onceFor(
  (placements: Book['placement']): Groups<Placement> =>
    groupBy(asEntered(Object.values(placements)), ({ order }) => order),
);

export const placementsByOrder = (book: Pick<Book, 'placement'>): Groups<Placement> =>
  placementsGrouped(book.placement);

/** The quotes of an order, the latest first. */
export const quotesOf = (book: Book, order: string): Quote[] =>
  Object.values(book.quote)
    .filter((quote) => quote.order === order)
    .sort((a, b) => b.number - a.number);

const copiesGrouped = onceFor((copies: Book['copy']): Groups<Copy> => {
  const groups = groupBy(Object.values(copies), ({ transfer }) => transfer);
  for (const own of groups.values()) own.sort((a, b) => a.number - b.number);
  return groups;
});

/** The copies of each transfer, in the order of their numbers. */
export const copiesByTransfer = (book: Pick<Book, 'copy'>): Groups<Copy> => copiesGrouped(book.copy);

/** The copies of an order, transfer by transfer. */
export function copiesOfOrder(book: Pick<Book, 'transfer' | 'copy'>, order: string): Copy[] {
  const copies = copiesByTransfer(book);
  return (transfersByOrder(book).get(order) ?? []).flatMap(({ id }) => copies.get(id) ?? []);
}

export const settingsOf = (book: Book): Settings | undefined => book.settings.shop;

const byName = (a: Run, b: Run): number => a.name.localeCompare(b.name, undefined, { numeric: true });

/** Whether all of a run is on film: printed, or further. */
export const isPrinted = ({ state }: Pick<Run, 'state'>): boolean => state !== 'draft' && state !== 'locked';

/** The runs of this book; those that another device handed over are only cut and pressed here. */
const ownRuns = (book: Book): Run[] => Object.values(book.run).filter(({ received }) => received === null);

/** Runs that are not printed yet: drafts and locked ones, by name. */
export const openRuns = (book: Book): Run[] =>
  ownRuns(book)
    .filter((run) => !isPrinted(run))
    .sort(byName);

/**
 * The films that what waits may come to lie on: those of the drafts, by the names of their runs; without a draft that of the first run
 * not printed yet. What is told of an order by it holds whichever run is looked at.
 */
export function filmsAhead(book: Book): Film[] {
  const open = openRuns(book);
  const drafts = open.filter(({ state }) => state === 'draft');
  const films = (drafts.length > 0 ? drafts : open.slice(0, 1)).map((run) => book.film[run.film]);
  return [...new Set(films.filter((film) => film !== undefined))];
}

/** Runs that are printed, or further, by name. */
export const printedRuns = (book: Book): Run[] => ownRuns(book).filter(isPrinted).sort(byName);

/** All runs that are not closed, those received too. */
export const runsAtWork = (book: Book): Run[] =>
  Object.values(book.run)
    .filter(({ state }) => state !== 'closed')
    .sort(byName);

/** All runs that may be looked at in Cut and Press: open ones, printed ones, and those received. */
export const benchRuns = (book: Book): Run[] => [
  ...openRuns(book),
  ...printedRuns(book),
  ...Object.values(book.run)
    .filter(({ received }) => received !== null)
    .sort(byName),
];

/** Records by their ids, as a book keeps them. */
export const byId = <Entry extends { id: string }>(
  entries: readonly Entry[],
): Readonly<Record<string, Entry>> => Object.fromEntries(entries.map((entry) => [entry.id, entry]));

/** A run's film: as it was when the run was sent to print, or as it is now. */
export const filmOf = (book: Book, run: Run): Film | undefined =>
  run.state === 'draft' ? book.film[run.film] : run.snapshot.film;

/** The run that is looked at on its film: the one chosen, or else the first open one; none that another device handed over. */
export function runOf(book: Book, chosen: string | null): { run: Run; film: Film } | undefined {
  const wanted = chosen === null ? undefined : book.run[chosen];
  const run = wanted && wanted.received === null ? wanted : openRuns(book)[0];
  const film = run && filmOf(book, run);
  return film && { run, film };
}

/** The run that cutters and pressers look at: the one chosen, or else the first that is in print or on film and not closed. */
export function benchRunOf(book: Book, chosen: string | null): Run | undefined {
  const wanted = chosen === null ? undefined : book.run[chosen];
  const runs = benchRuns(book);
  const atWork = runs.filter(({ state }) => state !== 'draft' && state !== 'closed');
  return wanted ?? atWork.sort(byName)[0] ?? runs[0];
}

/** Whether a copy is printed, or sent to print: no edit may change it. */
export function isFixed(book: Pick<Book, 'run'>, copy: Copy): boolean {
  const run = copy.state === 'placed' ? book.run[copy.run] : undefined;
  if (copy.place === null || run === undefined) return false;
  // Of a draft that stopped on the way, what begins before that place is printed.
  return run.state !== 'draft' || copy.place.y < (run.printed?.to ?? 0);
}

/** The artwork a patch of a transfer names, as a value or in a whole record. */
function artworkIn(value: unknown): string | null {
  if (typeof value === 'string') return value;
  if (typeof value !== 'object' || value === null || !('artwork' in value)) return null;
  return typeof value.artwork === 'string' ? value.artwork : null;
}

/**
 * All artwork whose file is still needed: what transfers, places and locked runs name, what undo could bring back, and what
 * any of these was made from.
 */
export function artworkInUse(book: Book): Set<string> {
  const used = new Set<string>();
  const use = (artwork: string | null) => {
    for (
      let next = artwork;
      next !== null && !used.has(next);
      next = book.artwork[next]?.madeFrom?.artwork ?? null
    ) {
      used.add(next);
    }
  };
  for (const { artwork } of Object.values(book.transfer)) use(artwork);
  for (const { artwork } of Object.values(book.placement)) use(artwork);
  for (const { transfers } of Object.values(book.run).flatMap(embeddedIn)) {
    for (const { artwork } of transfers) use(artwork);
  }
  for (const { redo, undo } of Object.values(book.step)) {
    for (const { path, value } of [...redo, ...undo]) {
      if (path[0] === 'transfer' && (path.length === 2 || path[2] === 'artwork')) use(artworkIn(value));
    }
  }
  return used;
}
