import type { FilmUsed, Margins } from '../packing';
import type { Micrometres } from '../units';

/**
 * A closed line of corners, x and y in turn, in micrometres, each corner once. Seen with x to the right and y up, outer rings run
 * counter-clockwise and holes clockwise; rings neither cross nor touch.
 */
export type Ring = Float64Array;

/** An outline to be laid out `count` times. */
export interface OutlinePiece {
  readonly id: string;
  /** Islands and holes; their common box has its corner at the origin. */
  readonly rings: readonly Ring[];
  readonly count: number;
  /** The turns that it may lie in, in degrees counter-clockwise with x to the right and y up; one at least. */
  readonly rotations: readonly number[];
}

/** Film without stretches that nothing may be printed on, and as much of it as it takes. */
export type OutlineFilm =
  | {
      readonly kind: 'roll';
      readonly width: Micrometres;
      /** No span between two knife lines is longer; `null` if the roll is not cut. */
      readonly spanMax: Micrometres | null;
      /** Film left blank after each knife line. */
      readonly cutBlank: Micrometres;
    }
  | { readonly kind: 'sheet'; readonly width: Micrometres; readonly length: Micrometres };

/**
 * What is to be laid out by outlines: no point of one copy is nearer to another than the gap. A copy may lie in another's hole, and
 * keeps its box half a gap from knife lines.
 */
export interface OutlineProblem {
  readonly film: OutlineFilm;
  readonly margins: Margins;
  readonly gap: Micrometres;
  readonly pieces: readonly OutlinePiece[];
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

/** Every copy has its place in it. */
export interface OutlinePlan {
  readonly placed: readonly OutlinePlaced[];
  readonly used: FilmUsed;
}
