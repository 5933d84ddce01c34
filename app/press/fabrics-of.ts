import type { LaidCopy, LaidRun } from '../../src/layout';
import { type Fabric, fabrics } from '../../src/model';

/** The fabrics on a run and the orders of each, transfers-only orders left out. */
export function fabricsOf(
  run: LaidRun,
): { readonly fabric: Fabric; readonly orders: readonly LaidCopy['order'][] }[] {
  const orders = [...new Map(run.copies.map(({ order }) => [order.id, order])).values()];
  return fabrics.flatMap((fabric) => {
    const own = orders.filter(({ id }) => {
      const record = run.view.order[id];
      return record?.fabric === fabric && record.wants === 'garments';
    });
    return own.length > 0 ? [{ fabric, orders: own }] : [];
  });
}
