import { seededRandom } from '../units';
import { placedOf } from './assemble';
import { byRank, fitting } from './choice';
import type { Placed, Problem } from './problem';
import { Search } from './search';
import { stripOf } from './strip';

/**
 * Places of the copies that were not chosen, around those that lie: holes and what is left at the end of a roll.
 * @param chosen how many copies of each piece were
 */
export function fillUp(
  problem: Problem,
  laid: readonly Placed[],
  chosen: Int32Array,
  seed: number,
): Placed[] {
  const around: Problem = {
    ...problem,
    pieces: problem.pieces.map((piece, index) => ({ ...piece, count: piece.count - (chosen[index] ?? 0) })),
    pinned: [...problem.pinned, ...laid],
  };
  const strip = stripOf(around);
  const waiting = fitting(strip);
  const piece = byRank(strip).filter((own) => (waiting[own] ?? 0) > 0);
  if (piece.length === 0) return [];
  const search = new Search(strip, waiting, strip.bins, seededRandom(seed));
  const layout = search.layoutOf({
    piece,
    count: piece.map((own) => waiting[own] ?? 0),
    turned: piece.map(() => 0),
  });
  return placedOf(layout, strip, around);
}
