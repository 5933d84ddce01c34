/**
 * Why an SVG is not drawn. `many-elements`: more than can be drawn, each counted as often as it is used. `many-filters`: more
 * steps of filters. `nested`: elements within elements, or uses of uses, too deep or without an end. `indirect`: written in a
 * way that does not tell what it draws before it is drawn.
 */
export type WeightProblem = 'many-elements' | 'many-filters' | 'nested' | 'indirect';

/** Ends the weighing of an SVG where it stands. */
export class Refused extends Error {
  readonly problem: WeightProblem;
  constructor(problem: WeightProblem) {
    super(problem);
    this.problem = problem;
  }
}
