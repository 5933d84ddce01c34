import type { LaidCopy, LaidRun } from '../layout';
import { fabricOn } from '../model';
import { FABRICS, type Fabric } from '../units';
import { pressedOn } from './pressed-on';

/** What a laid copy is pressed on; `null` while nobody has told. */
export const fabricOfCopy = ({ view }: Pick<LaidRun, 'view'>, { id, transfer }: LaidCopy): Fabric | null =>
  fabricOn(view, { id, transfer: transfer.id });

/** The fabrics that a run is pressed on, each with its orders; behind them what nobody has told. */
export function fabricsOn(
  run: Pick<LaidRun, 'view' | 'copies'>,
): { readonly fabric: Fabric | null; readonly orders: readonly LaidCopy['order'][] }[] {
  const orders = new Map<Fabric | null, Map<string, LaidCopy['order']>>();
  for (const copy of run.copies.filter(pressedOn(run.view))) {
    const fabric = fabricOfCopy(run, copy);
    const own = orders.get(fabric) ?? new Map<string, LaidCopy['order']>();
    orders.set(fabric, own.set(copy.order.id, copy.order));
  }
  return [...FABRICS, null].flatMap((fabric) => {
    const own = orders.get(fabric);
    return own ? [{ fabric, orders: [...own.values()] }] : [];
  });
}
