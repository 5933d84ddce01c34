import type { Ways } from '../words/format';

/** A day under an axis: `26 Nov`. */
export const dayTick = (seconds: number, { locale }: Ways): string =>
  new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short' }).format(1000 * seconds);
