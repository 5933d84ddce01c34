import type { CostKind, CostShare, CostSheet } from '../costing';
import { garmentPrice, newDesigns, type OrderRuns, type RunCosts } from '../costing/run';
import { sheetStart } from '../layout';
import {
  type Book,
  type Costs,
  copiesOfOrder,
  garmentsByOrder,
  type Order,
  type Pricing,
  type Transfer,
  transfersByOrder,
} from '../model';
import { asMinor, countBy, fromMm, um } from '../units';
import { type Price, type PricedGarments, type Print, priceOf } from './price';

/** What of a share is not of these kinds, before rounding. */
const without = (sheet: CostSheet, share: CostShare, kinds: ReadonlySet<CostKind>): number =>
  share.exact.reduce((sum, exact, line) => {
    const kind = sheet.lines[line]?.kind;
    return kind !== undefined && kinds.has(kind) ? sum : sum + exact;
  }, 0);

/** Film that a run takes, as one length. */
const filmLength = ({ run, use }: RunCosts): number =>
  use.film.kind === 'roll' ? use.film.length : sheetStart(run.film, use.film.sheets);

/** What each transfer of an order costs and takes of the film on all runs that it lies on. */
function costsByTransfer(id: string, runs: readonly RunCosts[], kinds: ReadonlySet<CostKind>) {
  const found = new Map<string, { cost: number; length: number }>();
  for (const costs of runs) {
    const { use, sheet } = costs;
    const area = use.transfers.reduce((sum, { copies, footprint }) => sum + copies * footprint, 0);
    const own = sheet.orders.find((order) => order.id === id);
    for (const transfer of own?.transfers ?? []) {
      const known = found.get(transfer.id) ?? { cost: 0, length: 0 };
      const used = use.transfers.find((each) => each.id === transfer.id);
      known.cost += without(sheet, transfer, kinds);
      if (used && area > 0) known.length += (filmLength(costs) * used.copies * used.footprint) / area;
      found.set(transfer.id, known);
    }
  }
  return found;
}

/** Garments of a style and colour together, by what one of them costs. */
function garmentLines(book: Book, order: Order, costs: Costs): PricedGarments[] {
  const lines = new Map<string, PricedGarments>();
  for (const garment of garmentsByOrder(book).get(order.id) ?? []) {
    const cost = garmentPrice(garment, costs);
    const name = [garment.style, garment.colour].filter(Boolean).join(', ');
    const known = lines.get(`${name} ${cost}`);
    lines.set(`${name} ${cost}`, { name, cost, count: (known?.count ?? 0) + garment.count });
  }
  return [...lines.values()];
}

/** Sizes are told apart as they are shown, to a tenth of a millimetre; which side is called the width is of no matter. */
const sizeKey = ({ width, height }: Pick<Transfer, 'width' | 'height'>): string =>
  [width, height]
    .map((side) => Math.round(side / fromMm(0.1)))
    .sort((a, b) => a - b)
    .join(' x ');

const garmentKinds: readonly CostKind[] = ['garments'];

/**
 * The price of an order.
 * @param found the runs its cost comes from
 */
export function orderPrice(
  book: Book,
  order: Order,
  { runs }: Pick<OrderRuns, 'runs'>,
  { pricing, costs }: { readonly pricing: Pricing; readonly costs: Costs },
): Price {
  const designs = newDesigns(book, order);
  // What a fee pays for is not charged by the print as well.
  const isPaidByFee = pricing.artworkFee > 0 && designs > 0;
  const kinds = new Set<CostKind>([...garmentKinds, ...(isPaidByFee ? (['artwork'] as const) : [])]);
  const found = costsByTransfer(order.id, runs, kinds);
  const charged = countBy(copiesOfOrder(book, order.id), ({ transfer, role }) =>
    role === 'over' ? null : transfer,
  );
  const prints = (transfersByOrder(book).get(order.id) ?? []).map((transfer): Print => {
    const { cost, length } = found.get(transfer.id) ?? { cost: 0, length: 0 };
    return {
      transfer: transfer.id,
      name: transfer.name,
      design: transfer.artwork ?? transfer.id,
      size: sizeKey(transfer),
      count: charged.get(transfer.id) ?? 0,
      cost,
      length: um(length),
    };
  });
  const cost = runs.reduce(
    (sum, { sheet }) => sum + (sheet.orders.find(({ id }) => id === order.id)?.amount ?? 0),
    0,
  );
  return priceOf({
    pricing,
    order,
    prints,
    garments: order.wants === 'garments' ? garmentLines(book, order, costs) : [],
    newDesigns: designs,
    cost: asMinor(cost),
  });
}
