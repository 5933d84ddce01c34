import type { Micrometres } from './length';
import { fail, ok, type Result } from './result';

declare const minor: unique symbol;
/** An amount of money in whole minor units: cents where the currency has them. */
export type Minor = number & { readonly [minor]: true };

/** An amount for each `per` of length: film is bought by the metre, the foot or the roll. */
export interface LengthRate {
  readonly amount: Minor;
  readonly per: Micrometres;
}

export const asMinor = (value: number): Minor => Math.round(value) as Minor;

/** How many decimals a currency has: 2 for USD and EUR, 0 for JPY (ISO 4217, by Intl). */
export function minorDigits(currency: string): number {
  return (
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2
  );
}

/** What a length costs at a rate, rounded once. */
export const costOf = (length: Micrometres, rate: LengthRate): Minor =>
  asMinor((length * rate.amount) / rate.per);

export type MoneyProblem = 'empty' | 'unreadable' | 'negative' | 'too-much';

/**
 * Reads an amount such as `12.50`, `12,50`, `$12.5`, `1,250.00` or `1.250,00`.
 * @param digits decimals of the currency, see {@link minorDigits}
 */
export function parseMoney(text: string, digits: number): Result<Minor, MoneyProblem> {
  const plain = text.replace(/[\s\u00a0\u202f]|\p{Sc}/gu, '');
  if (plain === '') return fail('empty');
  if (!/^-?\d[\d.,]*$/.test(plain)) return fail('unreadable');
  const last = Math.max(plain.lastIndexOf('.'), plain.lastIndexOf(','));
  const decimals = last < 0 ? 0 : plain.length - last - 1;
  // `1,250` and `1.250` mean a thousand and more; two separators of one kind always do.
  const separators = plain.replace(/[^.,]/g, '');
  const grouped = decimals === 3 && (separators.length === 1 || new Set(separators).size === 1);
  const amount = grouped
    ? Number(plain.replace(/[.,]/g, ''))
    : Number(last < 0 ? plain : `${plain.slice(0, last).replace(/[.,]/g, '')}.${plain.slice(last + 1)}`);
  if (!Number.isFinite(amount)) return fail('unreadable');
  if (amount < 0) return fail('negative');
  if (amount > 1e9) return fail('too-much');
  return ok(asMinor(amount * 10 ** digits));
}
