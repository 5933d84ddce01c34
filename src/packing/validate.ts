import { um } from '../units';
import type { Placement, Plan, Problem } from './problem';
import { edgeProblems, type Ground, type PlacementProblem, type Rect, tooClose } from './rules';

/** What is wrong with a plan; copies are named by their index among its placements. */
export type PlanProblem =
  | { readonly code: 'no-such-piece' | 'turned-but-fixed' | 'pinned-moved'; readonly copy: number }
  | { readonly code: 'wrong-count'; readonly piece: number; readonly placed: number; readonly wanted: number }
  | { readonly code: 'edge'; readonly copy: number; readonly problem: PlacementProblem['code'] }
  | { readonly code: 'too-close'; readonly copies: readonly [number, number] }
  | { readonly code: 'wrong-length' | 'wrong-sheets' | 'broken-spans' }
  | { readonly code: 'span-too-long'; readonly span: number }
  | { readonly code: 'cut-by-knife'; readonly copy: number }
  | { readonly code: 'not-apart'; readonly copies: readonly [number, number] };

interface Laid extends Rect {
  readonly index: number;
  readonly sheet: number;
}

function rectOf(problem: Problem, placement: Placement, index: number): Laid | null {
  const piece = problem.pieces[placement.piece];
  if (!piece) return null;
  const { x, y, sheet, turned } = placement;
  const [width, length] = turned ? [piece.length, piece.width] : [piece.width, piece.length];
  return { index, sheet, x, y, width, length };
}

/** The pairs that are closer than the gap, by a sweep along each film. */
function* closePairs(copies: readonly Laid[], gap: number): Generator<PlanProblem> {
  const sorted = [...copies].sort((a, b) => a.sheet - b.sheet || a.y - b.y);
  let active: Laid[] = [];
  for (const copy of sorted) {
    active = active.filter((other) => other.sheet === copy.sheet && copy.y < other.y + other.length + gap);
    for (const other of active) {
      if (tooClose(copy, other, gap)) yield { code: 'too-close', copies: [other.index, copy.index] };
    }
    active.push(copy);
  }
}

/** Orders whose stretches of a film, from first copy to last, overlap; told by a copy of each. */
function* mixedOrders(problem: Problem, copies: readonly Laid[], plan: Plan): Generator<PlanProblem> {
  if (problem.together.kind !== 'apart') return;
  const stretches = new Map<string, { sheet: number; from: number; to: number; copy: number }>();
  for (const { index, sheet, y, length } of copies) {
    const order = problem.pieces[plan.placements[index]?.piece ?? 0]?.rank;
    const key = `${sheet} ${order}`;
    const stretch = stretches.get(key) ?? { sheet, from: y, to: y + length, copy: index };
    const [from, to] = [Math.min(stretch.from, y), Math.max(stretch.to, y + length)];
    stretches.set(key, { ...stretch, from, to });
  }
  const sorted = [...stretches.values()].sort((a, b) => a.sheet - b.sheet || a.from - b.from);
  for (const [index, stretch] of sorted.slice(1).entries()) {
    const before = sorted[index];
    if (before?.sheet === stretch.sheet && stretch.from < before.to) {
      yield { code: 'not-apart', copies: [before.copy, stretch.copy] };
    }
  }
}

function* countProblems(problem: Problem, plan: Plan): Generator<PlanProblem> {
  const placed = problem.pieces.map(() => 0);
  const left = problem.pieces.map(() => 0);
  for (const { piece } of plan.placements.slice(problem.pinned.length))
    placed[piece] = (placed[piece] ?? 0) + 1;
  for (const { piece, count } of plan.unplaced) left[piece] = (left[piece] ?? 0) + count;
  for (const [index, piece] of problem.pieces.entries()) {
    const found = (placed[index] ?? 0) + (left[index] ?? 0);
    if (found !== piece.count)
      yield { code: 'wrong-count', piece: index, placed: found, wanted: piece.count };
  }
}

