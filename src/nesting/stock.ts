import type { Bins } from './bins';
import { type Clearance, clearance, clearOfRows, mirrored } from './clearance';
import type { Laid } from './laid';
import type { OutlineProblem } from './problem';
import { growthOf, type Shape, shapeOf } from './shape';

/** What layouts of one problem are built from. */
export interface Stock {
  readonly bins: Bins;
  /** Height of a row, micrometres. */
  readonly height: number;
  /** Micrometres that shapes are grown by. */
  readonly growth: number;
  /** How far across a shape may begin. */
  readonly left: number;
  readonly right: number;
  /** By piece: its shapes, one a turn that fits the film. */
  readonly shapes: readonly (readonly number[])[];
  readonly all: readonly Shape[];
  /** What lies in the first bin already and stays there: pinned copies, stretches where nothing may be printed. */
  readonly still: readonly Laid[];
  /** How far the pinned copies of it reach, micrometres; 0 without any. */
  readonly reached: number;
  /** Where a shape may not lie for another, both by their numbers. */
  readonly clear: (still: number, moving: number) => Clearance;
}

/** Of no piece: rows where nothing may be printed. */
const ROWS = -1;

/** What takes the whole width of some rows. */
const acrossAll = (left: number, right: number, rows: number, height: number): Shape => ({
  piece: ROWS,
  rotation: 0,
  width: right - left,
  length: rows * height,
  rows,
  area: 0,
  starts: Int32Array.from({ length: rows + 1 }, (_, row) => row),
  left: new Int32Array(rows).fill(left - 1),
  right: new Int32Array(rows).fill(right + 1),
});

/** Cuts every piece into shapes. */
export function stockOf(problem: OutlineProblem, bins: Bins, height: number): Stock {
  const growth = growthOf(problem.gap);
  const left = problem.margins.left - growth;
  const right = problem.film.width - problem.margins.right + growth;
  const all: Shape[] = [];
  const shapes = problem.pieces.map(({ rings, rotations }, piece) =>
    rotations.flatMap((rotation) => {
      const shape = shapeOf(piece, rings, rotation, { gap: problem.gap, height });
      const fits = left + shape.width <= right && shape.length - 2 * growth <= bins.other;
      return fits ? [all.push(shape) - 1] : [];
    }),
  );
  const still: Laid[] = [];
  let reached = 0;
  const { lead } = bins;
  for (const { piece, x, y, rotation } of problem.pinned) {
    const row = Math.floor((y - lead) / height);
    const behind = y - lead - row * height;
    const shape = shapeOf(piece, problem.pieces[piece]?.rings ?? [], rotation, {
      gap: problem.gap,
      height,
      behind,
    });
    still.push({ shape: all.push(shape) - 1, x: x - growth, row });
    reached = Math.max(reached, row * height + shape.length);
  }
  for (const { from, to } of problem.film.kind === 'roll' ? problem.film.noPrint : []) {
    const row = Math.floor((from - lead + 2 * growth) / height);
    const rows = Math.ceil((to - lead) / height) - row;
    if (rows > 0) still.push({ shape: all.push(acrossAll(left, right, rows, height)) - 1, x: 0, row });
  }
  const known: (Clearance | undefined)[] = new Array(all.length ** 2).fill(undefined);
  return {
    bins,
    height,
    growth,
    left,
    right,
    shapes,
    all,
    still,
    reached,
    clear(still, moving) {
      const found = known[still * all.length + moving];
      if (found) return found;
      const [one, other] = [all[still] as Shape, all[moving] as Shape];
      const made =
        one.piece === ROWS
          ? clearOfRows(one, other)
          : other.piece === ROWS
            ? mirrored(clearOfRows(other, one))
            : clearance(one, other);
      known[still * all.length + moving] = made;
      if (still !== moving) known[moving * all.length + still] = mirrored(made);
      return made;
    },
  };
}
