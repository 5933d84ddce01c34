import type { Costs } from '../model';
import { asMilliMinor, asMinor, asSeconds, FINER, fromMinutes, fromVolume, minorDigits } from '../units';

/** What a small shop pays to begin with, in the currency's own units (common practice, no source): all of it is the shop's to set. */
export function startingCosts(currency: string): Costs {
  const unit = 10 ** minorDigits(currency);
  const fine = (amount: number) => asMilliMinor(amount * unit * 10 ** FINER);
  const hour = fine(18);
  return {
    filmBy: 'footprint',
    colourInk: fine(150),
    whiteInk: fine(160),
    powder: fine(35),
    maintenance: {
      day: fromVolume(6, 'ml'),
      runsADay: 2,
      cleaning: fromVolume(3, 'ml'),
      cleanings: 1,
      // Until the log tells more, the cleaning is all that a start takes.
      start: { colour: fromVolume(0, 'ml'), white: fromVolume(0, 'ml') },
    },
    energy: fine(0.2),
    watts: { printer: 150, oven: 1500, press: 1400 },
    labour: { artwork: hour, printing: hour, cutting: hour, pressing: hour, packing: hour },
    artworkTime: { order: fromMinutes(3), design: asSeconds(420) },
    blank: asMinor(4.5 * unit),
    blanks: [],
    spoilage: 0.03,
    overhead: { kind: 'hour', rate: fine(6) },
  };
}