function* spanProblems(problem: Problem, plan: Plan, copies: readonly Laid[]): Generator<PlanProblem> {
  const { film, gap } = problem;
  if (film.kind !== 'roll' || film.spanMax === null || copies.length === 0) return;
  let reached = 0;
  for (const [index, { from, to }] of plan.spans.entries()) {
    if (from !== reached || to <= from) yield { code: 'broken-spans' };
    if (to - from > film.spanMax) yield { code: 'span-too-long', span: index };
    reached = to;
  }
  if (reached !== plan.lengthUsed) yield { code: 'broken-spans' };
  const lines = plan.spans.slice(0, -1).map((span) => span.to);
  const after = Math.max(gap / 2, film.cutBlank);
  for (const { index, y, length } of copies) {
    if (lines.some((line) => line > y - after && line < y + length + gap / 2)) {
      yield { code: 'cut-by-knife', copy: index };
    }
  }
}

function* lengthProblems(problem: Problem, plan: Plan, copies: readonly Laid[]): Generator<PlanProblem> {
  if (problem.film.kind === 'roll') {
    const end = copies.reduce((furthest, copy) => Math.max(furthest, copy.y + copy.length), 0);
    if (plan.lengthUsed !== (copies.length > 0 ? end + problem.margins.tail : 0))
      yield { code: 'wrong-length' };
    return;
  }
  const sheets = new Set(copies.map((copy) => copy.sheet));
  // Pinned copies may leave a sheet before them empty; the engine may not.
  const used = problem.pinned.length > 0 ? Math.max(-1, ...sheets) + 1 : sheets.size;
  const inOrder = [...sheets].every((sheet) => sheet >= 0 && sheet < used);
  const tooMany = used > (problem.film.sheetLimit ?? Number.POSITIVE_INFINITY);
  if (plan.sheetsUsed !== used || !inOrder || tooMany) yield { code: 'wrong-sheets' };
}

/**
 * Proves a plan against its problem from the placements alone; shares no bookkeeping with the engine.
 * Pinned copies that lie badly among themselves or over an edge were so before, and are not reported.
 * @returns what is wrong; nothing, if the plan holds
 */
export function validatePlan(problem: Problem, plan: Plan): PlanProblem[] {
  const { film, margins, gap, pieces, pinned } = problem;
  const found: PlanProblem[] = [];
  const ground: Ground = {
    width: film.width,
    end: film.kind === 'roll' ? film.lengthLimit : film.length,
    margins,
    gap,
    noPrint: film.kind === 'roll' ? film.noPrint : [],
  };
  const copies: Laid[] = [];
  for (const [index, placement] of plan.placements.entries()) {
    const copy = rectOf(problem, placement, index);
    if (!copy) {
      found.push({ code: 'no-such-piece', copy: index });
      continue;
    }
    copies.push(copy);
    const pin = pinned[index];
    if (pin) {
      const { piece, sheet, x, y, turned } = placement;
      const same =
        pin.piece === piece && pin.sheet === sheet && pin.x === x && pin.y === y && pin.turned === turned;
      if (!same) found.push({ code: 'pinned-moved', copy: index });
      continue;
    }
    if (placement.turned && pieces[placement.piece]?.turn !== 'quarter') {
      found.push({ code: 'turned-but-fixed', copy: index });
    }
    for (const edge of edgeProblems(ground, copy))
      found.push({ code: 'edge', copy: index, problem: edge.code });
  }
  for (const pair of closePairs(copies, um(gap))) {
    if (pair.code !== 'too-close' || pair.copies.some((copy) => copy >= pinned.length)) found.push(pair);
  }
  found.push(...countProblems(problem, plan), ...lengthProblems(problem, plan, copies));
  found.push(...spanProblems(problem, plan, copies));
  found.push(...mixedOrders(problem, copies.slice(pinned.length), plan));
  return found;
}
