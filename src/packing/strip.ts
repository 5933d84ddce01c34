import { mayLieAt, QUARTER } from '../units';
import type { Problem, Together, UnplacedReason } from './problem';
import { sizeAt } from './size-at';

/**
 * A problem in the engine's own terms. Every copy is grown by the gap at its far sides, and the
 * printable film likewise, so that grown copies may touch: the gap is gone. Lengths are whole
 * micrometres in doubles, exact far beyond any film.
 */
export interface Strip {
  /** Printable width, grown. */
  readonly width: number;
  /** Grown extents of each piece, by index. */
  readonly across: Float64Array;
  readonly along: Float64Array;
  readonly count: Int32Array;
  /** 1 where a quarter turn is allowed and makes a difference. */
  readonly turns: Uint8Array;
  readonly rank: Int32Array;
  readonly bins: Bins;
  /** Film before the first grown copy and after the last one beyond their own extents. */
  readonly before: number;
  readonly after: number;
  /** How its boxes are parted: the engine of boxes knows no outlines. */
  readonly cutting: Exclude<Problem['cutting'], 'outlines'>;
  readonly together: Together;
  readonly pins: readonly Pin[];
  readonly noPrint: readonly NoPrint[];
}

/**
 * How the strip is parted: one length without end, or with one; spans after one another; sheets.
 * `first` and `other` are the grown lengths that bins may be filled to.
 */
interface Bins {
  readonly kind: 'strip' | 'spans' | 'sheets';
  readonly first: number;
  readonly other: number;
  /** The grown length in all, on a roll that ends. */
  readonly total: number;
  /** How many bins there may be. */
  readonly most: number;
  /** Sheets that nothing is added to: they are printed. */
  readonly printed: number;
  /** Film between two spans beyond what their copies take. */
  readonly between: number;
  /** How much further copies may reach in the last of several spans: no line follows it. */
  readonly beyond: number;
}

/** Grown film that no copy may begin in: from one place along the strip to another. */
interface NoPrint {
  readonly from: number;
  readonly to: number;
}

/** A pinned copy, grown, in the strip's own coordinates. */
export interface Pin {
  readonly piece: number;
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly along: number;
}

function binsOf({ film, margins, gap }: Problem): Bins {
  const endless = Number.POSITIVE_INFINITY;
  if (film.kind === 'sheet') {
    const length = film.length - margins.lead - margins.tail + gap;
    return {
      kind: 'sheets',
      first: length,
      other: length,
      total: endless,
      between: 0,
      beyond: 0,
      printed: film.printed,
      most: film.sheetLimit ?? endless,
    };
  }
  const total = film.lengthLimit === null ? endless : film.lengthLimit - margins.lead - margins.tail + gap;
  if (film.spanMax === null) {
    return { kind: 'strip', first: total, other: total, total, printed: 0, between: 0, beyond: 0, most: 1 };
  }
  // A knife line lies half a gap from copies; before the first one there is the lead instead. What the
  // tail needs beyond the last span can be a blank span of its own.
  const between = Math.max(0, film.cutBlank - gap / 2);
  const first = film.spanMax - margins.lead + gap / 2;
  return {
    kind: 'spans',
    first,
    other: film.spanMax - between,
    total,
    printed: 0,
    between,
    beyond: Math.max(0, gap / 2 - margins.tail),
    most: endless,
  };
}

/** A no-print stretch in grown coordinates: a copy reaches the gap further than it prints. */
function noPrintOf({ film, margins, gap }: Problem): NoPrint[] {
  if (film.kind !== 'roll') return [];
  return film.noPrint
    .filter(({ to }) => to > margins.lead)
    .map(({ from, to }) => ({
      from: Math.min(from + gap, to - 1) - margins.lead,
      to: to - margins.lead,
    }));
}

/** Puts a problem into the engine's terms. */
export function stripOf(problem: Problem): Strip {
  const { film, margins, gap, pieces, pinned } = problem;
  return {
    width: film.width - margins.left - margins.right + gap,
    across: Float64Array.from(pieces, (piece) => piece.width + gap),
    along: Float64Array.from(pieces, (piece) => piece.length + gap),
    count: Int32Array.from(pieces, (piece) => piece.count),
    turns: Uint8Array.from(pieces, (piece) =>
      mayLieAt(piece.turn, QUARTER) && piece.width !== piece.length ? 1 : 0,
    ),
    rank: Int32Array.from(pieces, (piece) => piece.rank),
    cutting: problem.cutting === 'outlines' ? 'free' : problem.cutting,
    together: problem.together,
    bins: binsOf(problem),
    noPrint: noPrintOf(problem),
    before: margins.lead,
    after: margins.tail - gap,
    pins: pinned.flatMap((pin) => {
      const piece = pieces[pin.piece];
      if (!piece) return [];
      const { width, length } = sizeAt(piece, pin.angle);
      const { x, y, sheet } = pin;
      return [
        {
          piece: pin.piece,
          sheet,
          x: x - margins.left,
          y: y - margins.lead,
          across: width + gap,
          along: length + gap,
        },
      ];
    }),
  };
}

/** Whether nothing lies on a strip, and all of it may be used. */
export const isEmpty = ({ pins, noPrint, bins }: Strip): boolean =>
  pins.length === 0 && noPrint.length === 0 && bins.printed === 0;

/** Why a piece has no place anywhere on empty film; `null` if it has one. */
export function tooLarge(strip: Strip, piece: number): Exclude<UnplacedReason, 'no-room'> | null {
  const { width, bins, turns } = strip;
  const across = strip.across[piece] ?? 0;
  const along = strip.along[piece] ?? 0;
  const longest = Math.min(Math.max(bins.first, bins.other), bins.total);
  const turned = turns[piece] === 1;
  if (across <= width && along <= longest) return null;
  if (turned && along <= width && across <= longest) return null;
  const fitsAcross = across <= width || (turned && along <= width);
  return fitsAcross ? 'too-long' : 'too-wide';
}
