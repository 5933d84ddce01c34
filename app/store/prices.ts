import { useDeferredValue } from 'react';
import { type OrderRuns, orderRuns, runCosts } from '../../src/costing/run';
import type { LaidRun } from '../../src/layout';
import { type Book, filmsAhead } from '../../src/model';
import { orderPrice, type Price } from '../../src/pricing';
import { useDoneChecks } from './checks';
import { knownOf } from './costs';
import { settingsOrFirst } from './selectors';
import { useShop } from './shop';

/** An order with its price, and the runs that its cost comes from. */
export interface PricedOrder extends OrderRuns {
  readonly price: Price;
}

type Prices = Map<string, PricedOrder | null>;

/** Prices beside the costs that they were reckoned with. */
const prices = new WeakMap<object, Prices>();

function ordersOf(costs: object): Prices {
  const found = prices.get(costs) ?? new Map();
  prices.set(costs, found);
  return found;
}

/** An order's price; `null` while nothing of it can be reckoned. */
function priced(book: Book, id: string): PricedOrder | null {
  const of = knownOf(book);
  const { runs, printed } = of;
  const orders = ordersOf(of);
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
