import type { Id } from '../model';
import { checkPlacement } from '../packing';
import { groundOf } from './check';
import type { LaidCopy, LaidRun } from './laid';

/**
 * The copies that no longer fit where they lie, after a size, a gap or the film has changed.
 * Pinned copies have the first claim on their place, then those nearer the leading edge.
 */
export function unfitCopies(run: LaidRun): Id<'copy'>[] {
  const claims = [...run.copies].sort((a, b) => Number(b.pinned) - Number(a.pinned) || a.y - b.y);
  const kept: LaidCopy[] = [];
  const unfit: Id<'copy'>[] = [];
  for (const copy of claims) {
    const maySo = !copy.turned || copy.transfer.turn === 'quarter';
    if (maySo && checkPlacement(groundOf(run.film), copy, kept).length === 0) kept.push(copy);
    else unfit.push(copy.id);
  }
  return unfit;
}
