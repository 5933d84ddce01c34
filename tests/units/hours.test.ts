import { describe, expect, it } from 'vitest';
import { parseHours } from '../../src/units';

const of = (...pairs: [string, string][]) => ({
  ok: true,
  value: pairs.map(([from, to]) => ({ from, to })),
});

describe('the hours of a day', () => {
  it.each([
    ['8:00–12:00, 12:30–17:00', of(['08:00', '12:00'], ['12:30', '17:00'])],
    ['12:30-17; 8-12', of(['08:00', '12:00'], ['12:30', '17:00'])],
    ['8 am to 5:30 pm', of(['08:00', '17:30'])],
    ['12 am - 12 pm', of(['00:00', '12:00'])],
    ['8.30 a 14h', of(['08:30', '14:00'])],
    ['18:00-24:00', of(['18:00', '23:59'])],
    ['8:00-12:00, 12:00-13:00', of(['08:00', '12:00'], ['12:00', '13:00'])],
    ['  ', of()],
  ])('are read: %s', (text, hours) => expect(parseHours(text)).toEqual(hours));

  it.each([
    ['17:00–8:00', 'ends-first'],
    ['8:00–8:00', 'ends-first'],
    ['8:00–12:00, 11:00–13:00', 'overlap'],
    ['8:00', 'unreadable'],
    ['8:00-25:00', 'unreadable'],
    ['13 pm - 14', 'unreadable'],
    ['8:00-9:00-10:00', 'unreadable'],
    ['in the morning', 'unreadable'],
  ])('that cannot be are told as that: %s', (text, problem) =>
    expect(parseHours(text)).toEqual({ ok: false, problem }),
  );
});
