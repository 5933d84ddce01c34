import type { Column } from './headings';

/** What a row says of its order. */
export const headColumns = ['number', 'order', 'customer'] as const satisfies Column[];

/** What tells an order apart, as it stands in the table; what it lacks is empty. */
export type OrderHead = Readonly<Record<(typeof headColumns)[number], string>>;

const NOBODY: OrderHead = { number: '', order: '', customer: '' };

/**
 * Follows the orders of a table down its rows. A row that says nothing of its order belongs to the one above, as in a grouped
 * list; one that bears the number of an order above it, to that, whose customer is named in its first row only.
 */
export function orderHeads(): (said: OrderHead) => OrderHead {
  const byNumber = new Map<string, OrderHead>();
  let above = NOBODY;
  return (said) => {
    const { number } = said;
    const base = number === '' ? NOBODY : (byNumber.get(number) ?? NOBODY);
    const isSilent = headColumns.every((column) => said[column] === '');
    above = isSilent
      ? above
      : { number, order: said.order || base.order, customer: said.customer || base.customer };
    if (number !== '') byNumber.set(number, above);
    return above;
  };
}

/** Texts one after the other, none that is empty or said before, whatever its case. */
const saidOnce = (texts: readonly string[], between: string): string =>
  texts
    .filter((text, at) => {
      const plain = text.toLocaleLowerCase();
      return text !== '' && texts.findIndex((other) => other.toLocaleLowerCase() === plain) === at;
    })
    .join(between);

/** The name of an order: its number, and what it is called or else who it is for. */
export const orderName = ({ number, order, customer }: OrderHead): string =>
  saidOnce([number, order || customer], ' ');

/** Whom to ask about an order: its customer, unless it bears that name, a person and an address. */
export function contactOf({ order, customer }: OrderHead, contact: string, email: string): string {
  const name = order || customer;
  const isNamed = (text: string) => text.toLocaleLowerCase() === name.toLocaleLowerCase();
  return saidOnce(
    [customer, contact, email].map((text) => (isNamed(text) ? '' : text)),
    ', ',
  );
}
