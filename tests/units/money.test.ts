import { describe, expect, it } from 'vitest';
import { asMinor, costOf, fromUnit, minorDigits, parseMoney } from '../../src/units';

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
