import { seededRandom } from '../units';
import { binsOf } from './bins';
import type { Sequence } from './decode';
import type { Layout } from './layout';
import { planOf } from './plan';
import type { OutlinePlan, OutlineProblem } from './problem';
import { Sequences } from './sequences';
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

/** The sequences that are built first, and before them one that takes little time. */
function firstOf(problem: OutlineProblem, stock: Stock): Sequence[] {
  const all = MEASURES.map((measure) => ordered(problem, stock, measure));
  const [byLonger] = all;
  return [
    ...(byLonger ? [{ pieces: byLonger, leaning: 1, turns: 'first' as const }] : []),
    ...LEANINGS.flatMap((leaning) => all.map((pieces) => ({ pieces, leaning, turns: 'all' as const }))),
  ];
}

/** Begins to lay out. */
export function createOutlinePlanner(problem: OutlineProblem, seed: number): OutlinePlanner {
  const stock = stockOf(problem, binsOf(problem), ROW);
  const random = seededRandom(seed);
  const sequences = new Sequences(stock, firstOf(problem, stock), random);
  let best = sequences.next() as Layout;
  let squeeze: Squeeze | null = null;
  let iterations = 1;

  let squeezed: Layout | null = null;
  /** What the order of copies has come to, if that is new, though it may be longer: it may get shorter than the best. */
  const nextToSqueeze = (): Layout => {
    const built = sequences.layout;
    if (built === null || built === squeezed) return best;
    squeezed = built;
    return built;
  };

  const improve = (): boolean => {
    let found = squeeze ? null : sequences.next();
    // Film that has no room for all has none to lose.
    if (!found && best.left === 0 && best.bins.length > 0) {
      squeeze ??= new Squeeze(stock, nextToSqueeze(), random);
      found = squeeze.step();
      if (squeeze.isSpent) squeeze = null;
    }
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
