import { area, FillRule, intersect, type Paths64 } from 'clipper2-ts';
import { areNearer, type Ring, turned } from '../outlines';
import type { OutlinePlaced, OutlinePlan, OutlineProblem } from './problem';

/** What is wrong with a plan; copies are told by their index in it. */
export type OutlineFault =
  | { readonly code: 'count'; readonly piece: number; readonly placed: number }
  | { readonly code: 'rotation'; readonly copy: number }
  | { readonly code: 'off-film'; readonly copy: number }
  | { readonly code: 'no-print'; readonly copy: number }
  | { readonly code: 'knife-line'; readonly copy: number }
  | { readonly code: 'span-too-long'; readonly span: number }
  | { readonly code: 'too-near'; readonly copies: readonly [number, number] };

/** How far rounding may move a corner, micrometres. */
const TOLERANCE = 1;

/** A copy where it lies. */
interface Lying {
  readonly rings: readonly Ring[];
  readonly sheet: number;
  readonly left: number;
  readonly right: number;
  readonly from: number;
  readonly to: number;
}

function lyingOf({ pieces }: OutlineProblem, { piece, sheet, x, y, rotation }: OutlinePlaced): Lying {
  const { rings, width, length } = turned(pieces[piece]?.rings ?? [], rotation);
  const moved = rings.map((ring) => ring.map((value, at) => value + (at % 2 === 0 ? x : y)));
  return { rings: moved, sheet, left: x, right: x + width, from: y, to: y + length };
}

/** The length of a ring. */
const around = (ring: Ring): number =>
  Array.from({ length: ring.length / 2 }, (_, at) => 2 * at).reduce(
    (sum, at) =>
      sum +
      Math.hypot(
        (ring[at] as number) - (ring.at(at - 2) as number),
        (ring[at + 1] as number) - (ring.at(at - 1) as number),
      ),
    0,
  );

/** Outlines that may touch: whether they share more than rounding can make. */
function isOver(a: readonly Ring[], b: readonly Ring[]): boolean {
  const paths = (rings: readonly Ring[]): Paths64 =>
    rings.map((ring) =>
      Array.from({ length: ring.length / 2 }, (_, at) => ({
        x: Math.round(ring[2 * at] as number),
        y: Math.round(ring[2 * at + 1] as number),
      })),
    );
  const border = a.reduce((sum, ring) => sum + around(ring), 0);
  const shared = intersect(paths(a), paths(b), FillRule.NonZero);
  return Math.abs(shared.reduce((sum, path) => sum + area(path), 0)) > TOLERANCE * border;
}

/** Pairs of copies on one film whose boxes are nearer than a gap, swept along it. */
function* closePairs(lying: readonly Lying[], gap: number): Generator<readonly [number, number]> {
  const order = [...lying.keys()].sort((a, b) => (lying[a]?.from ?? 0) - (lying[b]?.from ?? 0));
  for (const [at, one] of order.entries()) {
    const a = lying[one] as Lying;
    for (let behind = at + 1; behind < order.length; behind += 1) {
      const other = order[behind] as number;
      const b = lying[other] as Lying;
      if (b.from >= a.to + gap) break;
      if (a.sheet === b.sheet && a.left < b.right + gap && b.left < a.right + gap) yield [one, other];
    }
  }
}

/** What is wrong with where copies lie on the film, each by itself. */
function* onFilm({ film, margins }: OutlineProblem, lying: readonly Lying[]): Generator<OutlineFault> {
  const end = film.kind === 'sheet' ? film.length - margins.tail : Number.POSITIVE_INFINITY;
  const bare = film.kind === 'roll' ? film.noPrint : [];
  for (const [copy, { left, right, from, to }] of lying.entries()) {
    const isOff =
      left < margins.left - TOLERANCE ||
      right > film.width - margins.right + TOLERANCE ||
      from < margins.lead - TOLERANCE ||
      to > end + TOLERANCE;
    if (isOff) yield { code: 'off-film', copy };
    const isBare = bare.some((bit) => from < bit.to - TOLERANCE && to > bit.from + TOLERANCE);
    if (isBare) yield { code: 'no-print', copy };
  }
}

/** What is wrong with the spans that a roll is cut into. */
function* onSpans(
  { film, gap }: OutlineProblem,
  { used }: OutlinePlan,
  lying: readonly Lying[],
): Generator<OutlineFault> {
  if (film.kind !== 'roll' || film.spanMax === null || used.kind !== 'roll') return;
  for (const [span, { from, to }] of used.spans.entries()) {
    if (to - from > film.spanMax + TOLERANCE) yield { code: 'span-too-long', span };
  }
  for (const { to: knife } of used.spans.slice(0, -1)) {
    for (const [copy, { from, to }] of lying.entries()) {
      if (to > knife - gap / 2 + TOLERANCE && from < knife + gap / 2 + film.cutBlank - TOLERANCE)
        yield { code: 'knife-line', copy };
    }
  }
}

/**
 * Proves a plan from the outlines alone: every copy once, in a turn that it may have, on the film, between knife lines, and no nearer to any
 * other than the gap. It shares no code with what plans are made by but the turning of an outline, and how near two come, which plans are not made by.
 */
export function outlineFaults(problem: OutlineProblem, plan: OutlinePlan): OutlineFault[] {
  const { pieces, gap } = problem;
  const counts = pieces.map((_, piece) => plan.placed.filter((copy) => copy.piece === piece).length);
  const lying = plan.placed.map((placed) => lyingOf(problem, placed));
  const nearest = gap - TOLERANCE;
  const whole = ({ rings }: Lying) => ({ rings, x: 0, y: 0 });
  const isBad = (a: Lying, b: Lying) =>
    nearest > 0 ? areNearer(whole(a), whole(b), nearest) : isOver(a.rings, b.rings);
  return [
    ...pieces.flatMap(({ count }, piece): OutlineFault[] =>
      counts[piece] === count ? [] : [{ code: 'count', piece, placed: counts[piece] ?? 0 }],
    ),
    ...plan.placed.flatMap(({ piece, rotation }, copy): OutlineFault[] =>
      pieces[piece]?.rotations.includes(rotation) ? [] : [{ code: 'rotation', copy }],
    ),
    ...onFilm(problem, lying),
    ...onSpans(problem, plan, lying),
    ...[...closePairs(lying, Math.max(nearest, 0))].flatMap((copies): OutlineFault[] => {
      const [a, b] = copies.map((copy) => lying[copy]);
      return a && b && isBad(a, b) ? [{ code: 'too-near', copies }] : [];
    }),
  ];
}
