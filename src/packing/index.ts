export { leastFilm } from './bounds';
export { type CutTree, cutCount, cutTree } from './cut-tree';
export { tooLargeFor } from './fit';
export { knifeLines } from './knife-lines';
export { createPlanner } from './planner';
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
export { validatePlan } from './validate';
