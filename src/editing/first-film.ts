import { rollWidths } from '../model';
import { asMinor, fromMm, fromUnit, minorDigits } from '../units';
import type { FilmFields } from './films';

/** A desktop printer's roll, whole (common practice, no source); the price is the shop's to set. */
export const firstFilm = (name: string, currency: string): FilmFields => ({
  kind: 'roll',
  name,
  width: rollWidths['roll-13in'],
  margins: { left: fromMm(5), right: fromMm(5), lead: fromMm(10), tail: fromMm(10) },
  lengthLeft: fromUnit(60, 'm'),
  price: { amount: asMinor(8.4 * 10 ** minorDigits(currency)), per: fromUnit(1, 'm') },
  gap: fromMm(5),
  cutting: 'free',
  together: { kind: 'any' },
  peel: 'hot',
  spanMax: fromMm(480),
  curl: fromMm(0),
  jobBlank: fromMm(0),
  cutBlank: fromMm(0),
  unreached: fromMm(400),
  noPrint: [],
  archived: false,
});
