import type { Id } from '../model';
import { placementRefusals } from './check';
import type { LaidCopy, LaidRun } from './laid';

/**
 * The copies that no longer fit where they lie, after a size, a gap or the film has changed. Copies that are
 * printed stay; pinned ones have the next claim on their place, then those nearer the leading edge.
 */
export function unfitCopies(run: LaidRun): Id<'copy'>[] {
  const claim = (copy: LaidCopy) => (copy.fixed ? 2 : copy.pinned ? 1 : 0);
  const claims = [...run.copies].sort((a, b) => claim(b) - claim(a) || a.y - b.y);
  const kept: LaidCopy[] = [];
  const unfit: Id<'copy'>[] = [];
  for (const copy of claims) {
    const [refusal] = copy.fixed ? [] : [...placementRefusals(run.film, run, copy, kept)];
    if (refusal) unfit.push(copy.id);
    else kept.push(copy);
  }
  return unfit;
}
