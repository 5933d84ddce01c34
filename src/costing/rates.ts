import type { Rates } from '../model';
import { fromMass, fromVolume, type Microlitres, type Milligrams } from '../units';

/** Ink and powder on film. */
export interface Consumption {
  readonly colour: Microlitres;
  readonly white: Microlitres;
  readonly powder: Milligrams;
}

/** What a desktop printer and a hand that shakes powder take (common practice, from memory). */
export const startingRates: Rates = {
  colour: fromVolume(9, 'ml'),
  white: fromVolume(14, 'ml'),
  powder: fromMass(100, 'g'),
};

const SQUARE_MILLIMETRES = 1_000_000;

/**
 * What areas printed in full take: `area x rate`, rounded once. Powder sticks to wet ink, and white lies under all of it.
 * @param coverage in square millimetres, summed over all copies
 */
export const consumptionOf = (
  { colour, white }: { readonly colour: number; readonly white: number },
  rates: Rates,
): Consumption => ({
  colour: Math.round((colour / SQUARE_MILLIMETRES) * rates.colour) as Microlitres,
  white: Math.round((white / SQUARE_MILLIMETRES) * rates.white) as Microlitres,
  powder: Math.round((white / SQUARE_MILLIMETRES) * rates.powder) as Milligrams,
});
