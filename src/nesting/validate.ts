import { area, FillRule, intersect, type Paths64 } from 'clipper2-ts';
import type { OutlinePlaced, OutlinePlan, OutlineProblem, Ring } from './problem';
import { turned } from './turned';

/** What is wrong with a plan; copies are told by their index in it. */
export type OutlineFault =
  | { readonly code: 'count'; readonly piece: number; readonly placed: number }
  | { readonly code: 'rotation'; readonly copy: number }
  | { readonly code: 'off-film'; readonly copy: number }
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

/** The square of how far a point is from a stretch between two others. */
function fromStretch(x: number, y: number, x0: number, y0: number, x1: number, y1: number): number {
  const [across, along] = [x1 - x0, y1 - y0];
  const whole = across * across + along * along;
  const share = whole === 0 ? 0 : Math.max(0, Math.min(1, ((x - x0) * across + (y - y0) * along) / whole));
  return (x - x0 - share * across) ** 2 + (y - y0 - share * along) ** 2;
}

/** Calls with both ends of every edge. */
function eachEdge(
  rings: readonly Ring[],
  edge: (x0: number, y0: number, x1: number, y1: number) => void,
): void {
  for (const ring of rings) {
    let [x, y] = [ring.at(-2) as number, ring.at(-1) as number];
    for (let at = 0; at < ring.length; at += 2) {
      const [nextX, nextY] = [ring[at] as number, ring[at + 1] as number];
      edge(x, y, nextX, nextY);
      [x, y] = [nextX, nextY];
    }
  }
}

const crosses = (
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  u0: number,
  v0: number,
  u1: number,
  v1: number,
) => {
  const side = (x: number, y: number) => (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0);
  const other = (x: number, y: number) => (u1 - u0) * (y - v0) - (v1 - v0) * (x - u0);
  return side(u0, v0) * side(u1, v1) < 0 && other(x0, y0) * other(x1, y1) < 0;
};

/** Whether a point lies inside an outline, by the edges that a ray from it crosses. */
function contains(rings: readonly Ring[], x: number, y: number): boolean {
  let isInside = false;
  eachEdge(rings, (x0, y0, x1, y1) => {
    if (y0 <= y !== y1 <= y && x < x0 + ((y - y0) * (x1 - x0)) / (y1 - y0)) isInside = !isInside;
  });
  return isInside;
}

/** Whether the borders of two outlines come nearer than a gap, or one lies in the other's ink. */
function isNearer(a: readonly Ring[], b: readonly Ring[], gap: number): boolean {
  const least = gap * gap;
  let isNear = false;
  eachEdge(a, (x0, y0, x1, y1) => {
    if (isNear) return;
    const [left, right] = [Math.min(x0, x1) - gap, Math.max(x0, x1) + gap];
    const [low, high] = [Math.min(y0, y1) - gap, Math.max(y0, y1) + gap];
    eachEdge(b, (u0, v0, u1, v1) => {
      if (Math.max(u0, u1) < left || Math.min(u0, u1) > right) return;
      if (Math.max(v0, v1) < low || Math.min(v0, v1) > high) return;
      isNear ||=
        crosses(x0, y0, x1, y1, u0, v0, u1, v1) ||
        fromStretch(x0, y0, u0, v0, u1, v1) < least ||
        fromStretch(x1, y1, u0, v0, u1, v1) < least ||
        fromStretch(u0, v0, x0, y0, x1, y1) < least ||
        fromStretch(u1, v1, x0, y0, x1, y1) < least;
    });
  });
  const first = (rings: readonly Ring[], other: readonly Ring[]) =>
    rings.some((ring) => contains(other, ring[0] as number, ring[1] as number));
  return isNear || first(a, b) || first(b, a);
}

/** Outlines that may touch: whether they share more than rounding can make. */
function isOver(a: readonly Ring[], b: readonly Ring[]): boolean {
  const paths = (rings: readonly Ring[]): Paths64 =>
    rings.map((ring) =>
      Array.from({ length: ring.length / 2 }, (_, at) => ({
        x: Math.round(ring[2 * at] as number),
        y: Math.round(ring[2 * at + 1] as number),
      })),
    );
  let border = 0;
  eachEdge(a, (x0, y0, x1, y1) => {
    border += Math.hypot(x1 - x0, y1 - y0);
  });
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
  for (const [copy, { left, right, from, to }] of lying.entries()) {
    const isOff =
      left < margins.left - TOLERANCE ||
      right > film.width - margins.right + TOLERANCE ||
      from < margins.lead - TOLERANCE ||
      to > end + TOLERANCE;
    if (isOff) yield { code: 'off-film', copy };
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
 * other than the gap. It shares no code with what plans are made by but the turning of an outline.
 */
export function outlineFaults(problem: OutlineProblem, plan: OutlinePlan): OutlineFault[] {
  const { pieces, gap } = problem;
  const counts = pieces.map((_, piece) => plan.placed.filter((copy) => copy.piece === piece).length);
  const lying = plan.placed.map((placed) => lyingOf(problem, placed));
  const nearest = gap - TOLERANCE;
  const isBad = (a: Lying, b: Lying) =>
    nearest > 0 ? isNearer(a.rings, b.rings, nearest) : isOver(a.rings, b.rings);
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
