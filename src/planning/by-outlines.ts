import {
  createOutlinePlanner,
  type OutlineFilm,
  type OutlinePlan,
  type OutlinePlanner,
  type OutlineProblem,
} from '../nesting';
import { boxRing } from '../outlines';
import {
  createPlanner as createBoxPlanner,
  type FilmAmount,
  type Idea,
  leastFilm,
  type Piece,
  type Plan,
  type Planner,
  type Problem,
  planOf,
  tooLargeFor,
} from '../packing';
import { angleOf, degreesOf, mayLieAt, um } from '../units';

/** Copies laid out by outlines are at least so far apart, micrometres: of two that touch it cannot be told whether they overlap. */
const LEAST_GAP = um(20);
/** Of so many iterations one is of the boxes, which take less time. */
const SHARE = 24;
/** A copy that is left out counts for more than any film. */
const LEFT_OUT = 1e13;

/** A whole sheet in the terms of a roll's length, micrometres. */
const SHEET = 1e8;

/** Whether anything of a problem can lie nearer by outlines than by boxes, and where is not wished for but by film. */
export const isForOutlines = ({ cutting, together, pieces }: Problem): boolean =>
  cutting === 'outlines' &&
  together.kind === 'any' &&
  pieces.some(({ count, outline }) => count > 0 && outline);

/** Degrees between the angles that are tried of a copy that may lie at any. */
const STEP = 30;

/** The angles that are tried of a piece: of those that it may lie at all that make a difference. */
function rotationsOf({ turn, outline }: Piece): number[] {
  // A box lies in as little film at one of its quarter turns as between them, but for film that is hardly wider.
  const [step, end] = outline ? [turn === 'any' ? STEP : 90, 360] : [90, 180];
  const all = Array.from({ length: end / step }, (_, at) => at * step);
  return all.filter((degrees) => mayLieAt(turn, angleOf(degrees)));
}

/** What stays where it is on a roll that is cut: as far as a layout of boxes goes, and how its knife lines part it. */
function aroundWhatStays(
  problem: Problem,
  film: Extract<Problem['film'], { kind: 'roll' }>,
  { used, unplaced }: Plan,
): Pick<Extract<OutlineFilm, { kind: 'roll' }>, 'lines' | 'noPrint'> {
  if (film.spanMax === null || used.kind !== 'roll') return { lines: [], noPrint: film.noPrint };
  // A shorter layout of as many copies comes to none of what lies further along.
  const noPrint = unplaced.length > 0 ? film.noPrint : film.noPrint.filter(({ from }) => from < used.length);
  const reached = planOf(problem, problem.pinned).used;
  const end = Math.max(reached.kind === 'roll' ? reached.length : 0, ...noPrint.map(({ to }) => to));
  return { noPrint, lines: used.spans.slice(0, -1).flatMap(({ to }) => (to < end ? [to] : [])) };
}

/** The same work for the engine of outlines, beside a layout of boxes; copies too large for the film are left out. */
function outlineProblemOf(problem: Problem, boxes: Plan): OutlineProblem {
  const { film, margins, gap, pieces, pinned } = problem;
  const printed = film.kind === 'sheet' ? film.printed : 0;
  return {
    film:
      film.kind === 'roll'
        ? { ...film, ...aroundWhatStays(problem, film, boxes) }
        : {
            kind: 'sheet',
            width: film.width,
            length: film.length,
            sheetLimit: film.sheetLimit === null ? null : Math.max(0, film.sheetLimit - printed),
          },
    margins,
    gap: um(Math.max(gap, LEAST_GAP)),
    pieces: pieces.map((piece) => ({
      id: piece.id,
      rings: piece.outline ?? [boxRing(piece)],
      count: tooLargeFor(problem, piece) === null ? piece.count : 0,
      rotations: rotationsOf(piece),
    })),
    pinned: pinned
      .filter(({ sheet }) => sheet >= printed)
      .map(({ angle, sheet, ...place }) => ({
        ...place,
        sheet: sheet - printed,
        rotation: degreesOf(angle),
      })),
  };
}

