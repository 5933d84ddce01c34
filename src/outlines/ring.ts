import { onceFor } from '../units';

/**
 * A closed line of corners, x and y in turn, in micrometres, each corner once. Seen with x to the right and y up, outer rings run
 * counter-clockwise and holes clockwise; rings neither cross nor touch.
 */
export type Ring = Float64Array;

/** The ring of a box, from its corner. */
export const boxRing = ({ width, length }: { readonly width: number; readonly length: number }): Ring =>
  Float64Array.of(0, 0, width, 0, width, length, 0, length);

/** The area of an outline, holes taken off (the shoelace formula), in square micrometres; worked out once an outline. */
export const areaOf = onceFor((rings: readonly Ring[]): number => {
  let twice = 0;
  for (const ring of rings) {
    let [x, y] = [ring.at(-2) as number, ring.at(-1) as number];
    for (let at = 0; at < ring.length; at += 2) {
      const [nextX, nextY] = [ring[at] as number, ring[at + 1] as number];
      twice += x * nextY - nextX * y;
      [x, y] = [nextX, nextY];
    }
  }
  return twice / 2;
});

/** The length of an outline, around its holes too, in micrometres; worked out once an outline. */
export const lengthOf = onceFor((rings: readonly Ring[]): number => {
  let sum = 0;
  for (const ring of rings) {
    let [x, y] = [ring.at(-2) as number, ring.at(-1) as number];
    for (let at = 0; at < ring.length; at += 2) {
      const [nextX, nextY] = [ring[at] as number, ring[at + 1] as number];
      sum += Math.hypot(nextX - x, nextY - y);
      [x, y] = [nextX, nextY];
    }
  }
  return sum;
});

/** Whether a ring runs around what is printed, and not around a hole. */
export const isOuter = (ring: Ring): boolean => areaOf([ring]) > 0;
