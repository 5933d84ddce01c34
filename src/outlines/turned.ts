import type { Ring } from './ring';

/** A turned outline, its box's corner at the origin. */
export interface Turned {
  readonly rings: readonly Ring[];
  readonly width: number;
  readonly length: number;
}

/** Turns an outline about its origin, counter-clockwise with x to the right and y up, and moves its box to the origin. */
export function turned(rings: readonly Ring[], degrees: number): Turned {
  const quarter = ((degrees / 90) % 4) + 4;
  // Quarter turns are exact.
  const [cos, sin] = Number.isInteger(quarter)
    ? ([
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ][quarter % 4] as [number, number])
    : [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  let [left, top, right, end] = [Infinity, Infinity, -Infinity, -Infinity];
  const all = rings.map((ring) => {
    const out = new Float64Array(ring.length);
    for (let at = 0; at < ring.length; at += 2) {
      const [x, y] = [ring[at] as number, ring[at + 1] as number];
      const [across, along] = [x * cos - y * sin, x * sin + y * cos];
      out[at] = across;
      out[at + 1] = along;
      left = Math.min(left, across);
      right = Math.max(right, across);
      top = Math.min(top, along);
      end = Math.max(end, along);
    }
    return out;
  });
  for (const ring of all) {
    for (let at = 0; at < ring.length; at += 2) {
      ring[at] = (ring[at] as number) - left;
      ring[at + 1] = (ring[at + 1] as number) - top;
    }
  }
  return { rings: all, width: right - left, length: end - top };
}
