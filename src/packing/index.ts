export { leastFilm } from './bounds';
export { tooLargeFor } from './fit';
export { knifeLines } from './knife-lines';
export { createPlanner, type Planner } from './planner';
export type {
  FilmShape,
  Margins,
  Piece,
  Placement,
  Plan,
  Problem,
  Span,
  Turn,
  Unplaced,
  UnplacedReason,
} from './problem';
export { checkPlacement, type Ground, type PlacementProblem, type Rect } from './rules';
export { type PlanProblem, validatePlan } from './validate';
