/** Pixels of a small raster as runs: pairs of the first and one behind the last, counted row by row. */
export interface MaskRuns {
  readonly width: number;
  readonly height: number;
  readonly runs: readonly number[];
}

/** The longer side of the rasters that marks are drawn from. */
const LONGEST = 800;

/** A small raster that takes marks of a large one: a small pixel is marked when one of the large ones in it is. */
export function markSheet(width: number, height: number) {
  const step = Math.max(1, Math.ceil(Math.max(width, height) / LONGEST));
  const [across, down] = [Math.ceil(width / step), Math.ceil(height / step)];
  const marked = new Uint8Array(across * down);
  return {
    mark(x: number, y: number): void {
      marked[Math.floor(y / step) * across + Math.floor(x / step)] = 1;
    },
    runs(): MaskRuns {
      const runs: number[] = [];
      for (let at = 0; at < marked.length; at += 1) {
        if (marked[at] === 0) continue;
        const from = at;
        while (at < marked.length && marked[at] === 1) at += 1;
        runs.push(from, at);
      }
      return { width: across, height: down, runs };
    },
  };
}
