import type { Ring } from '../outlines';

/** Along the film, or across it. */
export type Axis = 'along' | 'across';

/**
 * The edges of a shape that face one way of an axis, four figures each: where an edge begins and ends beside the axis, each followed by how far on
 * it lies there. They are in the order of where they begin.
 */
export interface Side {
  readonly edges: Float64Array;
  /** The longest of them, beside the axis. */
  readonly longest: number;
}

type Edge = readonly [from: number, at: number, to: number, end: number];

/** What of a shape faces backwards and forwards on an axis. */
export type Sides = Readonly<Record<Axis, { readonly before: Side; readonly behind: Side }>>;

function sideOf(edges: readonly Edge[]): Side {
  const sorted = edges.toSorted((a, b) => a[0] - b[0]);
  const all = new Float64Array(4 * sorted.length);
  let longest = 0;
  for (let at = 0; at < sorted.length; at += 1) {
    const edge = sorted[at] as Edge;
    all.set(edge, 4 * at);
    longest = Math.max(longest, edge[2] - edge[0]);
  }
  return { edges: all, longest };
}

/** Parts the edges of an outline by the ways that they face; those along an axis face neither of its ways. */
export function sidesOf(rings: readonly Ring[]): Sides {
  const along = { before: [] as Edge[], behind: [] as Edge[] };
  const across = { before: [] as Edge[], behind: [] as Edge[] };
  for (const ring of rings) {
    let [x0, y0] = [ring.at(-2) as number, ring.at(-1) as number];
    for (let at = 0; at < ring.length; at += 2) {
      const [x1, y1] = [ring[at] as number, ring[at + 1] as number];
      // Ink lies to the left of an edge, seen with x to the right and y up.
      if (x0 < x1) along.before.push([x0, y0, x1, y1]);
      if (x0 > x1) along.behind.push([x1, y1, x0, y0]);
      if (y0 > y1) across.before.push([y1, x1, y0, x0]);
      if (y0 < y1) across.behind.push([y0, x0, y1, x1]);
      [x0, y0] = [x1, y1];
    }
  }
  return {
    along: { before: sideOf(along.before), behind: sideOf(along.behind) },
    across: { before: sideOf(across.before), behind: sideOf(across.behind) },
  };
}

/** Where in a side the edges begin that may reach a place beside the axis. */
function firstReaching({ edges, longest }: Side, place: number): number {
  let low = 0;
  let high = edges.length / 4;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((edges[4 * middle] as number) + longest <= place) low = middle + 1;
    else high = middle;
  }
  return 4 * low;
}

/**
 * How far one shape, moved backwards on an axis, keeps behind another at the least until they touch; no more than how far it is behind now.
 * @param still what of the one before faces forwards
 * @param moving what of the one behind faces backwards
 * @param beside how far beside the axis the one behind lies from the other
 * @param apart how far behind it lies now; they do not overlap
 * @returns -Infinity where nothing of the other is in its way
 */
export function leastBehind(still: Side, moving: Side, beside: number, apart: number): number {
  let least = Number.NEGATIVE_INFINITY;
  const [own, other] = [still.edges, moving.edges];
  for (let at = 0; at < other.length; at += 4) {
    const from = (other[at] as number) + beside;
    const to = (other[at + 2] as number) + beside;
    const slope = ((other[at + 3] as number) - (other[at + 1] as number)) / (to - from);
    for (let each = firstReaching(still, from); each < own.length; each += 4) {
      const begin = own[each] as number;
      if (begin >= to) break;
      const end = own[each + 2] as number;
      if (end <= from) continue;
      const rise = ((own[each + 3] as number) - (own[each + 1] as number)) / (end - begin);
      const low = Math.max(begin, from);
      const high = Math.min(end, to);
      const atLow =
        (own[each + 1] as number) + (low - begin) * rise - (other[at + 1] as number) - (low - from) * slope;
      const atHigh = atLow + (high - low) * (rise - slope);
      const touch = Math.max(atLow, atHigh);
      // An edge that lies behind the one that faces it is passed already.
      if (touch <= apart + PASSED && touch > least) least = touch;
    }
  }
  return least;
}

/** Micrometres by which rounding may have moved an edge into another. */
const PASSED = 0.01;
