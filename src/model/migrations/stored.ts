/** A book's records by their keys as they lie in storage, of any version: nothing is known of the values yet. */
export type StoredRecords = ReadonlyMap<string, unknown>;

export type Migration = (records: StoredRecords) => StoredRecords;

export const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/** A step's patches are of records as they were: undo begins anew with records of another shape. */
export const isNoStep = ([key]: readonly [string, unknown]): boolean => !key.startsWith('step/');

/** Each of a list with fields that it may lack. */
export const each = (list: unknown, fields: Record<string, unknown>): unknown =>
  Array.isArray(list) ? list.map((entry) => (isObject(entry) ? { ...fields, ...entry } : entry)) : list;

/** New fields for what a locked run embeds: its film, and each of its orders, copies and garments. */
export function withInSnapshot(
  snapshot: unknown,
  {
    film = {},
    orders = {},
    copies = {},
    garments = {},
  }: Partial<Record<'film' | 'orders' | 'copies' | 'garments', Record<string, unknown>>>,
): unknown {
  if (!isObject(snapshot)) return snapshot;
  return {
    ...snapshot,
    film: isObject(snapshot.film) ? { ...film, ...snapshot.film } : snapshot.film,
    orders: each(snapshot.orders, orders),
    copies: each(snapshot.copies, copies),
    // Up to version 12 it had none.
    ...('garments' in snapshot ? { garments: each(snapshot.garments, garments) } : {}),
  };
}
