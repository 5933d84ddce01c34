import { createPlanner } from './planner';
import type { AtOnce } from './problem';
import { reordered } from './reordered';

/** What the engine does at once and without a search; equal problems have equal layouts. */
export const atOnce: AtOnce = { firstPlan: (problem) => createPlanner(problem, 1).best(), reordered };
