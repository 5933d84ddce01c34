import { boxRing } from '../outlines';
import type { Bins } from './bins';
import { type Clearance, clearance, clearOfRows, mirrored } from './clearance';
import type { Laid } from './laid';
import type { OutlineProblem } from './problem';
import { growthOf, type Shape, shapeOf } from './shape';
import { type Sides, sidesOf } from './sides';

/** What layouts of one problem are built from. */
export interface Stock {
  readonly bins: Bins;
  /** Knife lines that are drawn already. */
  readonly lines: readonly number[];
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
  /** By bin what lies there already and stays: pinned copies, stretches where nothing may be printed, knife lines. None behind them is told. */
  readonly still: readonly (readonly Laid[])[];
  /** How far that of the first bin reaches that its film must reach too, micrometres; 0 without any. */
  readonly reached: number;
  /** Where a shape may not lie for another, both by their numbers. */
  readonly clear: (still: number, moving: number) => Clearance;
  /** What of a shape faces which way. */
  readonly sides: (shape: number) => Sides;
}

/** Of no piece: rows where nothing may be printed. */
export const ROWS = -1;

/** What takes the whole width of some rows. */
const acrossAll = (width: number, rows: number, height: number): Shape => ({
  piece: ROWS,
  rotation: 0,
  width,
  length: rows * height,
  rows,
  area: 0,
  starts: Int32Array.from({ length: rows + 1 }, (_, row) => row),
  left: new Int32Array(rows),
  right: new Int32Array(rows).fill(width),
  isPlain: true,
  rings: [boxRing({ width, length: rows * height })],
  probes: new Int32Array(0),
});

/** Stretches of a roll that no copy may lie in: where nothing may be printed, and around knife lines that are drawn. */
function bareOf({ film, gap }: OutlineProblem): readonly { readonly from: number; readonly to: number }[] {
  if (film.kind === 'sheet') return [];
  const behind = gap / 2 + film.cutBlank;
  return [...film.noPrint, ...film.lines.map((line) => ({ from: line - gap / 2, to: line + behind }))];
}

/**
 * The rows that shapes keep out of, so that none begins before `to` and ends behind `from`. Of a stretch that is shorter than shapes
 * are grown by, `from` lies behind `to`: a shape that does so covers all between the two, so that one row amid them keeps it out.
 */
function rowsOf(from: number, to: number, height: number): { readonly row: number; readonly rows: number } {
  if (from >= to) return { row: Math.floor((from + to) / 2 / height), rows: 1 };
  const row = Math.floor(from / height);
  return { row, rows: Math.ceil(to / height) - row };
}

/**
 * Cuts every piece into shapes.
 * @param turns all that fit the film, or of each piece the first that does
 */
export function stockOf(
  problem: OutlineProblem,
  bins: Bins,
  height: number,
  turns: 'all' | 'first' = 'all',
): Stock {
  const growth = growthOf(problem.gap);
  const left = problem.margins.left - growth;
  const right = problem.film.width - problem.margins.right + growth;
  const all: Shape[] = [];
  const shapes = problem.pieces.map(({ rings, rotations }, piece) => {
    const own: number[] = [];
    for (const rotation of rotations) {
      const shape = shapeOf(piece, rings, rotation, { gap: problem.gap, height });
      const fits =
        left + shape.width <= right && shape.length - 2 * growth <= Math.max(bins.first, bins.other);
      if (fits) own.push(all.push(shape) - 1);
      if (fits && turns === 'first') break;
    }
    return own;
  });
  const still: Laid[][] = [];
  const keep = (laid: Laid, bin = 0): void => {
    while (still.length <= bin) still.push([]);
    still[bin]?.push(laid);
  };
  let reached = 0;
  const { lead } = bins;
  for (const { piece, sheet, x, y, rotation } of problem.pinned) {
    const row = Math.floor((y - lead) / height);
    const behind = y - lead - row * height;
    const shape = shapeOf(piece, problem.pieces[piece]?.rings ?? [], rotation, {
      gap: problem.gap,
      height,
      behind,
    });
    keep({ shape: all.push(shape) - 1, x: x - growth, row }, sheet);
    reached = Math.max(reached, row * height + shape.length);
  }
  for (const { from, to } of bareOf(problem)) {
    const { row, rows } = rowsOf(from - lead + 2 * growth, to - lead, height);
    keep({ shape: all.push(acrossAll(right - left + 2, rows, height)) - 1, x: left - 1, row });
    // Spans follow one another by how far each reaches.
    if (bins.isCut) reached = Math.max(reached, to - lead + 2 * growth);
  }
  const known: (Clearance | undefined)[] = new Array(all.length ** 2).fill(undefined);
  const facing: (Sides | undefined)[] = new Array(all.length).fill(undefined);
  return {
    bins,
    lines: problem.film.kind === 'roll' ? problem.film.lines : [],
    height,
    growth,
    left,
    right,
    shapes,
    all,
    still,
    reached,
    sides(shape) {
      const found = facing[shape];
      if (found) return found;
      const made = sidesOf((all[shape] as Shape).rings);
      facing[shape] = made;
      return made;
    },
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
