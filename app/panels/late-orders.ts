import type { Timeline } from '../../src/pressing';
import type { FirstWords } from '../words';
import { lateness, type Ways } from '../words/format';

/** Orders that will be late as the day is planned, each by its code, its name and how late. */
export const lateOrders = (orders: Timeline['orders'], words: FirstWords['film'], ways: Ways): string[] =>
  orders
    .filter(({ late }) => late > 0)
    .map(({ order, late }) => `${order.code} ${order.name} ${words.lateBy(lateness(late, ways))}`);
