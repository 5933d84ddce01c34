import type { LaidCopy, LaidRun } from '../layout';
import type { Span } from '../packing';
import { type Micrometres, um } from '../units';

/** A straight cut across the whole film. */
export interface Cut {
  /** From 1, in the order in which the film comes out. */
  readonly number: number;
  /** From the run's start. */
  readonly at: Micrometres;
  /** From the cut before, the first one from the leading edge: after a cut the old edge is gone. */
  readonly fromPrevious: Micrometres;
  /** The same two as a ruler shows them on film that the printer feeds a little long or short. */
  readonly measured: { readonly at: Micrometres; readonly fromPrevious: Micrometres };
  /** Does it part two spans, or take the run off the roll? */
  readonly kind: 'between' | 'off';
}

/** The spans a run is cut into: the whole of it, if no knife lines part it; none, if nothing lies on it. */
export function runSpans({ spans, lengthUsed }: Pick<LaidRun, 'spans' | 'lengthUsed'>): readonly Span[] {
  if (lengthUsed === 0) return [];
  return spans && spans.length > 0 ? spans : [{ from: um(0), to: lengthUsed }];
}

/**
 * Every cut a run takes, the one that takes it off the roll last.
 * @param feed measured length over the length printed, by a test strip
 */
export function knifeCuts(run: Pick<LaidRun, 'spans' | 'lengthUsed'>, feed = 1): Cut[] {
  const spans = runSpans(run);
  return spans.map(({ from, to }, index) => ({
    number: index + 1,
    at: to,
    fromPrevious: um(to - from),
    measured: { at: um(to * feed), fromPrevious: um((to - from) * feed) },
    kind: index === spans.length - 1 ? 'off' : 'between',
  }));
}

/** The copies that lie in a span. No copy crosses a knife line, so its middle tells. */
export const copiesWithin = (copies: readonly LaidCopy[], { from, to }: Span): LaidCopy[] =>
  copies.filter(({ y, length }) => y + length / 2 >= from && y + length / 2 < to);
