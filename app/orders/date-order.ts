import type { DateOrder } from '../../src/units';

const ADVENT = Date.UTC(2026, 11, 24);

/**
 * Whether day or month comes first where a language is spoken: Unicode CLDR, dates of the length `short`. `null` where the year does, and
 * for a language alone, which may be spoken anywhere.
 */
export function usualDateOrder(locale: string): DateOrder | null {
  if (new Intl.Locale(locale).region === undefined) return null;
  const parts = new Intl.DateTimeFormat(locale, { dateStyle: 'short', timeZone: 'UTC' }).formatToParts(
    ADVENT,
  );
  const [first] = parts.filter(({ type }) => type !== 'literal');
  if (first?.type === 'day') return 'day-first';
  return first?.type === 'month' ? 'month-first' : null;
}
