import { describe, expect, it } from 'vitest';
import { type DateOrder, parseDate } from '../../src/units';

describe('a date as typed', () => {
  it.each<[string, DateOrder | null, string]>([
    ['2026-11-27', null, '2026-11-27'],
    ['2026/1/5', null, '2026-01-05'],
    ['27.11.2026', null, '2026-11-27'],
    ['11/27/2026', null, '2026-11-27'],
    ['27/11/26', null, '2026-11-27'],
    ['5/5/2026', null, '2026-05-05'],
    ['3/4/2026', 'day-first', '2026-04-03'],
    ['3/4/2026', 'month-first', '2026-03-04'],
    ['29.2.2028', null, '2028-02-29'],
  ])('%s (%s)', (typed, order, date) => {
    expect(parseDate(typed, order)).toEqual({ ok: true, value: date });
  });

  it.each([
    ['3/4/2026', 'ambiguous'],
    ['29.2.2026', 'no-such-day'],
    ['2026-13-01', 'no-such-day'],
    ['next Friday', 'unreadable'],
    ['', 'empty'],
  ])('%j is refused as %s', (typed, problem) => {
    expect(parseDate(typed, null)).toEqual({ ok: false, problem });
  });
});
