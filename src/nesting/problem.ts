import type { Ring } from '../outlines';
import type { FilmUsed, Margins, Span } from '../packing';
import type { Micrometres } from '../units';

/** An outline to be laid out `count` times. */
export interface OutlinePiece {
  readonly id: string;
  /** Islands and holes; their common box has its corner at the origin. */
  readonly rings: readonly Ring[];
  readonly count: number;
  /** The turns that it may lie in, in degrees counter-clockwise with x to the right and y up; one at least. */
  readonly rotations: readonly number[];
}

/** Film to lay copies on. */
export type OutlineFilm =
  | {
      readonly kind: 'roll';
      readonly width: Micrometres;
      /** No span between two knife lines is longer; `null` if the roll is not cut. */
      readonly spanMax: Micrometres | null;
      /** Film left blank after each knife line. */
      readonly cutBlank: Micrometres;
      /** Knife lines of a roll that is cut that are drawn already, around what stays where it is; others come behind the last of them. */
      readonly lines: readonly Micrometres[];
      /** How much there is of a roll that is not cut, lead and tail included; `null` for as much as it takes. */
      readonly lengthLimit: Micrometres | null;
      /** Stretches of a roll where nothing may be printed; of one that is cut, before the last line that is drawn or in the span behind it. */
      readonly noPrint: readonly Span[];
    }
  | {
      readonly kind: 'sheet';
      readonly width: Micrometres;
      readonly length: Micrometres;
      /** How many there are; `null` for as many as it takes. */
      readonly sheetLimit: number | null;
    };

/**
 * What is to be laid out by outlines: no point of one copy is nearer to another than the gap. A copy may lie in another's hole, and
 * keeps its box half a gap from knife lines.
 */
export interface OutlineProblem {
  readonly film: OutlineFilm;
  readonly margins: Margins;
  readonly gap: Micrometres;
  readonly pieces: readonly OutlinePiece[];
  /** Copies that stay where they are, beside each piece's `count`; on a roll that is cut, where `noPrint` may be too. */
  readonly pinned: readonly OutlinePlaced[];
}

/** A copy on the film: the corner, nearest to x = 0 and to the leading edge, of the box of its turned outline. */
export interface OutlinePlaced {
  /** Index into {@link OutlineProblem.pieces}. */
  readonly piece: number;
  /** 0 on a roll. */
  readonly sheet: number;
  readonly x: Micrometres;
  readonly y: Micrometres;
  /** One of the piece's rotations. */
  readonly rotation: number;
}

/** Every copy that is not pinned has its place in it, but for those that the film has no room for. */
export interface OutlinePlan {
  readonly placed: readonly OutlinePlaced[];
  readonly used: FilmUsed;
}
