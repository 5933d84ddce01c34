import type { Timeline } from '../../src/pressing';
import type { OrderNames } from '../store/selectors';
import type { FirstWords } from '../words';
import { lateness, type Ways } from '../words/format';

/** Orders that will be late as the day is planned, each by its code, its name and how late. */
export const lateOrders = (
  orders: Timeline['orders'],
  nameOf: OrderNames,
  words: FirstWords['film'],
  ways: Ways,
): string[] =>
  orders
    .filter(({ late }) => late > 0)
    .map(
      ({ order, runs, late }) => `${order.code} ${nameOf(order, runs)} ${words.lateBy(lateness(late, ways))}`,
    );
