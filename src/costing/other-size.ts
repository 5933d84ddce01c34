import {
  type Film,
  isSameSize,
  type Roll,
  type RollSize,
  rollSizes,
  rollWidth,
  type Settings,
  type SheetSize,
  sheetSizes,
} from '../model';
import { asMinor, fromMm, keysOf, type Micrometres, um } from '../units';

/** A size that film is sold in. */
export type FilmSize =
  | { readonly kind: 'roll'; readonly width: Micrometres }
  | { readonly kind: 'sheets'; readonly width: Micrometres; readonly length: Micrometres };

/** A size by its name in the trade. */
export type TradeSize = RollSize | SheetSize;

export const tradeSizes: readonly TradeSize[] = [...rollSizes, ...keysOf(sheetSizes)];

const isSheetSize = (size: TradeSize): size is SheetSize => Object.hasOwn(sheetSizes, size);

/** A size of the trade, as it is sold where this unit is used. */
export const tradeSize = (size: TradeSize, unit: Settings['unit']): FilmSize =>
  isSheetSize(size)
    ? { kind: 'sheets', ...sheetSizes[size] }
    : { kind: 'roll', width: rollWidth(size, unit) };

/** Whether film is of a size. */
export const isOfSize = (film: Film, size: FilmSize): boolean =>
  isSameSize(film.width, size.width) &&
  (film.kind === 'sheets'
    ? size.kind === 'sheets' && isSameSize(film.length, size.length)
    : size.kind === 'roll');

const METRE = fromMm(1000);

/** Minor units of money for a square micrometre. */
const priceOfArea = (film: Film): number =>
  film.kind === 'roll'
    ? film.price.amount / film.price.per / film.width
    : film.price / film.length / film.width;

/** What a roll adds to film of sheets; what a printer loses of a roll cannot be known from sheets. */
const plainRoll: Pick<Roll, 'spanMax' | 'jobBlank' | 'jobs' | 'cutBlank' | 'unreached' | 'noPrint'> = {
  spanMax: null,
  jobBlank: um(0),
  jobs: 'run',
  cutBlank: um(0),
  unreached: um(0),
  noPrint: [],
};

/** The same film in another size: as much of it by area, for as much by area, with the same edges, gap and way of cutting. */
export function inOtherSize(film: Film, size: FilmSize): Film {
  const { width } = size;
  const price = priceOfArea(film);
  const area = film.width * (film.kind === 'roll' ? film.lengthLeft : film.length * film.sheetsLeft);
  const { id, name, printer, margins, gap, cutting, together, peel, curl, archived, changed } = film;
  const common = { id, name, printer, width, margins, gap, cutting, together, peel, curl, archived, changed };
  if (size.kind === 'sheets') {
    const { length } = size;
    return {
      ...common,
      kind: 'sheets',
      length,
      sheetsLeft: Math.floor(area / (width * length)),
      price: asMinor(price * width * length),
    };
  }
  const per = film.kind === 'roll' ? film.price.per : METRE;
  return {
    ...(film.kind === 'roll' ? film : plainRoll),
    ...common,
    kind: 'roll',
    lengthLeft: um(Math.floor(area / width)),
    price: { amount: asMinor(price * width * per), per },
  };
}
