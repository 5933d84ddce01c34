import { filmCost } from '../costing';
import type { Micrometres, Minor } from '../units';
import type { LaidRun } from './laid';

/** What the sentence over the film says. Shares are between 0 and 1. */
export interface RunFigures {
  readonly lengthUsed: Micrometres;
  /** `1 - copy area / (film width x length used)`: lead, tail and gaps are waste. */
  readonly waste: number;
  readonly cost: Minor;
}

const copyArea = (run: Pick<LaidRun, 'copies'>): number =>
  run.copies.reduce((sum, copy) => sum + copy.width * copy.length, 0);

/** Share of a length of this film that the run's copies leave unprinted; 0 where there is no film. */
export function wasteOver(run: Pick<LaidRun, 'copies' | 'film'>, length: Micrometres): number {
  return length > 0 ? 1 - copyArea(run) / (run.film.width * length) : 0;
}

export const runFigures = (run: LaidRun): RunFigures => ({
  lengthUsed: run.lengthUsed,
  waste: wasteOver(run, run.lengthUsed),
  cost: filmCost(run.lengthUsed, run.film),
});
