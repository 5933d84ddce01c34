import type { Fabric } from '../units';
import type { PlacedCopy } from './copy';
import type { Id } from './fields';
import type { Garment, Transfer } from './records';
import type { RunView } from './run-view';

/** A line that tells a fabric: garments of an order, or a transfer that no garments call for. */
export type FabricLine = Garment | Transfer;

/** Whether a transfer tells by itself what it goes on: it was listed by hand. */
export const tellsFabric = ({ grid, garment }: Pick<Transfer, 'grid' | 'garment'>): boolean =>
  grid === null && garment === null;

/** The one fabric of some lines; `null` where they have several, or one that nobody has told. */
export function commonFabric(lines: readonly Pick<FabricLine, 'fabric'>[]): Fabric | null {
  const [first, ...others] = new Set(lines.map(({ fabric }) => fabric));
  return others.length > 0 ? null : (first ?? null);
}

/** The lines that tell what a copy of a run goes on. A copy beyond what garments call for may go on any of its order's. */
function linesOf(
  { transfer, garment, dealt }: RunView,
  { id, transfer: of }: Pick<PlacedCopy, 'id' | 'transfer'>,
): readonly FabricLine[] {
  const own = transfer[of];
  if (!own) return [];
  if (tellsFabric(own)) return [own];
  const line = garment[dealt().onto.get(id) ?? ''];
  return line ? [line] : Object.values(garment).filter(({ order }) => order === own.order);
}

/** What a copy of a run is pressed on; `null` while nobody has told. */
export const fabricOn = (view: RunView, copy: Pick<PlacedCopy, 'id' | 'transfer'>): Fabric | null =>
  commonFabric(linesOf(view, copy));

/** The lines whose fabric is to be told before a run is pressed here: of garments with a copy on it, and of transfers listed by hand. */
export function untoldLines(view: RunView): FabricLine[] {
  const lines = view.placed.flatMap(({ copy, order }) =>
    order.wants === 'garments' && copy.role !== 'over' ? linesOf(view, copy) : [],
  );
  return [...new Set(lines)].filter(({ fabric }) => fabric === null);
}

/** The ids by which {@link FabricLine}s are told. */
export type FabricLineId = Id<'garment'> | Id<'transfer'>;
