import type { LaidRun } from '../../layout';
import type { Costs, Rates, RunUse, Settings } from '../../model';
import { type CostSheet, type CoverageOf, costSheet } from '..';
import type { CostedBook } from './costed';
import { runUse } from './use';

/** What a run costs, and what that rests on. */
export interface RunCosts {
  readonly run: LaidRun;
  readonly use: RunUse;
  readonly costs: Costs;
  readonly rates: Rates;
  readonly sheet: CostSheet;
  /** Prices and amounts are those of the day on which the run was locked. */
  readonly kept: boolean;
}

type Shop = Pick<Settings, 'costs' | 'rates' | 'station'>;

/**
 * The costs of a run: as it was locked, or with the shop's prices as they are.
 * @param shop of a draft, and of a run that was locked before costs were kept
 */
export function runCosts(book: CostedBook, run: LaidRun, shop: Shop, coverageOf: CoverageOf): RunCosts {
  const { run: record } = run.view;
  const basis = record.state === 'draft' ? null : record.basis;
  const { costs, rates } = basis ?? shop;
  const now = runUse(book, run, { coverageOf, station: shop.station, costs });
  const use = basis ? withSpoiled(basis.use, now) : now;
  const sheet = costSheet(use, costs, rates, run.state === 'closed');
  return { run, use, costs, rates, sheet, kept: basis !== null };
}

/** What was spoiled is known only after the run was locked. */
const withSpoiled = (use: RunUse, now: RunUse): RunUse => ({
  ...use,
  orders: use.orders.map((order) => {
    const own = now.orders.find(({ id }) => id === order.id);
    return own ? { ...order, replaced: own.replaced } : order;
  }),
});
