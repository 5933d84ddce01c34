import type { Bins } from './bins';
import { type Clearance, clearance, mirrored } from './clearance';
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
  /** Where a shape may not lie for another, both by their numbers. */
  readonly clear: (still: number, moving: number) => Clearance;
}

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
  const known: (Clearance | undefined)[] = new Array(all.length ** 2).fill(undefined);
  return {
    bins,
    height,
    growth,
    left,
    right,
    shapes,
    all,
    clear(still, moving) {
      const found = known[still * all.length + moving];
      if (found) return found;
      const made = clearance(all[still] as Shape, all[moving] as Shape);
      known[still * all.length + moving] = made;
      if (still !== moving) known[moving * all.length + still] = mirrored(made);
      return made;
    },
  };
}
