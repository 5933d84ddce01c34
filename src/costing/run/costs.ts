import type { LaidRun } from '../../layout';
import { candidateOf, laidQuickly, layRun, orderAlone } from '../../layout';
import type { Book, Costs, Film, Rates, RunUse, Settings } from '../../model';
import { type CostSheet, type CoverageOf, costSheet } from '..';
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
export function runCosts(book: Book, run: LaidRun, shop: Shop, coverageOf: CoverageOf): RunCosts {
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

/** The costs of an order's copies, run by run. */
export interface OrderRuns {
  readonly runs: readonly RunCosts[];
  /** Not all of it is laid out: it is reckoned as a run of its own on this film. */
  readonly alone: Film | null;
}

/**
 * Where an order's cost comes from: the runs that its copies lie on; while some of them wait, a run of its own, laid out quickly.
 * @param costsOf a run's costs, which the caller may have at hand
 * @param film to reckon with where it is not laid out
 */
export function orderRuns(
  book: Book,
  id: string,
  film: Film | null,
  costsOf: (run: LaidRun, book: Book) => RunCosts,
): OrderRuns {
  const order = book.order[id];
  const copies = Object.values(book.copy).filter(
    (copy) => book.transfer[copy.transfer]?.order === id && copy.state !== 'shelved',
  );
  const runs = new Set(copies.map(({ run, state }) => (state === 'placed' ? run : null)));
  if (!runs.has(null)) {
    const laid = [...runs].flatMap((run) => {
      const record = run === null ? undefined : book.run[run];
      return (record && layRun(book, record)) ?? [];
    });
    return { runs: laid.map((run) => costsOf(run, book)), alone: null };
  }
  if (!order || !film || copies.length === 0) return { runs: [], alone: null };
  const { book: apart, run } = orderAlone(book, order, film);
  const { book: own, laid } = laidQuickly(candidateOf(apart, run, { film, endless: true }));
  return { runs: laid ? [costsOf(laid, own)] : [], alone: film };
}
