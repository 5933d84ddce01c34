export { boxesOf, fromBoxes } from './boxes';
export { createOutlinePlanner, type OutlinePlanner } from './planner';
export type { OutlineFilm, OutlinePiece, OutlinePlan, OutlineProblem } from './problem';
export { outlineFaults } from './validate';
