import { firstOf, rollWidth, type Settings } from '../model';
import { asMinor, fromInches, fromMm, fromUnit, type LengthUnit, minorDigits, um } from '../units';
import type { FilmFields } from './films';

/** Measures of a roll in the units of the shop: blank sides and ends, the gap, the longest span, what the printer does not reach. */
const measures = {
  mm: {
    side: fromMm(5),
    end: fromMm(10),
    gap: fromMm(5),
    span: fromMm(480),
    unreached: fromMm(400),
    whole: fromUnit(60, 'm'),
  },
  in: {
    side: fromInches(3 / 16),
    end: fromInches(1 / 2),
    // Half a gap must be whole micrometres.
    gap: um(2 * Math.ceil(fromInches(3 / 16) / 2)),
    span: fromInches(18.5),
    unreached: fromInches(16),
    whole: fromUnit(200, 'ft'),
  },
} as const;

const prices: Readonly<Record<Settings['unit'], { readonly amount: number; readonly per: LengthUnit }>> = {
  mm: { amount: 8.4, per: 'm' },
  in: { amount: 2.5, per: 'ft' },
};

/** A desktop printer's roll, whole, in round figures of the shop's unit (common practice, no source); the price is the shop's to set. */
export function firstFilm(name: string, currency: string, unit: Settings['unit']): FilmFields {
  const { side, end, gap, span, unreached, whole } = measures[unit];
  const { amount, per } = prices[unit];
  return {
    kind: 'roll',
    name,
    printer: firstOf('printer'),
    width: rollWidth('roll-13in', unit),
    margins: { left: side, right: side, lead: end, tail: end },
    lengthLeft: whole,
    price: { amount: asMinor(amount * 10 ** minorDigits(currency)), per: fromUnit(1, per) },
    gap,
    cutting: 'free',
    together: { kind: 'any' },
    peel: 'hot',
    spanMax: span,
    curl: fromMm(0),
    jobBlank: fromMm(0),
    jobs: 'run',
    cutBlank: fromMm(0),
    unreached,
    noPrint: [],
    archived: false,
  };
}
