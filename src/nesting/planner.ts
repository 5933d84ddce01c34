import { areaOf } from '../outlines';
import { seededRandom, sum } from '../units';
import { alike } from './alike';
import { binsOf } from './bins';
import { compacted } from './compact';
import { decode, type Sequence } from './decode';
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

/**
 * Height of a row, micrometres: finer loses less between slanted edges and takes more time, so that it is finer the less film there is; so
 * many rows are there, about. Those of the first layout are coarser, so that it is there soon.
 */
const ROW = { least: 1000, most: 2000, rows: 5000, rough: 4000 };

function heightOf({ pieces, film, gap }: OutlineProblem): number {
  const area = sum(
    pieces.map(({ rings, count }) => count * (Math.sqrt(Math.max(0, areaOf(rings))) + gap) ** 2),
  );
  return Math.round(Math.min(ROW.most, Math.max(ROW.least, area / film.width / ROW.rows)));
}

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

const MEASURES = [
  ({ width, length }: Shape) => Math.max(width, length),
  ({ area }: Shape) => area,
  ({ width, length }: Shape) => width * length,
] as const;

/** Every copy in the order in which another engine lays them from the leading edge on, those that it has no place for last. */
function inOrderOf({ placed }: OutlinePlan, { pieces }: OutlineProblem): Int32Array {
  const left = pieces.map(({ count }) => count);
  const laid = placed
    .toSorted((a, b) => a.sheet - b.sheet || a.y - b.y || a.x - b.x)
    .flatMap(({ piece }) => {
      left[piece] = (left[piece] ?? 0) - 1;
      return (left[piece] as number) >= 0 ? [piece] : [];
    });
  return Int32Array.from([
    ...laid,
    ...left.flatMap((count, piece) => Array.from({ length: Math.max(0, count) }, () => piece)),
  ]);
}

/** The sequences that are built first, and before them one that takes little time. */
function firstOf(problem: OutlineProblem, stock: Stock, start: OutlinePlan | null): Sequence[] {
  const all = [
    ...(start ? [inOrderOf(start, problem)] : []),
    ...MEASURES.map((measure) => ordered(problem, stock, measure)),
  ];
  return [
    quick(problem, stock),
    ...LEANINGS.flatMap((leaning) => all.map((pieces) => ({ pieces, leaning, turns: 'all' as const }))),
  ];
}

/** A sequence that is built soon. */
const quick = (problem: OutlineProblem, stock: Stock): Sequence => ({
  pieces: ordered(problem, stock, MEASURES[0]),
  leaning: 1,
  turns: 'first',
});

/** What looks for layouts in rows. */
interface Search {
  readonly stock: Stock;
  readonly sequences: Sequences;
  readonly random: () => number;
  /** The shortest layout so far. */
  best: Layout;
  squeeze: Squeeze | null;
  squeezed: Layout | null;
}

function searchOf(problem: OutlineProblem, seed: number, start: OutlinePlan | null): Search {
  const stock = stockOf(problem, binsOf(problem), heightOf(problem));
  const random = seededRandom(seed);
  const sequences = new Sequences(stock, firstOf(problem, stock, start), random);
  return { stock, sequences, random, best: sequences.next() as Layout, squeeze: null, squeezed: null };
}

/** What the order of copies has come to, if that is new, though it may be longer: it may get shorter than the best. */
function nextToSqueeze(search: Search): Layout {
  const built = search.sequences.layout;
  if (built === null || built === search.squeezed) return search.best;
  search.squeezed = built;
  return built;
}

/** Builds a layout, or moves a copy of one that is made shorter. @returns the layout that has come of it, if any */
function next(search: Search): Layout | null {
  const built = search.squeeze ? null : search.sequences.next();
  // Film that has no room for all has none to lose.
  if (built || search.best.left > 0 || search.best.bins.length === 0) return built;
  search.squeeze ??= new Squeeze(search.stock, nextToSqueeze(search), search.random);
  const found = search.squeeze.step();
  if (search.squeeze.isSpent) search.squeeze = null;
  return found;
}

/**
 * Begins to lay out.
 * @param start a plan of another engine, by whose order one is built too, without what is pinned
 */
export function createOutlinePlanner(
  problem: OutlineProblem,
  seed: number,
  start: OutlinePlan | null = null,
): OutlinePlanner {
  const rough = stockOf(problem, binsOf(problem), ROW.rough, 'first');
  let stock = rough;
  let tight = compacted(rough, decode(rough, quick(problem, rough)), 1);
  let told: OutlinePlan | null = null;
  let search: Search | null = null;
  let iterations = 1;

  const improve = (): boolean => {
    iterations += 1;
    const before = search?.best;
    search ??= searchOf(problem, seed, start);
    const found = before ? next(search) : search.best;
    if (!found || (before && found.cost >= before.cost)) return false;
    search.best = found;
    const compact = compacted(search.stock, found);
    if (compact.cost >= tight.cost) return false;
    stock = search.stock;
    tight = compact;
    told = null;
    return true;
  };

  return {
    step(count) {
      let isBetter = false;
      for (let done = 0; done < count; done += 1) isBetter = improve() || isBetter;
      return isBetter;
    },
    best() {
      told ??= alike(problem, planOf(stock, tight));
      return told;
    },
    get iterations() {
      return iterations;
    },
  };
}
