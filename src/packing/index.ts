export { leastFilm } from './bounds';
export { type CutTree, cutCount, cutTree } from './cut-tree';
export { type Fault, type Lying, layoutFaults } from './faults';
export { tooLargeFor } from './fit';
export { knifeLines } from './knife-lines';
export { createPlanner, type Planner } from './planner';
export type {
  Piece,
  Placement,
  Plan,
  Problem,
  Span,
  Together,
  UnplacedReason,
} from './problem';
export { checkPlacement, type Ground, type PlacementProblem, type Rect } from './rules';
export type { Idea } from './search';
export { validatePlan } from './validate';
