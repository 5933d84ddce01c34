import type { Film, Progress, Roll } from '../model';
import type { Ground, Problem } from '../packing';
import { type Micrometres, um } from '../units';

/** A film before anything is printed on it. */
export const untouched: Progress = { printedTo: um(0), spoiled: [] };

const marginsOf = ({ margins, curl }: Film) => ({ ...margins, lead: um(margins.lead + curl) });

/**
 * Jobs as which so much of a roll is printed, at the least, behind what is printed of it already.
 * @param spans how many it is cut into, where that is known
 */
export function fewestJobs(
  { jobs, spanMax }: Pick<Roll, 'jobs' | 'spanMax'>,
  lengthUsed: Micrometres,
  { printedTo }: Pick<Progress, 'printedTo'>,
  spans: number | null = null,
): number {
  if (lengthUsed === 0) return 0;
  if (jobs === 'span') return spans ?? (spanMax === null ? 1 : Math.ceil(lengthUsed / spanMax));
  // What lies behind where the run stopped is another job.
  return printedTo > 0 && lengthUsed > printedTo ? 2 : 1;
}

/** Film of a roll that a run may use, from its leading edge, the blank of all its jobs left over. */
function usable(film: Roll, { printedTo }: Pick<Progress, 'printedTo'>): Micrometres {
  const { spanMax, jobBlank, jobs } = film;
  const reached = Math.max(0, film.lengthLeft - film.unreached);
  if (jobs === 'run' || spanMax === null || jobBlank === 0)
    return um(Math.max(0, reached - jobBlank * (jobs === 'run' && printedTo > 0 ? 2 : 1)));
  const whole = Math.floor(reached / (spanMax + jobBlank));
  return um(whole * spanMax + Math.max(0, reached - whole * (spanMax + jobBlank) - jobBlank));
}

const noPrintOf = (film: Roll, { printedTo, spoiled }: Progress) => [
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
  const { width, gap, together } = film;
  // Whether holes are room is told by the outlines.
  const cutting = film.cutting === 'in-holes' ? 'outlines' : film.cutting;
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
    film: { kind: 'roll', width, lengthLimit: usable(film, progress), spanMax, cutBlank, noPrint },
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
    end: onRoll ? usable(film, progress) : film.length,
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
