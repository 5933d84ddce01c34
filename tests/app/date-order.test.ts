import { expect, it } from 'vitest';
import { usualDateOrder } from '../../app/orders/date-order';

it.each([
  ['en-US', 'month-first'],
  ['en-GB', null],
  ['en', null],
  ['es-US', null],
  ['es-MX', null],
])('dates of figures in %s are read %s until the shop has said', (locale, order) => {
  expect(usualDateOrder(locale)).toBe(order);
});
