import type { Film, Id } from '../model';
import type { Span } from '../packing/problem';
import type { Micrometres } from '../units';

/** A copy as it lies on the film; `width` across it, `length` along it, turned or not. */
export interface LaidCopy {
  readonly id: Id<'copy'>;
  readonly order: { readonly id: Id<'order'>; readonly code: string; readonly tint: number };
  /** Counted within the order: `HB 7` is code and number. */
  readonly number: number;
  readonly transfer: { readonly id: Id<'transfer'>; readonly name: string };
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly width: Micrometres;
  readonly length: Micrometres;
  readonly turned: boolean;
  readonly pinned: boolean;
}

/** A run with all that it takes to draw, print or cut it. */
export interface LaidRun {
  readonly name: string;
  readonly film: Film;
  readonly copies: readonly LaidCopy[];
  /** Far end of the last copy and the tail; 0 if there is none. */
  readonly lengthUsed: Micrometres;
  /** From 0 to `lengthUsed`; one span, if the film is not cut; `null` if no lines can cut this layout as the film asks. */
  readonly spans: readonly Span[] | null;
}
