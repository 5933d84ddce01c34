import { onceFor } from '../units';

/**
 * A closed line of corners, x and y in turn, in micrometres, each corner once. Seen with x to the right and y up, outer rings run
 * counter-clockwise and holes clockwise; rings neither cross nor touch.
 */
export type Ring = Float64Array;

/** The ring of a box, from its corner. */
export const boxRing = ({ width, length }: { readonly width: number; readonly length: number }): Ring =>
  Float64Array.of(0, 0, width, 0, width, length, 0, length);

/** The sum of something over all sides of an outline, from corner to corner. */
function overSides(
  rings: readonly Ring[],
  of: (x: number, y: number, nextX: number, nextY: number) => number,
): number {
  let sum = 0;
  for (const ring of rings) {
    let [x, y] = [ring.at(-2) as number, ring.at(-1) as number];
    for (let at = 0; at < ring.length; at += 2) {
      const [nextX, nextY] = [ring[at] as number, ring[at + 1] as number];
      sum += of(x, y, nextX, nextY);
      [x, y] = [nextX, nextY];
    }
  }
  return sum;
}

/** The area of an outline, holes taken off (the shoelace formula), in square micrometres; worked out once an outline. */
export const areaOf = onceFor(
  (rings: readonly Ring[]): number => overSides(rings, (x, y, nextX, nextY) => x * nextY - nextX * y) / 2,
);

/** The length of an outline, around its holes too, in micrometres; worked out once an outline. */
export const lengthOf = onceFor((rings: readonly Ring[]): number =>
  overSides(rings, (x, y, nextX, nextY) => Math.hypot(nextX - x, nextY - y)),
);

/** Whether a ring runs around what is printed, and not around a hole. */
export const isOuter = (ring: Ring): boolean => areaOf([ring]) > 0;
