import type { Film, Progress } from '../model';
import type { Ground, Problem } from '../packing';
import { type Micrometres, um } from '../units';

/** A film before anything is printed on it. */
export const untouched: Progress = { printedTo: um(0), spoiled: [] };

const marginsOf = ({ margins, curl }: Film) => ({ ...margins, lead: um(margins.lead + curl) });

/** Film of a roll that a run may use, from its leading edge. */
const usable = (film: Extract<Film, { kind: 'roll' }>): Micrometres =>
  um(Math.max(0, film.lengthLeft - film.unreached - film.jobBlank));

const noPrintOf = (film: Extract<Film, { kind: 'roll' }>, { printedTo, spoiled }: Progress) => [
  ...film.noPrint,
  ...spoiled,
  ...(printedTo > 0 ? [{ from: um(0), to: printedTo }] : []),
];

/** Sheets that are printed or spoiled: nothing is added to these. */
export const sheetsPrinted = (
  film: Extract<Film, { kind: 'sheets' }>,
  { printedTo }: Pick<Progress, 'printedTo'>,
): number => Math.ceil(printedTo / film.length);

/** A film as the engine sees it. */
export function shapeOf(
  film: Film,
  progress: Progress,
): Pick<Problem, 'film' | 'margins' | 'gap' | 'cutting' | 'together'> {
  const { width, gap, cutting, together } = film;
  const margins = marginsOf(film);
  if (film.kind === 'sheets') {
    return {
      film: {
        kind: 'sheet',
        width,
        length: film.length,
        sheetLimit: film.sheetsLeft,
        printed: sheetsPrinted(film, progress),
      },
      margins,
      gap,
      cutting,
      together,
    };
  }
  const { spanMax, cutBlank } = film;
  const noPrint = noPrintOf(film, progress);
  return {
    film: { kind: 'roll', width, lengthLimit: usable(film), spanMax, cutBlank, noPrint },
    margins,
    gap,
    cutting,
    together,
  };
}

/** What of a film decides where a copy may lie; of sheets, on one of them. */
export function groundOf(film: Film, progress: Progress): Ground {
  const { width, gap } = film;
  const onRoll = film.kind === 'roll';
  return {
    width,
    end: onRoll ? usable(film) : film.length,
    margins: marginsOf(film),
    gap,
    noPrint: onRoll ? noPrintOf(film, progress) : [],
  };
}

/**
 * Sheets lie one behind the other, so that a place is one pair of figures on any film: this is the sheet, from 0,
 * that a position along the film is on.
 */
export const sheetAt = (film: Film, y: number): number =>
  film.kind === 'sheets' ? Math.max(0, Math.floor(y / film.length)) : 0;

/** Where a sheet begins. */
export const sheetStart = (film: Film, sheet: number): Micrometres =>
  um(film.kind === 'sheets' ? sheet * film.length : 0);
