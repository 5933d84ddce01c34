import { expect, it } from 'vitest';
import { usualDateOrder } from '../../app/orders/date-order';

// Unicode CLDR 44, dates of the length `short`.
it.each([
  ['en-US', 'month-first'],
  ['en-GB', 'day-first'],
  ['es-ES', 'day-first'],
  ['es-MX', 'day-first'],
  ['sv-SE', null],
  ['en', null],
])('dates of figures in %s are read %s until the shop has said', (locale, order) => {
  expect(usualDateOrder(locale)).toBe(order);
});
