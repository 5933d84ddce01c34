import { type Angle, mayLieAt, type Turning, um } from '../units';
import { STAGES, unparted } from './cut-tree';
import type { Problem, Span } from './problem';
import { edgeProblems, type Ground, type PlaceProblem, type Rect, tooClose } from './rules';

/** A copy as it lies. */
export interface Lying extends Rect {
  /** 0 on a roll. */
  readonly sheet: number;
  readonly angle: Angle;
  readonly turning: Turning;
  /** Copies with the same are of one order. */
  readonly order: string | number;
  /** The lower the sooner it is due. */
  readonly rank: number;
  /** It lies as it lies: of what is wrong with such copies alone nothing is told. */
  readonly fixed: boolean;
}

/** What is wrong with a layout; copies are named by their index. */
export type Fault =
  | { readonly code: 'turned-but-fixed' | 'cut-by-knife'; readonly copy: number }
  | { readonly code: 'edge'; readonly copy: number; readonly problem: PlaceProblem['code'] }
  | { readonly code: 'too-close' | 'not-apart' | 'not-by-due'; readonly copies: readonly [number, number] }
  | { readonly code: 'not-straight' | 'not-staged'; readonly copies: readonly number[] };

/** What of a problem a layout is held against. */
export type Shape = Pick<Problem, 'film' | 'margins' | 'gap' | 'cutting' | 'together'>;

interface Indexed extends Lying {
  readonly index: number;
}

function groundOf({ film, margins, gap }: Shape): Ground {
  const { width } = film;
  return film.kind === 'roll'
    ? { width, end: film.lengthLimit, margins, gap, noPrint: film.noPrint }
    : { width, end: film.length, margins, gap, noPrint: [] };
}

function* ownFaults(shape: Shape, copies: readonly Indexed[]): Generator<Fault> {
  const ground = groundOf(shape);
  const { film } = shape;
  for (const copy of copies) {
    if (copy.fixed) continue;
    const { index } = copy;
    if (!mayLieAt(copy.turning, copy.angle)) yield { code: 'turned-but-fixed', copy: index };
    for (const { code: problem } of edgeProblems(ground, copy)) yield { code: 'edge', copy: index, problem };
    if (film.kind === 'roll') continue;
    if (copy.sheet < film.printed) yield { code: 'edge', copy: index, problem: 'no-print' };
    if (film.sheetLimit !== null && copy.sheet >= film.sheetLimit) {
      yield { code: 'edge', copy: index, problem: 'past-end' };
    }
  }
}

/** The pairs that are closer than the gap, by a sweep along each film. */
function* closePairs({ gap }: Shape, copies: readonly Indexed[]): Generator<Fault> {
  const sorted = copies.toSorted((a, b) => a.sheet - b.sheet || a.y - b.y);
  let active: Indexed[] = [];
  for (const copy of sorted) {
    active = active.filter((other) => other.sheet === copy.sheet && copy.y < other.y + other.length + gap);
    for (const other of active) {
      if (!(copy.fixed && other.fixed) && tooClose(copy, other, gap)) {
        yield { code: 'too-close', copies: [other.index, copy.index] };
      }
    }
    active.push(copy);
  }
}

function* knifeFaults(
  { film, gap }: Shape,
  copies: readonly Indexed[],
  spans: readonly Span[],
): Generator<Fault> {
  if (film.kind !== 'roll' || film.spanMax === null) return;
  const lines = spans.slice(0, -1).map((span) => span.to);
  const after = Math.max(gap / 2, film.cutBlank);
  for (const { index, y, length } of copies) {
    if (lines.some((line) => line > y - after && line < y + length + gap / 2)) {
      yield { code: 'cut-by-knife', copy: index };
    }
  }
}

/** Copies that edge-to-edge cuts do not part, each sheet by itself. */
function* cutFaults({ cutting }: Shape, copies: readonly Indexed[]): Generator<Fault> {
  if (cutting === 'free' || cutting === 'outlines') return;
  const code = cutting === 'staged' ? 'not-staged' : 'not-straight';
  const bySheet = new Map<number, Indexed[]>();
  for (const copy of copies) {
    const own = bySheet.get(copy.sheet);
    if (own) own.push(copy);
    else bySheet.set(copy.sheet, [copy]);
  }
  for (const own of bySheet.values()) {
    for (const group of unparted(own, cutting === 'staged' ? STAGES : undefined)) {
      const stuck = group.flatMap((at) => own[at] ?? []);
      if (stuck.some(({ fixed }) => !fixed)) yield { code, copies: stuck.map(({ index }) => index) };
    }
  }
}

