import { runCost } from '../model';
import { areaOf } from '../outlines';
import type { FilmUsed } from '../packing';
import { type Micrometres, type Minor, um } from '../units';
import { fewestJobs, sheetAt, sheetStart } from './film-shape';
import { furthestEnd, type LaidCopy, type LaidRun } from './laid';

/** What the sentence over the film says. Shares are between 0 and 1. */
interface RunFigures {
  /** Film taken off the roll, what the printer feeds blank for a job included. */
  readonly length: Micrometres;
  /** 0 on a roll. */
  readonly sheets: number;
  /** `1 - copy area / film area`: lead, tail, gaps and blanks are waste. */
  readonly waste: number;
  readonly cost: Minor;
}

/**
 * The film that a copy takes, in square micrometres: its box; of what lies by its outline, only what is within it, since the film beside it
 * is another's, or waste.
 */
export const areaTaken = ({
  width,
  length,
  outline,
}: Pick<LaidCopy, 'width' | 'length' | 'outline'>): number => (outline ? areaOf(outline) : width * length);

/** The film that all copies of a run take, in square micrometres. */
export const copyArea = ({ copies }: Pick<LaidRun, 'copies'>): number =>
  copies.reduce((sum, copy) => sum + areaTaken(copy), 0);

/** Share of a length of this film that the run's copies leave unprinted; 0 where there is no film. */
export function wasteOver(run: Pick<LaidRun, 'copies' | 'film'>, length: Micrometres): number {
  return length > 0 ? 1 - copyArea(run) / (run.film.width * length) : 0;
}

/** Film that is taken off a roll by a run: what the printer feeds blank for each of its jobs comes on top. */
export const takenOffRoll = ({
  film,
  lengthUsed,
  printedTo,
  spans,
}: Pick<LaidRun, 'film' | 'lengthUsed' | 'printedTo' | 'spans'>): Micrometres =>
  film.kind === 'roll'
    ? um(lengthUsed + film.jobBlank * fewestJobs(film, lengthUsed, { printedTo }, spans?.length))
    : lengthUsed;

/** Film that so much of a roll takes at the least, into as few spans as it may be cut. */
export const leastOffRoll = (
  film: LaidRun['film'],
  lengthUsed: Micrometres,
  { printedTo }: Pick<LaidRun, 'printedTo'>,
): Micrometres => takenOffRoll({ film, lengthUsed, printedTo, spans: null });

/** Film that is taken by a plan. */
export const filmTaken = (
  film: LaidRun['film'],
  used: FilmUsed,
  { printedTo }: Pick<LaidRun, 'printedTo'>,
): { readonly length: Micrometres; readonly sheets: number } =>
  used.kind === 'roll'
    ? {
        // Of film that is not cut a plan tells no spans.
        length: takenOffRoll({
          film,
          lengthUsed: used.length,
          printedTo,
          spans: used.spans.length > 0 ? used.spans : null,
        }),
        sheets: 0,
      }
    : { length: um(0), sheets: used.sheets };

export function runFigures(run: LaidRun): RunFigures {
  const { film } = run;
  const length = takenOffRoll(run);
  const sheets = film.kind === 'sheets' ? sheetAt(film, run.lengthUsed) : 0;
  return { length, sheets, waste: wasteOver(run, length), cost: runCost(film, { length, sheets }) };
}

/**
 * What stays clean of the last sheet over its full width, once it is cut half a gap after the last copy: its length. 0 on a
 * roll, and where it is too short to be printed on between its front and end margins.
 */
export function cleanOffcut({ film, copies }: Pick<LaidRun, 'film' | 'copies'>): Micrometres {
  if (film.kind === 'roll' || copies.length === 0) return um(0);
  const end = furthestEnd(copies);
  const sheetEnd = sheetStart(film, sheetAt(film, end - 1) + 1);
  const offcut = sheetEnd - end - Math.round(film.gap / 2);
  return um(offcut > film.margins.lead + film.curl + film.margins.tail ? offcut : 0);
}

/**
 * The share of the film from an order's first copy to its last one's end, on the average of the orders weighed by their copies.
 * 1 without copies.
 */
export function orderStretch({ copies, lengthUsed }: Pick<LaidRun, 'copies' | 'lengthUsed'>): number {
  if (lengthUsed === 0) return 1;
  const stretches = new Map<string, { from: number; to: number; copies: number }>();
  for (const { order, y, length } of copies) {
    const known = stretches.get(order.id) ?? { from: y, to: y, copies: 0 };
    const [from, to] = [Math.min(known.from, y), Math.max(known.to, y + length)];
    stretches.set(order.id, { from, to, copies: known.copies + 1 });
  }
  const weighed = [...stretches.values()].reduce(
    (sum, { from, to, copies: own }) => sum + own * (to - from),
    0,
  );
  return weighed / (copies.length * lengthUsed);
}
