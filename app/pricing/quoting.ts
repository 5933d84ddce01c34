import { editOrder, editSettings } from '../../src/editing';
import type { Order } from '../../src/model';
import type { PricedOrder } from '../store/costs';
import { commit } from '../store/shop';
import { dayFrom, today } from '../store/today';
import { openDialog, showQuote } from '../store/view';

/** Opens the order's quote; the first time it gets a number, today's date and the shop's days. */
export function giveQuote(order: Order, { price }: PricedOrder, anew = false): void {
  if (order.quote === null || anew) {
    commit((draft) => {
      const { shop } = draft.settings;
      if (!shop) return;
      const { nextQuote, validDays } = shop.pricing;
      editOrder(draft, order.id, {
        quote: {
          number: nextQuote,
          on: today(),
          until: dayFrom(validDays),
          total: price.total,
          notes: order.quote?.notes ?? '',
        },
      });
      editSettings(draft, { pricing: { ...shop.pricing, nextQuote: nextQuote + 1 } });
    });
  }
  openDialog(null);
  showQuote(order.id);
}
