import type { DateOrder } from '../../src/units';

/** In English of the United States the month comes first: Unicode CLDR, `en-US`, dates of the length `short`. */
export const usualDateOrder = (locale: string): DateOrder | null =>
  new Intl.Locale(locale).baseName === 'en-US' ? 'month-first' : null;
