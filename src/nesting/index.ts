export { boxesOf, fromBoxes } from './boxes';
export { createOutlinePlanner } from './planner';
export type { OutlinePiece, OutlinePlan, OutlineProblem, Ring } from './problem';
export { areaOf, turned } from './turned';
export { outlineFaults } from './validate';
