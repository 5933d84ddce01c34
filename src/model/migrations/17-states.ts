import { isNoStep, isObject, type Migration, type StoredRecords } from './stored';

const isPlaced = (copy: Record<string, unknown>) => isObject(copy.place) && typeof copy.run === 'string';

/** A copy that says its state; one that lies on a film lies there, whatever else it said. */
function withState({ shelved, ...copy }: Record<string, unknown>): Record<string, unknown> {
  if (isPlaced(copy)) return { ...copy, state: 'placed' };
  if (shelved === true) return { ...copy, state: 'shelved', run: null, place: null };
  return { ...copy, state: 'waiting', run: copy.run ?? null, place: null };
}

/** What a run that lacks it would have embedded: all on its film, as it is at the time of the migration; `null` where its film is gone. */
function embedNow(records: StoredRecords, run: Record<string, unknown>): Record<string, unknown> | null {
  const film = records.get(`film/${run.film}`);
  if (!isObject(film)) return null;
  const all = (collection: string, isWanted: (record: Record<string, unknown>) => boolean) =>
    [...records].flatMap(([key, value]) =>
      key.startsWith(`${collection}/`) && isObject(value) && isWanted(value) ? [value] : [],
    );
  const copies = all('copy', (copy) => isPlaced(copy) && copy.run === run.id);
  const onFilm = new Set(copies.map(({ transfer }) => transfer));
  const transfers = all('transfer', ({ id }) => onFilm.has(id));
  const orders = new Set(transfers.map(({ order }) => order));
  return {
    at: run.changed,
    film,
    orders: all('order', ({ id }) => orders.has(id)),
    transfers,
    copies,
    garments: all('garment', ({ order }) => orders.has(order)),
    placements: all('placement', ({ order }) => orders.has(order)),
  };
}

/** A snapshot with those of its copies that lie in a part of the film; each says its state. */
function partOf(snapshot: Record<string, unknown>, run: unknown, isIn: (y: number) => boolean) {
  const copies = Array.isArray(snapshot.copies) ? snapshot.copies : [];
  return {
    ...snapshot,
    copies: copies.flatMap((copy) => {
      const lies = isObject(copy) && isObject(copy.place) && isIn(Number(copy.place.y));
      return lies ? [withState({ ...copy, run })] : [];
    }),
  };
}

/** A run that keeps what was printed of it apart from the rest, and embeds the rest if it is locked. */
function withPrinted(records: StoredRecords, run: Record<string, unknown>): Record<string, unknown> {
  const { snapshot: before, printedTo, basis = null, received = null, ...rest } = run;
  const snapshot = isObject(before) ? before : embedNow(records, run);
  const to = Number(printedTo ?? 0);
  const printed = snapshot && to > 0 ? { to, as: [partOf(snapshot, run.id, (y) => y < to)] } : null;
  // A locked run without film and snapshot could not be drawn; its history still tells how far it came.
  const isDraft = (run.state === 'draft' && !isObject(received)) || !snapshot;
  if (isDraft) return { ...rest, state: 'draft', printed, received: null };
  const state = run.state === 'draft' ? 'locked' : run.state;
  return {
    ...rest,
    state,
    printed,
    snapshot: partOf(snapshot, run.id, (y) => y >= to),
    received,
    basis,
  };
}

/**
 * Up to version 16 a copy told by three fields where it is, and any run could have a snapshot, how far it was printed and what its cost
 * rests on. From version 17 on each says its state and has what belongs to it. A locked run that lacks a snapshot embeds what is on its
 * film at the time of the migration. Undo begins anew.
 */
export const tellStates: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('copy/')) return [key, withState(value)];
      if (key.startsWith('run/')) return [key, withPrinted(records, value)];
      return [key, value];
    }),
  );
