import type { LaidCopy, LaidRun } from '../layout';
import type { Span } from '../packing';
import { type Micrometres, um } from '../units';

/** A straight cut across the whole film. */
export interface Cut {
  /** From 1, in the order in which the film comes out. */
  readonly number: number;
  /** Where it lies on the run as it is planned, to be drawn among its copies: not what a ruler shows. */
  readonly line: Micrometres;
  /** From the run's start, by a ruler on the printed film. */
  readonly fromStart: Micrometres;
  /** From the cut before, by a ruler; the first one from the leading edge: after a cut the old edge is gone. */
  readonly fromPrevious: Micrometres;
  /** Does it part two spans, or take the run off the roll? */
  readonly kind: 'between' | 'off';
}

/** The spans a run is cut into: the whole of it, if no knife lines part it; none, if nothing lies on it. */
export function runSpans({ spans, lengthUsed }: Pick<LaidRun, 'spans' | 'lengthUsed'>): readonly Span[] {
  if (lengthUsed === 0) return [];
  return spans && spans.length > 0 ? spans : [{ from: um(0), to: lengthUsed }];
}

/**
 * A length along the film as a ruler shows it on the printed film, which the printer feeds a little long or short. All distances
 * that anyone is to measure come from here: on the map, in tables, in the Cut room and on a device that a run was handed to.
 */
export const measured = ({ view }: Pick<LaidRun, 'view'>, length: Micrometres): Micrometres =>
  um(length * view.stretch);

/** Every cut that a run on a roll takes, the one that takes it off last; sheets take none. */
export function knifeCuts(run: Pick<LaidRun, 'film' | 'spans' | 'lengthUsed' | 'view'>): Cut[] {
  const spans = run.film.kind === 'sheets' ? [] : runSpans(run);
  return spans.map(({ from, to }, index) => ({
    number: index + 1,
    line: to,
    fromStart: measured(run, to),
    fromPrevious: um(measured(run, to) - measured(run, from)),
    kind: index === spans.length - 1 ? 'off' : 'between',
  }));
}

/** The copies that lie in a span. No copy crosses a knife line, so its middle tells. */
export const copiesWithin = (copies: readonly LaidCopy[], { from, to }: Span): LaidCopy[] =>
  copies.filter(({ y, length }) => y + length / 2 >= from && y + length / 2 < to);
