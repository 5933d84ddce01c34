import type { Pricing, Settings } from '../model';
import { asMinor, fromUnit, minorDigits } from '../units';

/** How a small shop prices its work to begin with, in the currency's own units (common practice, no source). */
export function startingPricing(currency: string, unit: Settings['unit']): Pricing {
  const money = (amount: number) => asMinor(amount * 10 ** minorDigits(currency));
  return {
    aim: { kind: 'margin', share: 0.5 },
    by: 'cost',
    placement: money(6),
    length:
      unit === 'mm'
        ? { amount: money(30), per: fromUnit(1, 'm') }
        : { amount: money(9), per: fromUnit(1, 'ft') },
    artworkFee: money(15),
    breaks: [
      { from: 24, off: 0.05 },
      { from: 48, off: 0.1 },
    ],
    breaksBy: 'order',
    rush: 0.25,
    minimum: money(25),
    deposit: 0.5,
    tax: null,
    validDays: 30,
    nextQuote: 1,
  };
}
