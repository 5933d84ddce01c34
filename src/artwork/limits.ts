import { type Micrometres, um } from '../units';

/** From which widths on a shop trusts its film. */
export interface Limits {
  readonly stroke: Micrometres;
  readonly opening: Micrometres;
  /** What is taken off the white on each side of an edge, by the printer's software or in a plane of its own. */
  readonly choke: Micrometres;
  /** The thinnest white that holds. */
  readonly white: Micrometres;
}

/** The width under which strokes are looked for: those too thin, and those that the choke leaves too little white under. */
export const strokeLimit = ({ stroke, choke, white }: Limits): Micrometres =>
  um(Math.max(stroke, 2 * choke + white));

/** A place by itself no longer than this many times the limit is a speck, any other a stroke. */
const SPECK = 1.5;

/** How large a speck is at most, at a limit for strokes. */
export const largestSpeck = (stroke: Micrometres): Micrometres => um(SPECK * stroke);
