import type { Placed, Plan, Problem } from '../../src/packing';
import { fromMm, UPRIGHT } from '../../src/units';
import { bareRoll, piece } from './problems';

/** A rectangle cut into squares, all of different sizes, by its Bouwkamp code: each square fills the leftmost of the lowest places. */
export interface SquaredRectangle {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly code: readonly number[];
}

/**
 * A. J. W. Duijvestijn, Simple perfect squared square of lowest order, Journal of Combinatorial Theory B 25(2),
 * 240-243, 1978; Z. Moron, O rozkladach prostokatow na kwadraty, Przeglad Matematyczno-Fizyczny 3, 152-153, 1925.
 */
export const squaredRectangles: readonly SquaredRectangle[] = [
  {
    name: 'squared square of order 21',
    width: 112,
    height: 112,
    code: [50, 35, 27, 8, 19, 15, 17, 11, 6, 24, 29, 25, 9, 2, 7, 18, 16, 42, 4, 37, 33],
  },
  { name: 'squared rectangle of order 9', width: 33, height: 32, code: [18, 15, 7, 8, 14, 4, 10, 1, 9] },
];

/** The rectangle as a roll of its width, the squares as pieces of some millimetres, and the plan its code tells. */
export function squaredPlan({ width, height, code }: SquaredRectangle): { problem: Problem; plan: Plan } {
  const problem = bareRoll(
    fromMm(width),
    code.map((side) => piece(fromMm(side), fromMm(side))),
  );
  const heights = new Array<number>(width).fill(0);
  const placed = code.map((side, index): Placed => {
    const y = Math.min(...heights);
    const x = heights.indexOf(y);
    heights.fill(y + side, x, x + side);
    return { piece: index, sheet: 0, x: fromMm(x), y: fromMm(y), angle: UPRIGHT };
  });
  const plan: Plan = { placed, unplaced: [], used: { kind: 'roll', length: fromMm(height), spans: [] } };
  return { problem, plan };
}
