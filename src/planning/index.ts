import type { AtOnce, Planner, Problem } from '../packing';
import { atOnce as atOnceWithBoxes, createPlanner as createBoxPlanner, planOf } from '../packing';
import { ByOutlines, isForOutlines } from './by-outlines';

/**
 * Starts planning by the engine that a problem asks for: see `createPlanner` of the packing.
 * @param seed of the search's random numbers
 */
export const createPlanner = (problem: Problem, seed: number): Planner =>
  isForOutlines(problem) ? new ByOutlines(problem, seed) : createBoxPlanner(problem, seed);

/** Iterations of a first layout: one of each engine. */
const FIRST = 2;

/** What either engine does at once and without a search; equal problems have equal layouts. */
export const atOnce: AtOnce = {
  firstPlan(problem) {
    if (!isForOutlines(problem)) return atOnceWithBoxes.firstPlan(problem);
    const planner = new ByOutlines(problem, 1);
    planner.step(FIRST);
    return planner.best();
  },
  // What lies in what others leave bare cannot change places as boxes can.
  reordered: (problem, placed) =>
    problem.cutting === 'outlines' ? planOf(problem, placed) : atOnceWithBoxes.reordered(problem, placed),
};
