export { planOf } from './assemble';
export { atOnce } from './at-once';
export { leastFilm } from './bounds';
export { type CutTree, cutCount, cutTree } from './cut-tree';
export { type Fault, type Lying, ruleFaults, wishFaults } from './faults';
export { tooLargeFor } from './fit';
export { knifeLines } from './knife-lines';
export { createPlanner, type Planner } from './planner';
export type {
  AtOnce,
  FilmAmount,
  FilmUsed,
  Margins,
  Piece,
  Placed,
  Plan,
  Problem,
  Span,
  Together,
  UnplacedReason,
} from './problem';
export { checkPlace, type Ground, keepsGapBy, type PlaceProblem, type Rect, tooClose } from './rules';
export type { Idea } from './search';
export { Telling } from './telling';
export { validatePlan } from './validate';