/** What a layout of boxes lays, what is pinned left out. */
const laidBehind = ({ pinned }: Problem, { placed, used }: Plan): OutlinePlan => ({
  used,
  placed: placed
    .slice(pinned.length)
    .map(({ angle, ...place }) => ({ ...place, rotation: degreesOf(angle) })),
});

/** A plan of outlines as one of the problem; `null` where it takes more film than there is, or knife lines find no place. */
function planFrom(problem: Problem, { placed }: OutlinePlan): Plan | null {
  const { film, pinned } = problem;
  const printed = film.kind === 'sheet' ? film.printed : 0;
  const laid = placed.map(({ rotation, sheet, ...place }) => ({
    ...place,
    sheet: sheet + printed,
    angle: angleOf(rotation),
  }));
  const plan = planOf(problem, [...pinned, ...laid]);
  if (plan.used.kind === 'sheets' || film.kind === 'sheet') return plan;
  const isTooLong = film.lengthLimit !== null && plan.used.length > film.lengthLimit;
  const isUncuttable = film.spanMax !== null && plan.used.spans.length === 0;
  return isTooLong || isUncuttable ? null : plan;
}

function costOf({ used, unplaced }: Plan): number {
  const left = unplaced.reduce((sum, { count }) => sum + count, 0);
  return left * LEFT_OUT + (used.kind === 'roll' ? used.length : used.sheets * SHEET);
}

/** The shorter of two plans of one problem, the first where they are alike. */
const shorter = (a: Plan | null, b: Plan | null): Plan | null =>
  a && b ? (costOf(b) < costOf(a) ? b : a) : (a ?? b);

/**
 * Looks for layouts by outlines and by boxes in turn, and has the shorter one: a layout of boxes is one of the outlines in them, so that
 * none by outlines is ever longer.
 */
export class ByOutlines implements Planner {
  private readonly problem: Problem;
  private readonly seed: number;
  private readonly boxes: Planner;
  private outlines: OutlinePlanner | null = null;
  /** Of each engine the best plan; `null` where it has found a better one since. */
  private ofBoxes: Plan | null = null;
  private ofOutlines: Plan | null = null;
  readonly bound: FilmAmount;
  iterations = 0;

  constructor(problem: Problem, seed: number) {
    this.problem = problem;
    this.seed = seed;
    this.boxes = createBoxPlanner(problem, seed);
    this.bound = leastFilm(problem);
  }

  step(iterations: number): boolean {
    const before = this.cost();
    for (let done = 0; done < iterations; done += 1) this.next();
    return this.cost() < before;
  }

  private next(): void {
    if (this.iterations % SHARE === 0) {
      if (this.boxes.step(1)) this.ofBoxes = null;
    } else if (!this.outlines) {
      const boxes = this.boxes.best();
      const problem = outlineProblemOf(this.problem, boxes);
      this.outlines = createOutlinePlanner(problem, this.seed, laidBehind(this.problem, boxes));
      this.hear(this.outlines);
    } else if (this.outlines.step(1)) this.hear(this.outlines);
    this.iterations += 1;
  }

  private hear(outlines: OutlinePlanner): void {
    this.ofOutlines = planFrom(this.problem, outlines.best()) ?? this.ofOutlines;
  }

  best(): Plan {
    this.ofBoxes ??= this.boxes.best();
    return shorter(this.ofBoxes, this.ofOutlines) ?? this.ofBoxes;
  }

  proven(): boolean {
    const { used, unplaced } = this.best();
    if (unplaced.length > 0) return false;
    return used.kind === 'roll'
      ? this.bound.kind === 'roll' && used.length <= this.bound.length
      : this.bound.kind === 'sheets' && used.sheets <= this.bound.sheets;
  }

  finished(): boolean {
    return this.proven();
  }

  idea(): Idea | null {
    return this.boxes.idea();
  }

  take(idea: Idea): boolean {
    const before = this.cost();
    if (this.boxes.take(idea)) this.ofBoxes = null;
    return this.cost() < before;
  }

  cost(): number {
    return costOf(this.best());
  }
}
