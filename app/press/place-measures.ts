import type { LaidRun } from '../../src/layout';
import { type Inches, measures, placesPressed } from '../../src/pressing';
import { fromInches, fromMm, toMm } from '../../src/units';
import type { Words } from '../words';
import { rulerLength, type Ways } from '../words/format';

/** Millimetres are told to five of them, as such a measure is taken; less than two centimetres to one. */
const rounded = (mm: number): number => (mm < 20 ? Math.round(mm) : 5 * Math.round(mm / 5));

const told = (inches: number, ways: Ways): string =>
  rulerLength(ways.unit === 'mm' ? fromMm(rounded(toMm(fromInches(inches)))) : fromInches(inches), ways);

/** From the least to the most, with its unit once. */
function range([least, most]: Inches, ways: Ways): string {
  const [from, to] = [told(least, ways), told(most, ways)];
  return from === to ? to : `${from.replace(/\s*(?:in|mm)$/, '')}–${to}`;
}

/** Where prints lie on the garments that a run is pressed on, a line for each place and group of sizes. */
export const placeMeasures = (run: LaidRun, { grid, cards }: Words, ways: Ways): string[] =>
  placesPressed(run).map(({ place, group }) => {
    const { along, aside } = measures[place][group];
    const measure = cards.measures[place](range(along, ways), aside ? range(aside, ways) : '');
    return `${grid.places[place]}, ${grid.groups[group]}: ${measure}`;
  });
