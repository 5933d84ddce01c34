import { onceFor } from '../units';
import type { Book } from './book';
import type { Copy } from './copy';
import type { Id } from './fields';
import { widthFor } from './garments';
import { byId, garmentsByOrder } from './lookup';
import type { Garment, Transfer } from './records';
import { embeddedIn, type Run, type Snapshot } from './run';

/** The records that tell which copies go on which garments. */
type GarmentSource = Pick<Book, 'transfer' | 'garment' | 'placement'>;

/** The line of garments that each copy goes on, by the copy's id; a copy that no line calls for is not in it. */
export type Onto = ReadonlyMap<string, Id<'garment'>>;

/**
 * The lines whose garments a transfer goes on: its own, or those of its printed size.
 * @param lines of its order
 * @returns `null` where nobody has said, since it was listed by hand
 */
export function linesFor(
  { placement: places }: Pick<Book, 'placement'>,
  { garment, grid }: Pick<Transfer, 'garment' | 'grid'>,
  lines: readonly Garment[],
): readonly Garment[] | null {
  if (garment !== null) return lines.filter(({ id }) => id === garment);
  const placement = grid && places[grid.placement];
  if (!placement) return null;
  return lines.filter((line) => widthFor(placement, line).width === grid.width);
}

/**
 * Deals copies to the lines of garments: each line gets as many of a transfer as it has garments, those of which it is known first.
 * @param copies in the order in which they are dealt
 */
function dealt(copies: readonly Pick<Copy, 'id' | 'transfer'>[], known: Onto, source: GarmentSource): Onto {
  if (Object.keys(source.garment).length === 0) return known;
  const lines = garmentsByOrder(source);
  const onto = new Map(known);
  const left = new Map<string, Map<Id<'garment'>, number>>();
  for (const transfer of Object.values(source.transfer)) {
    const own = linesFor(source, transfer, lines.get(transfer.order) ?? []);
    if (own) left.set(transfer.id, new Map(own.map(({ id, count }) => [id, count])));
  }
  const take = (transfer: string, line: Id<'garment'>) => {
    const counts = left.get(transfer);
    const count = counts?.get(line);
    if (counts && count !== undefined) counts.set(line, count - 1);
  };
  const open = copies.filter(({ id, transfer }) => {
    const line = onto.get(id);
    if (line !== undefined) take(transfer, line);
    return line === undefined && left.has(transfer);
  });
  for (const { id, transfer } of open) {
    const [line] = [...(left.get(transfer) ?? [])].find(([, count]) => count > 0) ?? [];
    if (line === undefined) continue;
    onto.set(id, line);
    take(transfer, line);
  }
  return onto;
}

/** What the copies of a snapshot go on: as it was noted, or else along the film. Spare ones are pressed on nothing. */
const ontoIn = onceFor((snapshot: Snapshot): Onto => {
  const noted = snapshot.copies.flatMap(({ id, onto }) =>
    onto === null ? [] : [[id as string, onto] as const],
  );
  const along = snapshot.copies
    .filter(({ role }) => role !== 'over')
    .toSorted((a, b) => a.place.y - b.place.y);
  return dealt(along, new Map(noted), {
    transfer: byId(snapshot.transfers),
    garment: byId(snapshot.garments),
    placement: byId(snapshot.placements),
  });
});

/** What the copies that a run embeds go on. */
export const embeddedOnto = (run: Run): Onto =>
  new Map(embeddedIn(run).flatMap((snapshot) => [...ontoIn(snapshot)]));

/** How many garments of each line some snapshots take. */
function takenIn(snapshots: readonly Snapshot[]): ReadonlyMap<string, number> {
  const taken = new Map<string, number>();
  for (const { id, takes: own } of snapshots.flatMap(({ garments }) => garments)) {
    taken.set(id, (taken.get(id) ?? 0) + own);
  }
  return taken;
}

/** How many garments of each line a run takes for what it embeds. */
export const embeddedTakes = (run: Run): ReadonlyMap<string, number> => takenIn(embeddedIn(run));

const ownRuns = ({ run }: Pick<Book, 'run'>): Run[] =>
  Object.values(run).filter(({ received }) => received === null);

