import type { Sequence } from './sequence';
import type { Strip } from './strip';

/** Where copies lie after a build, in grown coordinates. One build's result is overwritten by the next. */
export interface Build {
  length: number;
  readonly piece: Int32Array;
  readonly bin: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly turned: Uint8Array;
  bins: number;
  /** Far end of the copies in each bin. */
  readonly tops: Float64Array;
  /** Grown area of the copies that found no place. */
  unplacedArea: number;
}

/** Limits of one build: how long each bin may get, and all of them together. */
export interface Limits {
  readonly first: number;
  readonly other: number;
  readonly total: number;
  readonly most: number;
}

/** Where copies may begin: in which bin, and how far along it. */
export interface Floor {
  readonly bin: number;
  readonly y: number;
}

/** How a place is chosen for the lowest segment of the skyline. */
export interface Rule {
  /** Strip a copy may leave unusable beside itself and still count as fitting, as a share of the width. */
  readonly waste: number;
  /** A copy that fills the segment, within this share of the width, is taken before all others. */
  readonly exact: number;
  /** A copy whose far end is level with a neighbour's is preferred. */
  readonly level: boolean;
  /** A copy that leaves a strip which another fills is preferred to one that leaves any other strip of use. */
  readonly paired: boolean;
  /** Copies lie at the left end of a segment, or else at the end with the taller neighbour. */
  readonly left: boolean;
}

/** Builds layouts from sequences. One build overwrites the one before it. */
export interface Decoder {
  decode(sequence: Sequence, rule: Rule, limits: Limits): Build;
}

/** A way to build layouts from sequences. */
export interface Way {
  readonly decoder: Decoder;
  readonly rule: Rule;
}

/** A build with room for every copy of a strip, each in a bin of its own at worst, behind those that something lies in. */
export function emptyBuild({ count, pins, bins }: Strip): Build {
  const copies = count.reduce((sum, own) => sum + own, 0);
  const taken = pins.reduce((most, { sheet }) => Math.max(most, sheet + 1), Math.max(1, bins.printed));
  return {
    length: 0,
    piece: new Int32Array(copies),
    bin: new Int32Array(copies),
    x: new Float64Array(copies),
    y: new Float64Array(copies),
    turned: new Uint8Array(copies),
    bins: 0,
    tops: new Float64Array(copies + taken),
    unplacedArea: 0,
  };
}
