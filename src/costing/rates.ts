import type { Rates, Settings } from '../model';
import {
  asMicrolitres,
  asMilligrams,
  fromMass,
  fromVolume,
  type Microlitres,
  type Milligrams,
} from '../units';

/** Ink and powder on film. */
export interface Consumption {
  readonly colour: Microlitres;
  readonly white: Microlitres;
  readonly powder: Milligrams;
}

const SQUARE_FOOT = 0.3048 ** 2;

/** Figures for a square metre, or for a square foot as a part of it: 1 ft = 0.3048 m exactly, NIST SP 811, appendix B. */
const rates = (colour: number, white: number, powder: number, part = 1): Rates => ({
  colour: fromVolume(colour / part, 'ml'),
  white: fromVolume(white / part, 'ml'),
  powder: fromMass(powder / part, 'g'),
});

/** What a desktop printer and a hand that shakes powder take, in round figures of the shop's unit (common practice, from memory). */
export const startingRates: Readonly<Record<Settings['unit'], Rates>> = {
  mm: rates(9, 14, 100),
  in: rates(0.85, 1.3, 9.3, SQUARE_FOOT),
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
  colour: asMicrolitres((colour / SQUARE_MILLIMETRES) * rates.colour),
  white: asMicrolitres((white / SQUARE_MILLIMETRES) * rates.white),
  powder: asMilligrams((white / SQUARE_MILLIMETRES) * rates.powder),
});

/** Ink of cleanings that a run takes, of colour and of white alike: half of it each. */
export const cleaned = ({ maintenance }: Settings['costs']): number =>
  Math.round((maintenance.cleanings * maintenance.cleaning) / 2);

/** What a run takes: by the areas it prints in full, and the ink that each run takes, whatever it prints. */
export function runConsumption(
  coverage: { readonly colour: number; readonly white: number },
  { rates, costs }: Pick<Settings, 'rates' | 'costs'>,
): Consumption {
  const { colour, white, powder } = consumptionOf(coverage, rates);
  const { start } = costs.maintenance;
  const each = cleaned(costs);
  return {
    colour: asMicrolitres(colour + start.colour + each),
    white: asMicrolitres(white + start.white + each),
    powder,
  };
}
