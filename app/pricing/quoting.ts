import { edits } from '../../src/editing';
import { type Order, quotesOf } from '../../src/model';
import type { PricedOrder } from '../store/prices';
import { settingsOrFirst } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { dayFrom, today } from '../store/today';
import { showQuote } from '../store/view';
import { languageNow, localeNow } from '../words';

/** Opens the order's latest quote; the first time, or anew, it gets a number, today's date and the shop's days. */
export function giveQuote(order: Order, { price }: PricedOrder, anew = false): void {
  const { book } = useShop.getState();
  if (anew || quotesOf(book, order.id).length === 0) {
    const { validDays } = settingsOrFirst(book).pricing;
    const given = {
      on: today(),
      until: dayFrom(validDays),
      language: languageNow(),
      locale: localeNow(),
    };
    act(edits.addQuote(order.id, price, given));
  }
  const [latest] = quotesOf(useShop.getState().book, order.id);
  if (latest) showQuote(latest.id);
}
