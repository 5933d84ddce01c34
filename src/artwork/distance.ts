/** Space between the centres of neighbouring pixels on each axis; both in one unit of the caller's choice. */
export interface Pitch {
  readonly x: number;
  readonly y: number;
}

/** A field of distances that is asked where it is needed. */
export interface DistanceField {
  /** From the centre of a pixel to that of the nearest target; Infinity from `reach` on. */
  at(x: number, y: number): number;
  /** Marks with 1 the pixels of a row that have no target closer than `reach`. */
  markFar(y: number, far: Uint8Array): void;
}

/**
 * Exact Euclidean distances to the nearest pixel of a kind, up to a reach. The two phases of A. Meijster, J. B. T. M.
 * Roerdink and W. H. Hesselink, "A general algorithm for computing distance transforms in linear time" (2000): first along
 * columns, then along rows. Since strokes are a few pixels wide, the second phase takes the least over the few columns
 * within reach instead of keeping their lower envelope; pixels far from any edge are passed over.
 * @param mask one byte a pixel, row by row
 * @param target the value distances are measured to; outside the raster there is none
 * @param reach in the unit of the pitch; fewer than 255 rows of pixels
 */
export function distanceField(
  mask: Uint8Array,
  width: number,
  height: number,
  target: 0 | 1,
  pitch: Pitch,
  reach: number,
): DistanceField {
  const limit = Math.min(255, Math.ceil(reach / pitch.y) + 1);
  const columns = columnDistances(mask, width, height, target, limit);
  const across = Math.floor(reach / pitch.x);
  const reachSquared = reach * reach;
  const downSquared = Float64Array.from({ length: limit + 1 }, (_, rows) =>
    rows === limit ? Number.POSITIVE_INFINITY : (rows * pitch.y) ** 2,
  );
  const acrossSquared = Float64Array.from({ length: across + 1 }, (_, dx) => (dx * pitch.x) ** 2);

  const squaredAt = (x: number, y: number): number => {
    const row = y * width;
    let least = downSquared[columns[row + x] as number] as number;
    const [first, last] = [Math.max(0, x - across), Math.min(width - 1, x + across)];
    for (let other = first; other <= last; other += 1) {
      const squared =
        (downSquared[columns[row + other] as number] as number) +
        (acrossSquared[other < x ? x - other : other - x] as number);
      if (squared < least) least = squared;
    }
    return least;
  };

  return {
    at(x, y) {
      const squared = squaredAt(x, y);
      return squared < reachSquared ? Math.sqrt(squared) : Number.POSITIVE_INFINITY;
    },
    markFar(y, far) {
      const row = y * width;
      const look = (from: number, to: number) => {
        for (let x = from; x < to; x += 1) if (squaredAt(x, y) >= reachSquared) far[row + x] = 1;
      };
      let behind = Number.NEGATIVE_INFINITY;
      for (let x = 0; x < width; ) {
        const own = columns[row + x] as number;
        if (own < limit) {
          if ((downSquared[own] as number) >= reachSquared) look(x, x + 1);
          behind = x;
          x += 1;
          continue;
        }
        // A stretch of columns without a target in reach: far in its middle, to be looked at near its ends.
        let end = x + 1;
        while (end < width && columns[row + end] === limit) end += 1;
        const from = Math.min(end, Math.max(x, behind + across + 1));
        const to = end === width ? end : Math.max(from, end - across);
        look(x, from);
        far.fill(1, row + from, row + to);
        look(to, end);
        x = end;
      }
    },
  };
}

/** Rows to the nearest target in the same column, `limit` where it is that far or further. */
function columnDistances(
  mask: Uint8Array,
  width: number,
  height: number,
  target: 0 | 1,
  limit: number,
): Uint8Array {
  const columns = new Uint8Array(width * height);
  for (let x = 0; x < width; x += 1) columns[x] = mask[x] === target ? 0 : limit;
  for (let at = width, above = 0; at < columns.length; at += 1, above += 1) {
    if (mask[at] === target) continue;
    const rows = (columns[above] as number) + 1;
    columns[at] = Math.min(rows, limit);
  }
  for (let at = columns.length - width - 1, below = columns.length - 1; at >= 0; at -= 1, below -= 1) {
    const rows = (columns[below] as number) + 1;
    if (rows < (columns[at] as number)) columns[at] = rows;
  }
  return columns;
}
