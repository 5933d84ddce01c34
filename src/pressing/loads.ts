import type { Station } from '../model';
import { type Micrometres, sum, um } from '../units';
import { numbered, ovenKind } from './crews';
import type { Machine } from './jobs';

/** A rectangle of film that is cured whole, or a transfer that is pressed. */
export interface Sized {
  readonly width: Micrometres;
  readonly length: Micrometres;
}

/** The beds that are heated to cure film: of the presses, or of the ovens. */
export const bedsOf = ({ curer, presses, ovens }: Station): readonly Sized[] =>
  curer === 'press' ? presses.map(({ platen }) => platen) : ovens.map(({ bed }) => bed);

/** The bed that film of a width is laid out for: the largest of those that take it, or of all where none does. */
export function bedFor(width: Micrometres, beds: readonly Sized[]): Sized {
  const none: Sized = { width: um(1), length: um(1) };
  const wide = beds.filter((bed) => width <= Math.max(bed.width, bed.length));
  const area = (bed: Sized) => bed.width * bed.length;
  return (wide.length > 0 ? wide : beds).reduce((most, bed) => (area(bed) > area(most) ? bed : most), none);
}

/** The widest film that can be cured whole, and where: a line takes it in along itself, on a bed it may lie either way. */
export function widestCured(station: Station): {
  readonly takes: Micrometres;
  readonly machine: Machine | null;
} {
  const widths = bedsOf(station).map(({ width, length }) =>
    station.curer === 'line' ? width : Math.max(width, length),
  );
  const takes = Math.max(0, ...widths);
  const all =
    station.curer === 'press'
      ? numbered('press', station.presses)
      : numbered(ovenKind(station), station.ovens);
  return { takes: um(takes), machine: all[widths.indexOf(takes)] ?? null };
}

/** Whether something lies wholly on a bed, turned or not. */
export const fitsOn = ({ width, length }: Sized, bed: Sized): boolean =>
  (width <= bed.width && length <= bed.length) || (length <= bed.width && width <= bed.length);

/** Whether pieces of film lie on a bed side by side in one row, all of them turned alike. */
export function fitTogether(pieces: readonly Sized[], bed: Sized, apart: number): boolean {
  const between = apart * (pieces.length - 1);
  const row = (along: (piece: Sized) => number, across: (piece: Sized) => number): boolean => {
    const length = sum(pieces.map(along)) + between;
    const width = Math.max(...pieces.map(across));
    return (length <= bed.length && width <= bed.width) || (length <= bed.width && width <= bed.length);
  };
  const lengthOf = (piece: Sized) => piece.length;
  const widthOf = (piece: Sized) => piece.width;
  return row(lengthOf, widthOf) || row(widthOf, lengthOf);
}

/** Pieces of film that are cured together, by their numbers, and those larger than the bed, which are in no load. */
export interface Loads {
  readonly loads: readonly (readonly number[])[];
  readonly tooLarge: readonly number[];
}

/**
 * Parts pieces into loads of a bed, in the order in which they are printed: what comes next joins the load if there is room, so
 * that nothing wet waits for something printed much later.
 * @param apart least distance between two pieces on the bed
 * @param most the most pieces in a load: each waits for the last of them
 */
export function loadsOf(
  pieces: readonly Sized[],
  bed: Sized,
  { apart, most }: { readonly apart: number; readonly most: number },
): Loads {
  const loads: number[][] = [];
  const tooLarge: number[] = [];
  pieces.forEach((piece, index) => {
    if (!fitsOn(piece, bed)) {
      tooLarge.push(index);
      return;
    }
    const last = loads.at(-1);
    const joined = last && [...last.flatMap((other) => pieces[other] ?? []), piece];
    // Only neighbours share a load: a piece left out between them has ended it.
    const isNext = last?.at(-1) === index - 1;
    if (last && joined && isNext && joined.length <= most && fitTogether(joined, bed, apart))
      last.push(index);
    else loads.push([index]);
  });
  return { loads, tooLarge };
}
