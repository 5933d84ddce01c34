import { contains } from './near';
import type { Ring } from './ring';

/** A rectangle within an outline, from the corner of its box, in micrometres. */
export interface Room {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
}

/** A box is looked at in so many cells each way. */
const CELLS = 24;
/** Names are about so many times as wide as they are tall. */
const WIDE = 3;

/** How large a name may be in a rectangle, flat or upright; and, where two take it as large, how much is left around it. */
function fits(width: number, length: number): readonly [size: number, area: number] {
  return [Math.max(Math.min(width / WIDE, length), Math.min(length / WIDE, width)), width * length];
}

/**
 * Where in an outline there is most room for a name: of the rectangles of cells that lie within it, found row by row from how many free
 * cells stand over each (the largest rectangle under a histogram), the one that a name fits best. No wider than a point where it is thin.
 */
export function roomWithin(rings: readonly Ring[], width: number, length: number): Room {
  const outline = { rings, x: 0, y: 0 };
  const [across, along] = [width / CELLS, length / CELLS];
  const corners = Array.from({ length: CELLS + 1 }, (_, row) =>
    Array.from({ length: CELLS + 1 }, (_, column) => contains(outline, column * across, row * along)),
  );
  const isFree = (row: number, column: number): boolean =>
    [0, 1].every((down) => [0, 1].every((right) => corners[row + down]?.[column + right])) &&
    contains(outline, (column + 0.5) * across, (row + 0.5) * along);
  const over = new Uint8Array(CELLS);
  let best = { left: 0, top: 0, columns: 0, rows: 0 };
  let [most, area] = [0, 0];
  for (let row = 0; row < CELLS; row += 1) {
    for (let column = 0; column < CELLS; column += 1)
      over[column] = isFree(row, column) ? (over[column] ?? 0) + 1 : 0;
    for (let left = 0; left < CELLS; left += 1) {
      let rows = CELLS;
      for (let right = left; right < CELLS; right += 1) {
        rows = Math.min(rows, over[right] ?? 0);
        if (rows === 0) break;
        const columns = right - left + 1;
        const [size, own] = fits(columns * across, rows * along);
        if (size < most || (size === most && own <= area)) continue;
        best = { left, top: row - rows + 1, columns, rows };
        [most, area] = [size, own];
      }
    }
  }
  if (best.columns > 0)
    return {
      x: best.left * across,
      y: best.top * along,
      width: best.columns * across,
      length: best.rows * along,
    };
  const [x = 0, y = 0] = rings[0] ?? [];
  return { x, y, width: 0, length: 0 };
}
