import { EndType, inflatePaths, JoinType, type Paths64 } from 'clipper2-ts';
import type { Ring } from './ring';

/** How far a round corner may be from its arc, in micrometres. */
export const ARC = 20;

/**
 * An outline grown by a distance, with round corners: outer rings grow, holes shrink, and what comes to touch is joined. No point of it is
 * further from the outline than that, nor more than {@link ARC} nearer.
 * @param by micrometres; 0 leaves it as it is
 */
export function grown(rings: readonly Ring[], by: number): readonly Ring[] {
  if (by === 0) return rings;
  const paths: Paths64 = rings.map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, at) => ({
      x: Math.round(ring[2 * at] as number),
      y: Math.round(ring[2 * at + 1] as number),
    })),
  );
  return inflatePaths(paths, by, JoinType.Round, EndType.Polygon, 2, ARC / 2).map((path) =>
    Float64Array.from(path.flatMap(({ x, y }) => [x, y])),
  );
}
