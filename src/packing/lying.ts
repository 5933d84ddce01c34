import type { Micrometres } from '../units';
import type { Lying } from './faults';
import type { Placed, Problem } from './problem';
import { sizeAt } from './size-at';

/** A placed copy as it lies. */
export interface LyingCopy extends Lying {
  readonly piece: number;
}

/** Placed copies as they lie, the pinned ones first; copies of no piece are left out. */
export const lyingCopies = ({ pieces, pinned }: Problem, placed: readonly Placed[]): LyingCopy[] =>
  placed.flatMap((copy, index) => {
    const piece = pieces[copy.piece];
    if (!piece) return [];
    const { x, y, sheet, angle } = copy;
    const { rank, turn } = piece;
    return [
      {
        piece: copy.piece,
        x,
        y,
        ...sizeAt(piece, angle),
        sheet,
        angle,
        turning: turn,
        order: rank,
        rank,
        fixed: index < pinned.length,
      },
    ];
  });

/** A copy that lies elsewhere. */
export const moveTo = (
  copy: LyingCopy,
  to: { x?: Micrometres; y?: Micrometres; sheet?: number },
): LyingCopy => ({ ...copy, ...to });

/** Where a copy lies, as plans tell it. */
export const placedOf = ({ piece, sheet, x, y, angle }: LyingCopy): Placed => ({
  piece,
  sheet,
  x,
  y,
  angle,
});
