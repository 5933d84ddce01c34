import { isNoStep, isObject, type Migration } from './stored';

/**
 * Version 11 kept what is cut and pressed on one device. Version 12 hands it over: a locked run also embeds garments and places, as
 * they are at the time of the migration.
 */
export const handOver: Migration = (records) => {
  const of = (collection: string, orders: ReadonlySet<unknown>) =>
    [...records].flatMap(([key, value]) =>
      key.startsWith(`${collection}/`) && isObject(value) && orders.has(value.order) ? [value] : [],
    );
  const embed = (snapshot: unknown) => {
    if (!isObject(snapshot) || !Array.isArray(snapshot.orders)) return snapshot;
    const orders = new Set(snapshot.orders.map((order) => (isObject(order) ? order.id : null)));
    return { garments: of('garment', orders), placements: of('placement', orders), ...snapshot };
  };
  return new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('run/'))
        return [key, { received: null, ...value, snapshot: embed(value.snapshot ?? null) }];
      if (!key.startsWith('settings/')) return [key, value];
      const station = isObject(value.station) ? { oneClosing: true, ...value.station } : value.station;
      return [key, { shelfFirst: true, ...value, station }];
    }),
  );
};
