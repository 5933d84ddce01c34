import { sameName, sameNumber } from '../intake/repeats';
import type { Order } from '../model';

/** No number of an order has more words. */
const MOST_WORDS = 3;

/** The numbers that an order may bear: the words that its name begins with. */
function numbersOf(name: string): string[] {
  const words = sameNumber(name).split(' ').slice(0, MOST_WORDS);
  return words.map((_, at) => words.slice(0, at + 1).join(' ')).filter((number) => /\d/.test(number));
}

/** Orders by what tables call them; each is looked at once however many rows are asked for. */
export class OrdersByName {
  private readonly named = new Map<string, Order['id']>();
  private readonly numbered = new Map<string, Order['id']>();

  /** Where two have a name, the one at work is meant. */
  constructor(orders: readonly Pick<Order, 'id' | 'name' | 'archived'>[]) {
    for (const archived of [true, false])
      for (const order of orders) if (order.archived === archived) this.add(order);
  }

  add({ id, name }: Pick<Order, 'id' | 'name'>): void {
    this.named.set(sameName(name), id);
    for (const number of numbersOf(name)) this.numbered.set(number, id);
  }

  /** The order that a row is of: the one of its name, or else of its number. */
  of({ order, number }: { readonly order: string; readonly number: string }): Order['id'] | undefined {
    return (
      this.named.get(sameName(order)) ?? (number === '' ? undefined : this.numbered.get(sameNumber(number)))
    );
  }
}
