import type { Id } from '../model';
import { placeRefusals } from './check';
import { holds, isCuttable } from './faults';
import type { LaidCopy, LaidRun } from './laid';

/**
 * The copies that leave no place for a knife line near enough to the one before; those that come first have the first claim.
 * Fewer copies leave more places, so that each is asked once.
 */
function uncuttable(run: LaidRun, claims: readonly LaidCopy[]): Id<'copy'>[] {
  if (isCuttable(run, claims)) return [];
  const kept = claims.filter(({ fixed }) => fixed);
  if (!isCuttable(run, kept)) return [];
  const unfit: Id<'copy'>[] = [];
  for (const copy of claims.slice(kept.length)) {
    kept.push(copy);
    if (isCuttable(run, kept)) continue;
    kept.pop();
    unfit.push(copy.id);
  }
  return unfit;
}

/**
 * The copies that no longer fit where they lie, after a size, a gap or the film has changed, or that leave knife lines no place. Copies that are
 * printed stay; pinned ones have the next claim on their place, then those nearer the leading edge.
 */
export function unfitCopies(run: LaidRun): Id<'copy'>[] {
  if (holds(run)) return [];
  const claim = (copy: LaidCopy) => (copy.fixed ? 2 : copy.pinned ? 1 : 0);
  const claims = [...run.copies].sort((a, b) => claim(b) - claim(a) || a.y - b.y);
  const kept: LaidCopy[] = [];
  const unfit: Id<'copy'>[] = [];
  for (const copy of claims) {
    const [refusal] = copy.fixed ? [] : [...placeRefusals(run.film, run, copy, kept)];
    if (refusal) unfit.push(copy.id);
    else kept.push(copy);
  }
  return [...unfit, ...uncuttable(run, kept)];
}
