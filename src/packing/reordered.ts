import { assemble } from './assemble';
import type { Placed, Plan, Problem } from './problem';
import { soonestFirst } from './soonest-first';
import { stripOf } from './strip';

/**
 * A layout that lies there with the soonest ranks as near to the leading edge as they go on the film that it takes.
 * @param placed where copies lie, the pinned ones first; all that the problem is to lay
 */
export const reordered = (problem: Problem, placed: readonly Placed[]): Plan =>
  assemble(problem, stripOf(problem), soonestFirst(problem, placed));
