import { useDeferredValue } from 'react';
import type { CoverageOf } from '../../src/costing';
import { type OrderRuns, orderRuns } from '../../src/costing/run';
import { type Book, filmsAhead } from '../../src/model';
import { orderPrice, type Price } from '../../src/pricing';
import { whileSame } from '../../src/units';
import { coverageNow, useDoneChecks } from './checks';
import { costsOf } from './costs';
import { settingsOrFirst } from './selectors';
import { useShop } from './shop';

/** An order with its price, and the runs that its cost comes from. */
export interface PricedOrder extends OrderRuns {
  readonly price: Price;
}

type Prices = Map<string, PricedOrder | null>;

/** Prices that are known in a book, by what its checks told. */
const pricesIn = whileSame((_book: Book, _printed: CoverageOf): Prices => new Map());

/** An order's price; `null` while nothing of it can be reckoned. */
function priced(book: Book, id: string): PricedOrder | null {
  const printed = coverageNow(book);
  const orders = pricesIn(book, printed);
  const before = orders.get(id);
  if (before !== undefined) return before;
  const order = book.order[id];
  const settings = settingsOrFirst(book);
  const film = filmsAhead(book)[0] ?? null;
  const found = orderRuns(book, id, film, (run, inBook) => costsOf(inBook, run, printed));
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
