import { seededRandom } from '../units';
import { binsOf } from './bins';
import { decode, type Sequence } from './decode';
import { planOf } from './plan';
import type { OutlinePlan, OutlineProblem } from './problem';
import type { Shape } from './shape';
import { Squeeze } from './squeeze';
import { type Stock, stockOf } from './stock';

/** Finds layouts by outlines, better ones the longer it is let; equal input, seed and iterations give equal plans. */
export interface OutlinePlanner {
  /**
   * Builds a layout, or moves a copy of one that is made shorter, so many times.
   * @returns whether one of them is the best so far
   */
  step(iterations: number): boolean;
  best(): OutlinePlan;
  readonly iterations: number;
}

/** Height of a row: finer loses less between slanted edges and takes more time; micrometres. */
const ROW = 1500;

const LEANINGS = [1, 0.5, 0] as const;

/** Every copy, the largest first by a measure of its shape. */
function ordered(problem: OutlineProblem, stock: Stock, measure: (shape: Shape) => number): Int32Array {
  // What fits no film in any turn comes last, and finds no room.
  const size = stock.shapes.map(([shape]) => (shape === undefined ? 0 : measure(stock.all[shape] as Shape)));
  return Int32Array.from(
    problem.pieces
      .flatMap(({ count }, piece) => Array.from({ length: count }, () => piece))
      .sort((a, b) => (size[b] as number) - (size[a] as number) || a - b),
  );
}

const MEASURES: readonly ((shape: Shape) => number)[] = [
  ({ width, length }) => Math.max(width, length),
  ({ area }) => area,
  ({ width, length }) => width * length,
];

/** The sequences that are built first. */
const firstOf = (problem: OutlineProblem, stock: Stock): Sequence[] =>
  LEANINGS.flatMap((leaning) =>
    MEASURES.map((measure) => ({ pieces: ordered(problem, stock, measure), leaning })),
  );

/** Begins to lay out. */
export function createOutlinePlanner(problem: OutlineProblem, seed: number): OutlinePlanner {
  const stock = stockOf(problem, binsOf(problem), ROW);
  const random = seededRandom(seed);
  const first = firstOf(problem, stock);
  let best = decode(stock, first.shift() as Sequence);
  let squeeze: Squeeze | null = null;
  let iterations = 1;

  const improve = (): boolean => {
    const sequence = first.shift();
    // Film that has no room for all has none to lose.
    if (!sequence && best.left === 0 && best.bins.length > 0) squeeze ??= new Squeeze(stock, best, random);
    const found = sequence ? decode(stock, sequence) : squeeze?.step();
    iterations += 1;
    if (!found || found.cost >= best.cost) return false;
    best = found;
    return true;
  };

  return {
    step(count) {
      let isBetter = false;
      for (let done = 0; done < count; done += 1) isBetter = improve() || isBetter;
      return isBetter;
    },
    best: () => planOf(stock, best),
    get iterations() {
      return iterations;
    },
  };
}
