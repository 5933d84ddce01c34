import { useDeferredValue } from 'react';
import type { CoverageOf } from '../../src/costing';
import { type OrderRuns, orderRuns, type RunCosts, runCosts } from '../../src/costing/run';
import type { LaidRun } from '../../src/layout';
import { type Book, filmsAhead } from '../../src/model';
import { orderPrice, type Price } from '../../src/pricing';
import { coverageNow, useDoneChecks } from './checks';
import { settingsOrFirst } from './selectors';
import { useShop } from './shop';

/** An order with its price, and the runs that its cost comes from. */
export interface PricedOrder extends OrderRuns {
  readonly price: Price;
}

/** What was worked out for one book with what its checks told: a book never changes, it is replaced. */
interface Known {
  readonly printed: CoverageOf;
  readonly runs: Map<LaidRun, RunCosts>;
  readonly orders: Map<string, PricedOrder | null>;
}

let known: { book: Book; of: Known } | null = null;

function knownOf(book: Book): Known {
  const printed = coverageNow(book);
  if (known?.book !== book || known.of.printed !== printed) {
    known = { book, of: { printed, runs: new Map(), orders: new Map() } };
  }
  return known.of;
}

/** The costs of a run as it lies in the book. */
export function costsOf(book: Book, run: LaidRun): RunCosts {
  const { runs } = knownOf(book);
  const found = runs.get(run) ?? costsTried(book, run);
  runs.set(run, found);
  return found;
}

/** The costs of a run in a book that is only tried. */
export const costsTried = (book: Book, run: LaidRun): RunCosts =>
  runCosts(book, run, settingsOrFirst(book), coverageNow(useShop.getState().book));

export function useRunCosts(run: LaidRun): RunCosts {
  const book = useShop((shop) => shop.book);
  useDoneChecks();
  return costsOf(book, run);
}

/** An order's price; `null` while nothing of it can be reckoned. */
function priced(book: Book, id: string): PricedOrder | null {
  const { orders, runs, printed } = knownOf(book);
  const before = orders.get(id);
  if (before !== undefined) return before;
  const order = book.order[id];
  const settings = settingsOrFirst(book);
  const film = filmsAhead(book)[0] ?? null;
  const ofRun = (run: LaidRun, inBook: Book) => {
    // Orders of one run share its costs.
    const found = runs.get(run);
    if (found) return found;
    const made = runCosts(inBook, run, settings, printed);
    runs.set(run, made);
    return made;
  };
  const found = orderRuns(book, id, film, ofRun);
  const result =
    order && found.runs.length > 0 ? { ...found, price: orderPrice(book, order, found, settings) } : null;
  orders.set(id, result);
  return result;
}

/** The price of an order, worked out behind what is typed. */
export function usePriced(id: string): PricedOrder | null {
  const book = useDeferredValue(useShop((shop) => shop.book));
  useDoneChecks();
  return priced(book, id);
}
