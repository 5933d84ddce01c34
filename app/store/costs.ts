import type { CoverageOf } from '../../src/costing';
import { type CostedBook, costedOrders, type RunCosts, runCosts } from '../../src/costing/run';
import type { LaidRun } from '../../src/layout';
import type { Book, Settings } from '../../src/model';
import { onceFor, whileSame } from '../../src/units';
import { coverageNow, useDoneChecks } from './checks';
import { settingsOrFirst } from './selectors';
import { useShop } from './shop';

/** Reckoned once a run, as long as all that costs come from is the same. */
const reckoned = onceFor((run: LaidRun) =>
  whileSame(
    (
      order: CostedBook['order'],
      transfer: Book['transfer'],
      copy: Book['copy'],
      garment: Book['garment'],
      spoilage: Book['spoilage'],
      costs: Settings['costs'],
      rates: Settings['rates'],
      station: Settings['station'],
      printed: CoverageOf,
    ) => runCosts({ order, transfer, copy, garment, spoilage }, run, { costs, rates, station }, printed),
  ),
);

/**
 * The costs of a run as it lies in a book.
 * @param printed what the artwork prints, as far as that is known
 */
export function costsOf(book: Book, run: LaidRun, printed: CoverageOf = coverageNow(book)): RunCosts {
  const { transfer, copy, garment, spoilage } = book;
  const { costs, rates, station } = settingsOrFirst(book);
  return reckoned(run)(
    costedOrders(book.order),
    transfer,
    copy,
    garment,
    spoilage,
    costs,
    rates,
    station,
    printed,
  );
}

/** The costs of a run in a book that is only tried. */
export const costsTried = (book: Book, run: LaidRun): RunCosts =>
  runCosts(book, run, settingsOrFirst(book), coverageNow(useShop.getState().book));

export function useRunCosts(run: LaidRun): RunCosts {
  const book = useShop((shop) => shop.book);
  useDoneChecks();
  return costsOf(book, run);
}
