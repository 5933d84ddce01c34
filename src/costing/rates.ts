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
