import type { LaidCopy, LaidRun } from '../../src/layout';
import { type Book, type Fabric, fabrics } from '../../src/model';

/** The fabrics on a run and the orders of each, transfers-only orders left out. */
export function fabricsOf(
  book: Book,
  run: LaidRun,
): { readonly fabric: Fabric; readonly orders: readonly LaidCopy['order'][] }[] {
  const orders = new Map(run.copies.map(({ order }) => [order.id, order]));
  const snapshot = new Map(book.run[run.id]?.snapshot?.orders.map((order) => [order.id, order]));
  const recordOf = (id: LaidCopy['order']['id']) => snapshot.get(id) ?? book.order[id];
  return fabrics.flatMap((fabric) => {
    const own = [...orders.values()].filter(({ id }) => {
      const record = recordOf(id);
      return record?.fabric === fabric && record.wants === 'garments';
    });
    return own.length > 0 ? [{ fabric, orders: own }] : [];
  });
}
