import { assemble } from './assemble';
import type { AtOnce } from './problem';
import { soonestFirst } from './soonest-first';
import { stripOf } from './strip';

export const reordered: AtOnce['reordered'] = (problem, placed) =>
  assemble(problem, stripOf(problem), soonestFirst(problem, placed));
