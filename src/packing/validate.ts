import { quartersIn, um } from '../units';
import { type Fault, type Lying, layoutFaults } from './faults';
import { knifeLines } from './knife-lines';
import type { Placed, Plan, Problem, Span } from './problem';
import { keepsGapBy } from './rules';
import { pieceAt } from './size-at';

/** What is wrong with a plan; copies are named by their index among those placed. */
export type PlanProblem =
  | Fault
  | { readonly code: 'no-such-piece' | 'pinned-moved'; readonly copy: number }
  | { readonly code: 'wrong-count'; readonly piece: number; readonly placed: number; readonly wanted: number }
  | { readonly code: 'wrong-length' | 'wrong-sheets' | 'broken-spans' }
  | { readonly code: 'span-too-long'; readonly span: number };

/** A copy as it lies; `null` if there is no such piece. */
function lyingOf({ pieces, pinned, cutting }: Problem, copy: Placed, index: number): Lying | null {
  const piece = pieces[copy.piece];
  if (!piece) return null;
  const { x, y, sheet, angle } = copy;
  const { rank: order, turn } = piece;
  const { width, length, rings } = pieceAt(piece, angle);
  const amongOutlines = cutting === 'outlines';
  const own = amongOutlines || quartersIn(angle) === null ? rings : null;
  return {
    outline: keepsGapBy(own, { width: um(width), length: um(length) }, amongOutlines),
    x,
    y,
    width: um(width),
    length: um(length),
    sheet,
    angle,
    turning: turn,
    order,
    rank: order,
    fixed: index < pinned.length,
  };
}

/** How far along a roll copies reach. */
const farEnd = (copies: readonly Lying[]): number =>
  copies.reduce((furthest, { y, length }) => Math.max(furthest, y + length), 0);

function* countProblems(problem: Problem, plan: Plan): Generator<PlanProblem> {
  const placed = problem.pieces.map(() => 0);
  const left = problem.pieces.map(() => 0);
  for (const { piece } of plan.placed.slice(problem.pinned.length)) placed[piece] = (placed[piece] ?? 0) + 1;
  for (const { piece, count } of plan.unplaced) left[piece] = (left[piece] ?? 0) + count;
  for (const [index, piece] of problem.pieces.entries()) {
    const found = (placed[index] ?? 0) + (left[index] ?? 0);
    if (found !== piece.count)
      yield { code: 'wrong-count', piece: index, placed: found, wanted: piece.count };
  }
}

/** Whether lines could cut a roll with just its pinned copies on it. */
function mayCutPinned({ film, gap, margins, pinned }: Problem, copies: readonly Lying[]): boolean {
  if (film.kind !== 'roll') return true;
  const { spanMax, cutBlank } = film;
  const stay = copies.slice(0, pinned.length);
  const lengthUsed = um(farEnd(stay) + margins.tail);
  return knifeLines(stay, { gap, spanMax, cutBlank, lengthUsed }) !== null;
}

/** What a plan says that it takes of a roll; nothing where it tells of sheets. */
const rollUsed = ({ used }: Plan): { readonly length: number; readonly spans: readonly Span[] } =>
  used.kind === 'roll' ? used : { length: 0, spans: [] };

function* spanProblems(problem: Problem, plan: Plan, copies: readonly Lying[]): Generator<PlanProblem> {
  const { film } = problem;
  if (film.kind !== 'roll' || film.spanMax === null || copies.length === 0) return;
  const { spans, length } = rollUsed(plan);
  if (spans.length === 0 && !mayCutPinned(problem, copies)) return;
  let reached = 0;
  for (const [index, { from, to }] of spans.entries()) {
    if (from !== reached || to <= from) yield { code: 'broken-spans' };
    if (to - from > film.spanMax) yield { code: 'span-too-long', span: index };
    reached = to;
  }
  if (reached !== length) yield { code: 'broken-spans' };
}

function* pinProblems({ pinned }: Problem, { placed }: Plan): Generator<PlanProblem> {
  for (const [index, pin] of pinned.entries()) {
    const own = placed[index];
    const same =
      own?.piece === pin.piece &&
      own.sheet === pin.sheet &&
      own.x === pin.x &&
      own.y === pin.y &&
      own.angle === pin.angle;
    if (!same) yield { code: 'pinned-moved', copy: index };
  }
}

function* lengthProblems(problem: Problem, plan: Plan, copies: readonly Lying[]): Generator<PlanProblem> {
  if (problem.film.kind === 'roll') {
    const used = copies.length > 0 ? farEnd(copies) + problem.margins.tail : 0;
    if (plan.used.kind !== 'roll' || plan.used.length !== used) yield { code: 'wrong-length' };
    return;
  }
  const sheets = new Set(copies.map((copy) => copy.sheet));
  // Pinned copies and printed sheets may leave a sheet before them empty; the engine may not.
  const used =
    problem.pinned.length > 0 || problem.film.printed > 0 ? Math.max(-1, ...sheets) + 1 : sheets.size;
  const inOrder = [...sheets].every((sheet) => sheet >= 0 && sheet < used);
  // Whether there are as many is told of each copy that was added.
  if (plan.used.kind !== 'sheets' || plan.used.sheets !== used || !inOrder) yield { code: 'wrong-sheets' };
}

/**
 * Proves a plan against its problem from where its copies lie alone; shares no bookkeeping with the engine.
 * Pinned copies that lie badly among themselves, over an edge or where no line parts them were so before, and are not reported.
 * @returns what is wrong; nothing, if the plan holds
 */
export function validatePlan(problem: Problem, plan: Plan): PlanProblem[] {
  const lying = plan.placed.map((copy, index) => lyingOf(problem, copy, index));
  const unknown = lying.flatMap((copy, index): PlanProblem[] =>
    copy ? [] : [{ code: 'no-such-piece', copy: index }],
  );
  const copies = lying.flatMap((copy) => copy ?? []);
  return [
    ...unknown,
    // Copies are named by their index: none may be missing.
    ...(unknown.length > 0 ? [] : layoutFaults(problem, copies, rollUsed(plan).spans)),
    ...pinProblems(problem, plan),
    ...countProblems(problem, plan),
    ...lengthProblems(problem, plan, copies),
    ...spanProblems(problem, plan, copies),
  ];
}
