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
  /** Does it part two spans, or take the run off the roll? */
  readonly kind: 'between' | 'off';
}

/** The spans a run is cut into: the whole of it, if no knife lines part it; none, if nothing lies on it. */
export function runSpans({ spans, lengthUsed }: Pick<LaidRun, 'spans' | 'lengthUsed'>): readonly Span[] {
  if (lengthUsed === 0) return [];
  return spans && spans.length > 0 ? spans : [{ from: um(0), to: lengthUsed }];
}

/** Every cut a run takes, the one that takes it off the roll last. */
export function knifeCuts(run: Pick<LaidRun, 'spans' | 'lengthUsed'>): Cut[] {
  const spans = runSpans(run);
  return spans.map(({ from, to }, index) => ({
    number: index + 1,
    at: to,
    fromPrevious: um(to - from),
    kind: index === spans.length - 1 ? 'off' : 'between',
  }));
}

/** How many copies lie in a span. No copy crosses a knife line, so its middle tells. */
export const copiesWithin = (copies: readonly LaidCopy[], { from, to }: Span): number =>
  copies.filter(({ y, length }) => y + length / 2 >= from && y + length / 2 < to).length;
