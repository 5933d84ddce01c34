import type { Ring } from './ring';

/** A turned outline, its box's corner at the origin. */
export interface Turned {
  readonly rings: readonly Ring[];
  readonly width: number;
  readonly length: number;
  /** Where the point that it was turned about has come to. */
  readonly origin: { readonly x: number; readonly y: number };
}

const QUARTERS = [
  { cos: 1, sin: 0 },
  { cos: 0, sin: 1 },
  { cos: -1, sin: 0 },
  { cos: 0, sin: -1 },
] as const;

/** Cosine and sine of an angle in degrees; those of quarter turns are exact. */
export function turnOf(degrees: number): { readonly cos: number; readonly sin: number } {
  const exact = QUARTERS[(((degrees / 90) % 4) + 4) % 4];
  return exact ?? { cos: Math.cos((degrees * Math.PI) / 180), sin: Math.sin((degrees * Math.PI) / 180) };
}

/** Turns an outline about its origin, counter-clockwise with x to the right and y up, and moves its box to the origin. */
export function turned(rings: readonly Ring[], degrees: number): Turned {
  const { cos, sin } = turnOf(degrees);
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
  return { rings: all, width: right - left, length: end - top, origin: { x: -left, y: -top } };
}
