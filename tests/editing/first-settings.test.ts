import { describe, expect, it } from 'vitest';
import { firstSettings } from '../../src/editing/first-settings';

// ISO 4217 names each region's currency; which paper and unit a shop measures with there is common practice, no source.
describe('what a shop begins with', () => {
  it.each([
    ['en-US', 'USD', 'in', 'letter'],
    ['en', 'USD', 'in', 'letter'],
    ['es-MX', 'MXN', 'mm', 'letter'],
    ['fr-CA', 'CAD', 'mm', 'letter'],
    ['de', 'EUR', 'mm', 'a4'],
    ['de-CH', 'CHF', 'mm', 'a4'],
    ['ja', 'JPY', 'mm', 'a4'],
    ['en-001', 'USD', 'mm', 'a4'],
    // No region is known: it is that of the language (UTS 35, likely subtags, takes ZZ out first).
    ['en-ZZ', 'USD', 'in', 'letter'],
  ])('of %s is its currency, unit and paper', (locale, currency, unit, paper) => {
    expect(firstSettings(locale, 'en')).toMatchObject({ currency, unit, paper });
  });
});
