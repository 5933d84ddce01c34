import { describe, expect, it } from 'vitest';
import { type DateOrder, type LocalDate, parseDate } from '../../src/units';

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

  // Thursday, 26 November 2026: the calendar of ISO 8601.
  const today = '2026-11-26' as LocalDate;

  it.each<[string, DateOrder | null, string]>([
    ['Dec 3, 2026', null, '2026-12-03'],
    ['December 3rd, 2026', null, '2026-12-03'],
    ['30 Nov 2026', null, '2026-11-30'],
    ['3-Dec-26', null, '2026-12-03'],
    ['3 de diciembre de 2026', null, '2026-12-03'],
    ['Thu, Dec 3, 2026', null, '2026-12-03'],
    ['mié 2 dic 2026', null, '2026-12-02'],
    ['2026-12-03T17:00:00Z', null, '2026-12-03'],
    ['12/31/2026 5:00 PM', null, '2026-12-31'],
    ['Dec 3', null, '2026-12-03'],
    ['Mar 3', null, '2027-03-03'],
    ['mar 1 dic 2026', null, '2026-12-01'],
    ['Jan 4', null, '2027-01-04'],
    ['Nov 20', null, '2026-11-20'],
    ['29 Feb', null, '2028-02-29'],
    ['12/2', 'month-first', '2026-12-02'],
    ['12/2', 'day-first', '2027-02-12'],
    ['12/24', null, '2026-12-24'],
    ['3.12.', null, '2026-12-03'],
    ['Wed', null, '2026-12-02'],
    ['Thursday', null, '2026-11-26'],
    ['miércoles', null, '2026-12-02'],
    ['tomorrow', null, '2026-11-27'],
    ['hoy', null, '2026-11-26'],
  ])('%s (%s) of a day', (typed, order, date) => {
    expect(parseDate(typed, order, today)).toEqual({ ok: true, value: date });
  });

  it.each([
    ['12/2', 'ambiguous'],
    ['Feb 30', 'no-such-day'],
    ['Wed, Dec 3, 2026', 'no-such-day'],
    ['May', 'unreadable'],
    ['Mar', 'unreadable'],
    ['soon', 'unreadable'],
    ['Dec 3 4 5', 'unreadable'],
  ])('%j of a day is refused as %s', (typed, problem) => {
    expect(parseDate(typed, null, today)).toEqual({ ok: false, problem });
  });

  it.each([
    ['3/4/2026', 'ambiguous'],
    ['Wed', 'unreadable'],
    ['Dec 3', 'unreadable'],
    ['29.2.2026', 'no-such-day'],
    ['2026-13-01', 'no-such-day'],
    ['next Friday', 'unreadable'],
    ['', 'empty'],
  ])('%j is refused as %s', (typed, problem) => {
    expect(parseDate(typed, null)).toEqual({ ok: false, problem });
  });
});