/** Orders whose stretches of a film, from first copy to last, overlap; told by a copy of each. */
function* mixedOrders({ together }: Shape, copies: readonly Indexed[]): Generator<Fault> {
  if (together.kind !== 'apart') return;
  const stretches = new Map<string, { sheet: number; from: number; to: number; copy: number }>();
  for (const { index, sheet, y, length, order, fixed } of copies) {
    if (fixed) continue;
    const key = `${sheet} ${order}`;
    const stretch = stretches.get(key) ?? { sheet, from: y, to: y + length, copy: index };
    const [from, to] = [Math.min(stretch.from, y), Math.max(stretch.to, y + length)];
    stretches.set(key, { ...stretch, from, to });
  }
  const sorted = [...stretches.values()].sort((a, b) => a.sheet - b.sheet || a.from - b.from);
  let reached = sorted[0];
  for (const stretch of sorted.slice(1)) {
    if (reached?.sheet === stretch.sheet && stretch.from < reached.to) {
      yield { code: 'not-apart', copies: [reached.copy, stretch.copy] };
    }
    if (reached?.sheet !== stretch.sheet || stretch.to > reached.to) reached = stretch;
  }
}

/** Copies that begin before all that are due sooner have ended; told with one of these. */
function* outOfTurn({ together }: Shape, copies: readonly Indexed[]): Generator<Fault> {
  if (together.kind !== 'by-due') return;
  const sorted = copies.filter(({ fixed }) => !fixed).sort((a, b) => a.rank - b.rank);
  const isBefore = (a: Indexed, end: Indexed) =>
    a.sheet < end.sheet || (a.sheet === end.sheet && a.y < end.y + end.length);
  let sooner: Indexed | null = null;
  let furthest = sorted[0];
  for (const copy of sorted) {
    if (furthest && copy.rank > furthest.rank) sooner = furthest;
    if (sooner && isBefore(copy, sooner)) yield { code: 'not-by-due', copies: [sooner.index, copy.index] };
    const reach = { ...copy, y: um(copy.y + copy.length) };
    if (!furthest || !isBefore(reach, furthest)) furthest = copy;
  }
}

const indexed = (lying: readonly Lying[]): Indexed[] => lying.map((copy, index) => ({ ...copy, index }));

/** Where copies do not lie as it was asked for: parted by no straight cuts, orders not apart, or not in their turn. */
export function wishFaults(shape: Shape, lying: readonly Lying[]): Fault[] {
  const copies = indexed(lying);
  return [...cutFaults(shape, copies), ...mixedOrders(shape, copies), ...outOfTurn(shape, copies)];
}

/**
 * Where copies lie as they may not: over an edge or a no-print stretch, too close, turned though they may not be, or crossed by a knife
 * line. Takes a sweep, so that it can follow every change.
 * @param spans into which a roll is cut; none, if it is not
 */
export function ruleFaults(shape: Shape, lying: readonly Lying[], spans: readonly Span[]): Fault[] {
  const copies = indexed(lying);
  return [...ownFaults(shape, copies), ...closePairs(shape, copies), ...knifeFaults(shape, copies, spans)];
}

/** All that is wrong with copies where they lie: see {@link ruleFaults} and {@link wishFaults}. */
export const layoutFaults = (shape: Shape, lying: readonly Lying[], spans: readonly Span[]): Fault[] => [
  ...ruleFaults(shape, lying, spans),
  ...wishFaults(shape, lying),
];

/** Whether a copy that is not fixed lies well by itself and among all others; what holds for layouts as a whole is not asked. */
export function isClear(shape: Shape, lying: readonly Lying[], index: number): boolean {
  const own = lying[index];
  if (!own) return false;
  for (const _fault of ownFaults(shape, [{ ...own, index }])) return false;
  return lying.every(
    (other, at) => at === index || other.sheet !== own.sheet || !tooClose(own, other, shape.gap),
  );
}
