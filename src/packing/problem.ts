import type { Ring } from '../outlines';
import type { Angle, Micrometres, Turning } from '../units';

/** A rectangle to be placed `count` times. `width` lies across the film (x), `length` along it (y). Boxes are turned by quarters at most. */
export interface Piece {
  readonly id: string;
  readonly width: Micrometres;
  readonly length: Micrometres;
  readonly count: number;
  readonly turn: Turning;
  /** What its copies keep the gap by where they are laid out by outlines, or lie between quarter turns, as it stands upright; their box, where none is told. */
  readonly outline?: readonly Ring[] | null;
  /** Placed first when film is short: the lower the sooner. Pieces of one rank are of one order, or due at one time. */
  readonly rank: number;
}

/** Blank film at the two sides and at the leading and trailing end. */
export interface Margins {
  readonly left: Micrometres;
  readonly right: Micrometres;
  readonly lead: Micrometres;
  readonly tail: Micrometres;
}

/** Film between two knife lines, or between a knife line and an end. */
export interface Span {
  readonly from: Micrometres;
  readonly to: Micrometres;
}

interface RollShape {
  readonly kind: 'roll';
  readonly width: Micrometres;
  /** The most film a plan may use, lead and tail included; `null` for as much as it takes. */
  readonly lengthLimit: Micrometres | null;
  /** No span between two knife lines is longer; `null` if the roll is not cut. */
  readonly spanMax: Micrometres | null;
  /** Film left blank after each knife line, before the next copy: from the head to the knife. */
  readonly cutBlank: Micrometres;
  /** Stretches across the whole film where nothing may be printed. */
  readonly noPrint: readonly Span[];
}

/** Sheets of one size; the margins hold on every one. */
interface SheetShape {
  readonly kind: 'sheet';
  readonly width: Micrometres;
  readonly length: Micrometres;
  /** How many there are; `null` for as many as it takes. */
  readonly sheetLimit: number | null;
  /** So many of them are printed already: nothing is added to these. */
  readonly printed: number;
}

export type FilmShape = RollShape | SheetShape;

/** A copy on the film: the corner, nearest to x = 0 and to the leading edge, of the box that it takes as it is turned. */
export interface Placed {
  /** Index into {@link Problem.pieces}. */
  readonly piece: number;
  /** 0 on a roll. */
  readonly sheet: number;
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly angle: Angle;
}

/**
 * Whether copies of one order, which are those of one rank, are asked to lie together: anywhere; near each other, for up to a
 * share of the film more; each order in a stretch of the film, or of each sheet, that it has to itself; or so, with the stretches in the
 * order of their ranks, those of one rank then being due at one time.
 */
export type Together =
  | { readonly kind: 'any' }
  | { readonly kind: 'near'; readonly share: number }
  | { readonly kind: 'apart' }
  | { readonly kind: 'by-due' };

/** Whether each rank has stretches of the film to itself. */
export const isApart = ({ kind }: Together): boolean => kind === 'apart' || kind === 'by-due';

/**
 * What is to be laid out. Two copies on one film are at least `gap` (an even number of micrometres) apart across or along it; where they
 * are laid out by outlines, their outlines are so far apart at least, or their boxes are.
 */
export interface Problem {
  readonly film: FilmShape;
  readonly margins: Margins;
  readonly gap: Micrometres;
  /**
   * `straight`: cuts from edge to edge alone must separate the copies; `staged`: first across the film, then along it, then
   * across again. Pinned copies lie as they lie. `outlines`: copies may lie in what others leave bare of their boxes.
   */
  readonly cutting: 'free' | 'outlines' | 'straight' | 'staged';
  readonly together: Together;
  readonly pieces: readonly Piece[];
  /** Copies that stay where they are; they come on top of each piece's `count`. */
  readonly pinned: readonly Placed[];
}

/** Why a piece was not placed: it is larger than the film allows anywhere, or there was no film left for it. */
export type UnplacedReason = 'too-wide' | 'too-long' | 'no-room';

export interface Unplaced {
  readonly piece: number;
  readonly count: number;
  readonly reason: UnplacedReason;
}

/** So much film: of a roll a length, lead and tail included, 0 without a copy; or so many whole sheets. */
export type FilmAmount =
  | { readonly kind: 'roll'; readonly length: Micrometres }
  | { readonly kind: 'sheets'; readonly sheets: number };

/** Film that a plan takes; a roll with its spans, from 0 to `length` where {@link RollShape.spanMax} is set, otherwise none. */
export type FilmUsed =
  | (Extract<FilmAmount, { kind: 'roll' }> & { readonly spans: readonly Span[] })
  | Extract<FilmAmount, { kind: 'sheets' }>;

export interface Plan {
  /** Every copy placed, the pinned ones first and in their order. */
  readonly placed: readonly Placed[];
  readonly unplaced: readonly Unplaced[];
  readonly used: FilmUsed;
}

/** What the engine does at once. It is handed in where the engine should not be fetched before it is needed. */
export interface AtOnce {
  /** A first layout. */
  firstPlan(problem: Problem): Plan;
  /**
   * A layout that lies there with the soonest ranks as near to the leading edge as they go on the film that it takes.
   * @param placed where copies lie, the pinned ones first; all that the problem is to lay
   */
  reordered(problem: Problem, placed: readonly Placed[]): Plan;
}
