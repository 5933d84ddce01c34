import { areaOf, type Ring, turned, turnOf } from '../outlines';
import { ARC, grown } from '../outlines/grown';

/**
 * An outline in one of its turns, grown by half a gap, as rows of one height (the semi-discrete representation of H. Okano,
 * A scanline-based algorithm for the 2D free-form bin packing problem, Journal of the Operations Research Society of Japan 45(2),
 * 145-161, 2002): of each row the intervals across that any point of the grown outline in it takes. Shapes that lie at
 * whole rows and whose intervals do not overlap in any row do not overlap.
 */
export interface Shape {
  readonly piece: number;
  readonly rotation: number;
  /** Of the grown outline's box, micrometres. */
  readonly width: number;
  readonly length: number;
  readonly rows: number;
  /** The grown outline, from the corner of its box. */
  readonly rings: readonly Ring[];
  /** Of the outline itself, square micrometres. */
  readonly area: number;
  /** Where the intervals of each row begin in `left` and `right`; one entry more than rows. */
  readonly starts: Int32Array;
  readonly left: Int32Array;
  readonly right: Int32Array;
  /** Each row has one interval, which meets those of the rows beside it: what such shapes may not do for each other is one interval too. */
  readonly isPlain: boolean;
  /** Rows in which it is widest, one of each third, and how wide there: film without so wide a stretch in them has no room for it. Two figures each. */
  readonly probes: Int32Array;
}

/** Where a shape is widest, in each third of its rows. */
function probesOf({ starts, left, right }: Pick<Shape, 'starts' | 'left' | 'right'>): Int32Array {
  const rows = starts.length - 1;
  const all = [0, 1, 2].flatMap((third) => {
    let best = { row: 0, width: 0 };
    for (let row = Math.floor((third * rows) / 3); row < Math.floor(((third + 1) * rows) / 3); row += 1) {
      for (let at = starts[row] as number; at < (starts[row + 1] as number); at += 1) {
        const width = (right[at] as number) - (left[at] as number);
        if (width > best.width) best = { row, width };
      }
    }
    return best.width > 0 ? [best.row, best.width] : [];
  });
  return Int32Array.from(all);
}

/** By how much an outline is grown on all sides for a gap, in micrometres: by more than its half, so that no round corner comes too near. Its box then begins so far before the outline's own. */
export const growthOf = (gap: number): number => (gap > 0 ? gap / 2 + ARC : 0);

const known = new WeakMap<readonly Ring[], Map<number, readonly Ring[]>>();

/** An outline grown, once for all turns that it may lie in. */
function grownOnce(outline: readonly Ring[], by: number): readonly Ring[] {
  const own = known.get(outline) ?? new Map<number, readonly Ring[]>();
  known.set(outline, own);
  const rings = own.get(by) ?? grown(outline, by);
  own.set(by, rings);
  return rings;
}

/** Intervals that are kept apart: one that meets others is joined with them. */
class Intervals {
  readonly from: number[] = [];
  readonly to: number[] = [];

  add(from: number, to: number): void {
    let [low, high] = [from, to];
    for (let at = this.from.length - 1; at >= 0; at -= 1) {
      if ((this.from[at] as number) > high || (this.to[at] as number) < low) continue;
      low = Math.min(low, this.from[at] as number);
      high = Math.max(high, this.to[at] as number);
      this.from.splice(at, 1);
      this.to.splice(at, 1);
    }
    this.from.push(low);
    this.to.push(high);
  }
}

/** Where a line across enters and leaves an outline, in turn. */
function crossingsAt(rings: readonly Ring[], y: number): readonly number[] {
  const crossings: number[] = [];
  for (const ring of rings) {
    let [x0, y0] = [ring.at(-2) as number, ring.at(-1) as number];
    for (let at = 0; at < ring.length; at += 2) {
      const [x1, y1] = [ring[at] as number, ring[at + 1] as number];
      if (y0 <= y !== y1 <= y) crossings.push(x0 + ((y - y0) * (x1 - x0)) / (y1 - y0));
      [x0, y0] = [x1, y1];
    }
  }
  return crossings.sort((a, b) => a - b);
}

/** What the edges of an outline take across in each row. */
function edges(rings: readonly Ring[], rows: readonly Intervals[], height: number): void {
  for (const ring of rings) {
    let [x0, y0] = [ring.at(-2) as number, ring.at(-1) as number];
    for (let at = 0; at < ring.length; at += 2) {
      const [x1, y1] = [ring[at] as number, ring[at + 1] as number];
      const [low, high] = [Math.min(y0, y1), Math.max(y0, y1)];
      // A row that an edge only touches has what lies beyond it by its other edges.
      const last = Math.min(rows.length, Math.ceil(high / height)) - 1;
      for (let row = Math.max(0, Math.floor(low / height)); row <= last; row += 1) {
        const from = Math.max(low, row * height);
        const to = Math.min(high, (row + 1) * height);
        const xAt = (y: number) => (y1 === y0 ? x0 : x0 + ((y - y0) * (x1 - x0)) / (y1 - y0));
        const [a, b] = y1 === y0 ? [x0, x1] : [xAt(from), xAt(to)];
        rows[row]?.add(Math.min(a, b), Math.max(a, b));
      }
      [x0, y0] = [x1, y1];
    }
  }
}

/**
 * An outline turned, grown for a gap and taken apart into rows.
 * @param height of a row, micrometres
 * @param behind how far behind the first row's edge it begins, micrometres, for one that lies between rows
 */
export function shapeOf(
  piece: number,
  outline: readonly Ring[],
  rotation: number,
  { gap, height, behind = 0 }: { gap: number; height: number; behind?: number },
): Shape {
  const by = growthOf(gap);
  const lying = turned(outline, rotation);
  const { cos, sin } = turnOf(rotation);
  const [across, down] = [lying.origin.x + by, lying.origin.y + by + behind];
  const rings = grownOnce(outline, by).map((ring) =>
    Float64Array.from(ring, (value, at) =>
      at % 2 === 0
        ? value * cos - (ring[at + 1] as number) * sin + across
        : (ring[at - 1] as number) * sin + value * cos + down,
    ),
  );
  const [width, length] = [lying.width + 2 * by, behind + lying.length + 2 * by];
  const rows = Array.from({ length: Math.max(1, Math.ceil(length / height - 1e-9)) }, () => new Intervals());
  for (let line = 0; line <= rows.length; line += 1) {
    const crossings = crossingsAt(rings, line * height);
    for (let at = 0; at + 1 < crossings.length; at += 2) {
      for (const row of [rows[line - 1], rows[line]])
        row?.add(crossings[at] as number, crossings[at + 1] as number);
    }
  }
  edges(rings, rows, height);
  const starts = new Int32Array(rows.length + 1);
  rows.forEach((row, at) => {
    starts[at + 1] = (starts[at] as number) + row.from.length;
  });
  const left = Int32Array.from(rows.flatMap((row) => row.from.map((from) => Math.floor(from))));
  const right = Int32Array.from(rows.flatMap((row) => row.to.map((to) => Math.ceil(to))));
  return {
    piece,
    rotation,
    width: Math.ceil(width),
    length: Math.ceil(length),
    rows: rows.length,
    rings,
    area: areaOf(outline),
    starts,
    left,
    right,
    probes: probesOf({ starts, left, right }),
    isPlain:
      rows.every(({ from }) => from.length === 1) &&
      left.every(
        (from, row) =>
          row === 0 ||
          (from < (right[row - 1] as number) && (left[row - 1] as number) < (right[row] as number)),
      ),
  };
}
