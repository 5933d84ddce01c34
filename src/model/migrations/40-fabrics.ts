import { isObject, type Migration } from './stored';

/** The fabric that each order of some records had. */
const fabricsIn = (orders: Iterable<unknown>): ReadonlyMap<unknown, unknown> =>
  new Map([...orders].flatMap((order) => (isObject(order) ? [[order.id, order.fabric ?? null]] : [])));

const withoutFabric = (order: unknown): unknown => {
  if (!isObject(order)) return order;
  const { fabric: _, ...rest } = order;
  return rest;
};

/** What was listed by hand tells by itself what it goes on; for the rest garments do. */
const toldTransfer = (transfer: unknown, fabrics: ReadonlyMap<unknown, unknown>): unknown => {
  if (!isObject(transfer)) return transfer;
  const byHand = !transfer.grid && !transfer.garment;
  return { ...transfer, fabric: byHand ? (fabrics.get(transfer.order) ?? null) : null };
};

const toldGarment = (garment: unknown, fabrics: ReadonlyMap<unknown, unknown>): unknown =>
  isObject(garment) ? { ...garment, fabric: fabrics.get(garment.order) ?? null } : garment;

/** Pick lists told all garments of an order until now, whatever part of it a run printed. */
const pickedWhole = (garment: unknown): unknown =>
  isObject(garment) ? { ...garment, takes: garment.count } : garment;

const embedded = (snapshot: unknown): unknown => {
  if (!isObject(snapshot)) return snapshot;
  const { orders } = snapshot;
  const fabrics = fabricsIn(Array.isArray(orders) ? orders : []);
  const each = (name: string, made: (record: unknown) => unknown): Record<string, unknown> => {
    const list = snapshot[name];
    return Array.isArray(list) ? { [name]: list.map(made) } : {};
  };
  return {
    ...snapshot,
    ...each('orders', withoutFabric),
    ...each('transfers', (transfer) => toldTransfer(transfer, fabrics)),
    ...each('copies', (copy) => (isObject(copy) ? { ...copy, onto: null } : copy)),
    ...each('garments', (garment) => pickedWhole(toldGarment(garment, fabrics))),
  };
};

const inRun = (run: unknown): unknown => {
  if (!isObject(run)) return run;
  const { printed } = run;
  return {
    ...run,
    ...('snapshot' in run ? { snapshot: embedded(run.snapshot) } : {}),
    ...(isObject(printed) && Array.isArray(printed.as)
      ? { printed: { ...printed, as: printed.as.map(embedded) } }
      : {}),
  };
};

function told(collection: unknown, value: unknown, fabrics: ReadonlyMap<unknown, unknown>): unknown {
  switch (collection) {
    case 'order':
      return withoutFabric(value);
    case 'transfer':
      return toldTransfer(value, fabrics);
    case 'garment':
      return toldGarment(value, fabrics);
    case 'run':
      return inRun(value);
    default:
      return value;
  }
}

/** A whole record that a step puts back, its collection first; `null` for any other patch. */
const recordIn = (patch: unknown): { readonly collection: unknown; readonly value: unknown } | null =>
  isObject(patch) && Array.isArray(patch.path) && patch.path.length === 2 && isObject(patch.value)
    ? { collection: patch.path[0], value: patch.value }
    : null;

/** That an order had another fabric is no longer taken back: its lines may have several. */
const isOfFabric = (patch: unknown): boolean =>
  isObject(patch) &&
  Array.isArray(patch.path) &&
  patch.path[0] === 'order' &&
  patch.path.length === 3 &&
  patch.path[2] === 'fabric';

function inStep(step: unknown, fabrics: ReadonlyMap<unknown, unknown>): unknown {
  if (!isObject(step)) return step;
  const list = (patches: unknown) => (Array.isArray(patches) ? (patches as unknown[]) : []);
  const both = [...list(step.redo), ...list(step.undo)].map(recordIn);
  const orders = both.flatMap((record) => (record?.collection === 'order' ? [record.value] : []));
  const known = new Map([...fabricsIn(orders), ...fabrics]);
  const patches = (own: unknown) =>
    list(own)
      .filter((patch) => !isOfFabric(patch))
      .map((patch) => {
        const record = recordIn(patch);
        return record && isObject(patch)
          ? { ...patch, value: told(record.collection, record.value, known) }
          : patch;
      });
  return { ...step, redo: patches(step.redo), undo: patches(step.undo) };
}

/**
 * Until version 39 an order had one fabric. From 40 on each line of garments has its own, and each transfer that none calls for; a run
 * that is locked also tells which garments its copies go on, and how many it takes.
 */
export const tellFabrics: Migration = (records) => {
  const orders = [...records].flatMap(([key, value]) => (key.startsWith('order/') ? [value] : []));
  const fabrics = fabricsIn(orders);
  return new Map(
    [...records].map(([key, value]) => [
      key,
      key.startsWith('step/') ? inStep(value, fabrics) : told(key.slice(0, key.indexOf('/')), value, fabrics),
    ]),
  );
};
