import type { Piece, Problem, UnplacedReason } from './problem';
import { stripOf, tooLarge } from './strip';

/** Why a piece has no place anywhere on an empty film; `null` if it has one. */
export function tooLargeFor(
  film: Pick<Problem, 'film' | 'margins' | 'gap' | 'cutting' | 'together'>,
  piece: Pick<Piece, 'width' | 'length' | 'turn'>,
): Exclude<UnplacedReason, 'no-room'> | null {
  const alone: Piece = { ...piece, id: '', count: 1, rank: 0 };
  return tooLarge(stripOf({ ...film, pieces: [alone], pinned: [] }), 0);
}