/**
 * What each copy of a book goes on: what is printed, or sent to print, as it was noted then, and the rest by their numbers. All runs are
 * told the same, so that no garment gets a print twice.
 */
export const ontoOf = onceFor((book: Book): Onto => {
  const noted = ownRuns(book).flatMap((run) =>
    [...embeddedOnto(run)].filter(([copy]) => book.copy[copy]?.run === run.id),
  );
  const copies = Object.values(book.copy)
    .filter(({ role }) => role !== 'over')
    .sort((a, b) => Number(a.role === 'filler') - Number(b.role === 'filler') || a.number - b.number);
  return dealt(copies, new Map(noted), book);
});

/** How many copies of each place lie on the garments of each line, and how many of these were taken from the store for them. */
export interface Taken {
  readonly placed: ReadonlyMap<string, ReadonlyMap<string, number>>;
  readonly taken: ReadonlyMap<string, number>;
  /** Copies that orders still wait for, each with its order. */
  readonly toCome: ReadonlyMap<string, string>;
}

type Counts = Map<string, Map<string, number>>;

/** Counts copies by the line and the place that they go on; a named transfer is a place by itself. */
function countOnto(
  counts: Counts,
  copies: readonly Pick<Copy, 'id' | 'transfer'>[],
  onto: Onto,
  transfers: Readonly<Record<string, Transfer>>,
): void {
  for (const { id, transfer } of copies) {
    const line = onto.get(id);
    if (line === undefined) continue;
    const place = transfers[transfer]?.grid?.placement ?? transfer;
    const own = counts.get(line) ?? new Map<string, number>();
    counts.set(line, own.set(place, (own.get(place) ?? 0) + 1));
  }
}

/** What was taken for what other runs embed, and for what was printed of a run before. */
export function takenBefore(book: Book, run: Run): Taken {
  const placed: Counts = new Map();
  const before = ownRuns(book).flatMap((other) =>
    other.id === run.id ? (run.printed?.as ?? []) : embeddedIn(other),
  );
  for (const snapshot of before) {
    countOnto(placed, snapshot.copies, ontoIn(snapshot), byId(snapshot.transfers));
  }
  const brought = new Set<string>(before.flatMap(({ copies }) => copies.map(({ id }) => id)));
  const toCome = new Map(
    Object.values(book.copy).flatMap(({ id, role, state, transfer }) => {
      const order = book.transfer[transfer]?.order;
      const isToCome = role === 'ordered' && state !== 'shelved' && !brought.has(id);
      return isToCome && order !== undefined ? [[id, order]] : [];
    }),
  );
  return { placed, taken: takenIn(before), toCome };
}

/**
 * How many garments of each line some copies are the first to take, behind what was taken before. Of a line that no transfer calls for,
 * what completes the print of its order takes all: they are bagged then.
 */
export function takes(
  source: GarmentSource,
  copies: readonly Pick<Copy, 'id' | 'transfer'>[],
  onto: Onto,
  before: Taken,
): ReadonlyMap<string, number> {
  const { garment: lines, transfer: transfers } = source;
  const counts: Counts = new Map([...before.placed].map(([line, own]) => [line, new Map(own)]));
  countOnto(counts, copies, onto, transfers);
  const here = new Set(copies.map(({ id }) => onto.get(id)));
  const own = new Set(copies.map(({ transfer }) => transfers[transfer]?.order));
  const ids = new Set<string>(copies.map(({ id }) => id));
  const open = new Set([...before.toCome].flatMap(([id, order]) => (ids.has(id) ? [] : [order])));
  const called = new Set(
    Object.values(transfers).flatMap((transfer) =>
      own.has(transfer.order)
        ? (linesFor(source, transfer, Object.values(lines)) ?? []).map(({ id }) => id)
        : [],
    ),
  );
  return new Map(
    Object.values(lines).flatMap(({ id, order, count: all }) => {
      const completes = own.has(order) && !open.has(order);
      if (!here.has(id) && !(completes && !called.has(id))) return [];
      const needed = called.has(id) ? Math.min(all, Math.max(...(counts.get(id)?.values() ?? []))) : all;
      return [[id as string, Math.max(0, needed - (before.taken.get(id) ?? 0))] as const];
    }),
  );
}
