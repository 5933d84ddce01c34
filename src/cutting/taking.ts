import type { LaidCopy } from '../layout';
import type { Film } from '../model';

type Box = Pick<LaidCopy, 'x' | 'y' | 'width' | 'length'>;

const overlaps = (a: number, aLength: number, b: number, bLength: number): boolean =>
  a < b + bLength && b < a + aLength;

/** Whether scissors come to a copy from one of the four sides without cutting through another. */
export function isReachable(copy: Box, others: readonly Box[]): boolean {
  const beside = others.filter((other) => overlaps(copy.y, copy.length, other.y, other.length));
  const inLine = others.filter((other) => overlaps(copy.x, copy.width, other.x, other.width));
  return (
    !beside.some((other) => other.x < copy.x) ||
    !beside.some((other) => other.x > copy.x) ||
    !inLine.some((other) => other.y < copy.y) ||
    !inLine.some((other) => other.y > copy.y)
  );
}

/** Whether two copies lie side by side, so that the film between them holds them together. */
const areNeighbours = (a: Box, b: Box, gap: number): boolean =>
  overlaps(a.x - gap, a.width + 2 * gap, b.x - gap, b.width + 2 * gap) &&
  overlaps(a.y - gap, a.length + 2 * gap, b.y - gap, b.length + 2 * gap);

/** How many pieces copies fall into that only hold to their neighbours. */
function pieces(copies: readonly Box[], gap: number): number {
  const left = new Set(copies);
  let count = 0;
  for (const first of copies) {
    if (!left.delete(first)) continue;
    count += 1;
    const reached = [first];
    for (let copy = reached.pop(); copy; copy = reached.pop()) {
      for (const other of left) {
        if (areNeighbours(copy, other, gap)) {
          left.delete(other);
          reached.push(other);
        }
      }
    }
  }
  return count;
}

const distance = (a: Box, b: Box): number =>
  Math.hypot(a.x + a.width / 2 - b.x - b.width / 2, a.y + a.length / 2 - b.y - b.length / 2);

/** The corner at the leading edge and the near side, where the first cut begins. */
const corner = { x: 0, y: 0, width: 0, length: 0 } as Box;

/**
 * The order in which to take copies out of a piece of film with scissors: always one that scissors can come to, that leaves no
 * other hanging by itself, of the order at hand as long as there is one, and of those the nearest.
 * @param before the copy that was taken out last, of the piece before
 */
export function takingOrder(
  copies: readonly LaidCopy[],
  { gap }: Pick<Film, 'gap'>,
  before: LaidCopy | null,
): LaidCopy[] {
  const left = new Set(copies);
  const taken: LaidCopy[] = [];
  let last = before;
  while (left.size > 0) {
    const all = [...left];
    const held = pieces(all, gap);
    const origin =
      taken.length > 0 && last ? last : { ...corner, y: Math.min(...all.map(({ y }) => y)) as LaidCopy['y'] };
    let best: LaidCopy | null = null;
    let least: readonly number[] = [];
    for (const copy of all) {
      const others = all.filter((other) => other !== copy);
      const key = [
        isReachable(copy, others) ? 0 : 1,
        pieces(others, gap) > held ? 1 : 0,
        copy.order.id === last?.order.id ? 0 : 1,
        distance(copy, origin),
      ];
      const at = key.findIndex((value, index) => value !== least[index]);
      if (best === null || (at >= 0 && (key[at] ?? 0) < (least[at] ?? 0))) {
        best = copy;
        least = key;
      }
    }
    if (!best) break;
    left.delete(best);
    taken.push(best);
    last = best;
  }
  return taken;
}
