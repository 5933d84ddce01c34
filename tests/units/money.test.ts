import { describe, expect, it } from 'vitest';
import {
  asMinor,
  costOf,
  fromUnit,
  minorDigits,
  parseFinePrice,
  parseMoney,
  parsePrice,
} from '../../src/units';

describe('money as typed', () => {
  it.each([
    ['12.50', 2, 1250],
    ['12,50', 2, 1250],
    ['$12.5', 2, 1250],
    ['1,250.00', 2, 125_000],
    ['1.250,00 €', 2, 125_000],
    ['1,250', 2, 125_000],
    ['8', 2, 800],
    ['840', 0, 840],
    ['0', 2, 0],
    ['0.155', 5, 15_500],
    // Three decimals: the dinar's.
    ['13.051', 3, 13_051],
    ['1,250.500', 3, 1_250_500],
    ['1.250.000', 3, 1_250_000_000],
  ])('%s with %d decimals is %d', (typed, digits, minor) => {
    expect(parseMoney(typed, digits)).toEqual({ ok: true, value: minor });
  });

  it.each([
    ['', 'empty'],
    ['abc', 'unreadable'],
    ['-3', 'negative'],
    ['99999999999', 'too-much'],
  ])('%j is refused as %s', (typed, problem) => {
    expect(parseMoney(typed, 2)).toEqual({ ok: false, problem });
  });
});

describe('money', () => {
  // ISO 4217: minor units of the yen 0, of the dollar 2, of the Kuwaiti dinar 3.
  it.each([
    ['JPY', 0],
    ['USD', 2],
    ['KWD', 3],
  ])('%s has %d decimals', (currency, digits) => {
    expect(minorDigits(currency)).toBe(digits);
  });

  it('is rounded once for a length at a rate', () => {
    expect(costOf(fromUnit(4.87, 'm'), { amount: asMinor(840), per: fromUnit(1, 'm') })).toBe(4091);
    expect(costOf(fromUnit(0, 'm'), { amount: asMinor(840), per: fromUnit(1, 'm') })).toBe(0);
  });
});

describe('a price in the shop\u2019s currency', () => {
  it.each([
    ['12.50', 'USD', 1250],
    ['$12.50', 'USD', 1250],
    ['12,50 USD', 'USD', 1250],
    ['usd 12.50', 'USD', 1250],
    ['12,50 \u20ac', 'EUR', 1250],
    ['1 200', 'JPY', 1200],
    ['\u00a51200', 'JPY', 1200],
    ['CA$3', 'CAD', 300],
    ['12,50 z\u0142', 'PLN', 1250],
  ])('%s in a shop that counts in %s', (typed, currency, minor) => {
    expect(parsePrice(typed, currency)).toEqual({ ok: true, value: minor });
  });

  it.each([
    ['12 EUR', 'USD', 'other-currency'],
    ['\u20ac12', 'USD', 'other-currency'],
    ['12 z\u0142', 'EUR', 'other-currency'],
    ['12 apples', 'USD', 'unreadable'],
    ['-3 USD', 'USD', 'negative'],
    ['', 'USD', 'empty'],
  ])('%s is refused in a shop that counts in %s as %s', (typed, currency, problem) => {
    expect(parsePrice(typed, currency)).toEqual({ ok: false, problem });
    expect(parseFinePrice(typed, currency)).toEqual({ ok: false, problem });
  });

  it('keeps three decimals more for what is bought in small parts', () => {
    expect(parseFinePrice('0.155', 'USD')).toEqual({ ok: true, value: 15_500 });
    expect(parseFinePrice('0,155 EUR', 'EUR')).toEqual({ ok: true, value: 15_500 });
    expect(parseFinePrice('31', 'JPY')).toEqual({ ok: true, value: 31_000 });
  });
});
