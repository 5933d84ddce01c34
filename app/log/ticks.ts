import { fromInches, fromMm, toInches, toMm, um } from '../../src/units';
import { number, type Ways } from '../words/format';

/** A day under an axis: `26 Nov`. */
export const dayTick = (seconds: number, { locale }: Ways): string =>
  new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short' }).format(1000 * seconds);

/** Steps of an axis, as people count; thousands of metres, or feet, at most. */
const ROUND = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** Steps of an axis of film in micrometres: round in the unit that is shown. */
export const filmSteps = ({ unit }: Pick<Ways, 'unit'>): number[] => {
  const one = unit === 'in' ? 12 * fromInches(1) : fromMm(1000);
  return ROUND.map((round) => Math.round(round * one));
};

/** Film beside an axis: `5 ft`. */
export function filmTick(micrometres: number, { unit, locale }: Ways): string {
  const length = um(Math.round(micrometres));
  return unit === 'in'
    ? `${number(toInches(length) / 12, locale, 0, 1)} ft`
    : `${number(toMm(length) / 1000, locale, 0, 1)} m`;
}

/** Steps of an axis of working time in seconds: minutes, quarters and hours. */
export const timeSteps = [5, 10, 15, 30, 60, 120, 300, 600, 1200, 3000].map((minutes) => 60 * minutes);

/** Steps of an axis of shares: whole per cents. */
export const shareSteps = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5];
