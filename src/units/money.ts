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

/** Rounded; never the zero below zero, which would be told as -0.00. */
export const asMinor = (value: number): Minor => (Math.round(value) + 0) as Minor;

const digitsKnown = new Map<string, number>();

/** How many decimals a currency has: 2 for USD and EUR, 0 for JPY (ISO 4217, by Intl). */
export function minorDigits(currency: string): number {
  const known = digitsKnown.get(currency);
  if (known !== undefined) return known;
  const { maximumFractionDigits: digits = 2 } = new Intl.NumberFormat('en', {
    style: 'currency',
    currency,
  }).resolvedOptions();
  digitsKnown.set(currency, digits);
  return digits;
}

/**
 * Whether a code is formed as those of ISO 4217 are: figures can be written in it (ECMA-402, IsWellFormedCurrencyCode). Not whether this
 * browser knows it: another may have been told of a currency that is newer.
 */
export const isCurrency = (code: string): boolean => /^[A-Z]{3}$/.test(code);

/** What a length costs at a rate, rounded once. */
export const costOf = (length: Micrometres, rate: LengthRate): Minor =>
  asMinor((length * rate.amount) / rate.per);

export type MoneyProblem = 'empty' | 'unreadable' | 'negative' | 'too-much';

/**
 * Reads an amount such as `12.50`, `12,50`, `$12.5`, `1,250.00` or `1.250,00`.
 * @param digits decimals that are kept
 * @param own decimals of the currency, see {@link minorDigits}: where it has three, one separator before three figures parts them off
 */
export function parseMoney(text: string, digits: number, own = digits): Result<Minor, MoneyProblem> {
  const plain = text.replace(/[\s\u00a0\u202f]|\p{Sc}/gu, '');
  if (plain === '') return fail('empty');
  if (!/^-?\d[\d.,]*$/.test(plain)) return fail('unreadable');
  const last = Math.max(plain.lastIndexOf('.'), plain.lastIndexOf(','));
  const decimals = last < 0 ? 0 : plain.length - last - 1;
  // `1,250` and `1.250` mean a thousand and more, `0.125` does not; two separators of one kind always do.
  const separators = plain.replace(/[^.,]/g, '');
  const grouped =
    decimals === 3 &&
    !/^-?0/.test(plain) &&
    (separators.length === 1 ? own !== 3 : new Set(separators).size === 1);
  const amount = grouped
    ? Number(plain.replace(/[.,]/g, ''))
    : Number(last < 0 ? plain : `${plain.slice(0, last).replace(/[.,]/g, '')}.${plain.slice(last + 1)}`);
  if (!Number.isFinite(amount)) return fail('unreadable');
  if (amount < 0) return fail('negative');
  if (amount > 1e9) return fail('too-much');
  return ok(asMinor(amount * 10 ** digits));
}

declare const milliMinor: unique symbol;
/** A price of something bought in small parts, in whole thousandths of a minor unit: 0.155 a kilowatt-hour is 15,500. */
export type MilliMinor = number & { readonly [milliMinor]: true };

/** Decimals of a {@link MilliMinor} beyond those of its currency. */
export const FINER = 3;

export const asMilliMinor = (value: number): MilliMinor => Math.round(value) as MilliMinor;

/** Why a text is no price in this shop; a price in another currency is never converted. */
export type PriceProblem = MoneyProblem | 'other-currency';

const named = (currency: string, display: 'symbol' | 'narrowSymbol'): string =>
  new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay: display })
    .formatToParts(0)
    .find(({ type }) => type === 'currency')
    ?.value.toUpperCase() ?? currency;

let everyName: Set<string> | null = null;

/** What is written beside an amount: the shop's own currency, another one, or nothing that names one. */
function currencyBeside(written: string, currency: string): 'own' | 'other' | 'none' {
  const name = written.toUpperCase();
  if ([currency, named(currency, 'symbol'), named(currency, 'narrowSymbol')].includes(name)) return 'own';
  everyName ??= new Set(
    Intl.supportedValuesOf('currency').flatMap((code) => [
      code,
      named(code, 'symbol'),
      named(code, 'narrowSymbol'),
    ]),
  );
  return everyName.has(name) || /^\p{Sc}$/u.test(name) ? 'other' : 'none';
}

function parseIn(text: string, currency: string, digits: number): Result<Minor, PriceProblem> {
  const beside = text.replace(/[-+\d.,\s\u00a0\u202f]/g, '');
  const own = minorDigits(currency);
  if (beside === '') return parseMoney(text, digits, own);
  const whose = currencyBeside(beside, currency);
  if (whose === 'other') return fail('other-currency');
  return whose === 'own' ? parseMoney(text.replace(/[^-+\d.,]/g, ''), digits, own) : fail('unreadable');
}

/**
 * Reads a price in the shop's currency: `12.50`, `12,50 USD`, `$12.5`.
 * @returns `other-currency` where the text names another one
 */
export const parsePrice = (text: string, currency: string): Result<Minor, PriceProblem> =>
  parseIn(text, currency, minorDigits(currency));

/**
 * Reads a price of something bought in small parts, with up to three decimals more than the currency has.
 * @returns thousandths of a minor unit; `other-currency` where the text names another one
 */
export function parseFinePrice(text: string, currency: string): Result<MilliMinor, PriceProblem> {
  const read = parseIn(text, currency, minorDigits(currency) + FINER);
  return read.ok ? ok(asMilliMinor(read.value)) : read;
}
