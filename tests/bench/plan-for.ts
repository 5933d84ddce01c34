import { createPlanner, type FilmAmount, type Plan, type Problem, tooLargeFor } from '../../src/packing';

/** A slice of work between two looks at the clock, in milliseconds. */
const SLICE = 20;

/** Pieces that fit no film, as one sentence; `null` if all fit. */
export function misfit(problem: Problem): string | null {
  for (const piece of problem.pieces) {
    const reason = tooLargeFor(problem, piece);
    if (reason) {
      const what =
        reason === 'too-wide' ? 'is wider than the printable film' : 'is longer than a span or sheet';
      return `Piece ${piece.id} ${what}, so it fits nowhere.`;
    }
  }
  return null;
}

/** Plans on this core for some seconds, or until nothing better is left to find. */
export function planFor(
  problem: Problem,
  { seconds, seed, from = performance.now() }: { seconds: number; seed: number; from?: number },
): { plan: Plan; bound: FilmAmount; firstMs: number; iterations: number } {
  const planner = createPlanner(problem, seed);
  planner.best();
  const firstMs = performance.now() - from;
  let slice = 1;
  while (performance.now() - from < seconds * 1000 && !planner.finished()) {
    const began = performance.now();
    planner.step(slice);
    const left = seconds * 1000 - (performance.now() - from);
    const each = (performance.now() - began) / slice;
    slice = Math.max(1, Math.floor(Math.min(SLICE, left / 2) / Math.max(each, 1e-3)));
  }
  return { plan: planner.best(), bound: planner.bound, firstMs, iterations: planner.iterations };
}
