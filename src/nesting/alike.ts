import { areNearer, type Lying, turned } from '../outlines';
import type { OutlinePlaced, OutlinePlan, OutlineProblem } from './problem';

/** How far boxes that are as large may differ by rounding, micrometres. */
const ROUNDED = 1;

/** A copy as it lies, and its box. */
interface Copy extends Lying {
  readonly sheet: number;
  readonly width: number;
  readonly length: number;
}

function copyOf({ pieces }: OutlineProblem, { piece, sheet, x, y, rotation }: OutlinePlaced): Copy {
  const { rings, width, length } = turned(pieces[piece]?.rings ?? [], rotation);
  return { rings, x, y, sheet, width, length };
}

/** Whether a copy keeps the gap from another. */
const isApart = (a: Copy, b: Copy, gap: number): boolean =>
  a.sheet !== b.sheet ||
  a.x >= b.x + b.width + gap ||
  b.x >= a.x + a.width + gap ||
  a.y >= b.y + b.length + gap ||
  b.y >= a.y + a.length + gap ||
  !areNearer(a, b, gap);

/** Of each piece the turn that most of its copies lie in, the first allowed of several. */
function mostOf({ pieces }: OutlineProblem, placed: readonly OutlinePlaced[]): number[] {
  return pieces.map(({ rotations }, piece) => {
    const times = (rotation: number) =>
      placed.filter((copy) => copy.piece === piece && copy.rotation === rotation).length;
    return rotations.reduce((best, rotation) => (times(rotation) > times(best) ? rotation : best));
  });
}

/**
 * Lays copies of one piece in one turn as far as that costs nothing: one that lies in another turn than most is turned where its box is as
 * large as before and it keeps the gap, where there is one, from all others. The film, its sheets and its knife lines stay as they are.
 */
export function alike(problem: OutlineProblem, plan: OutlinePlan): OutlinePlan {
  const { gap, pinned } = problem;
  // Of copies that touch it cannot be told whether they overlap.
  if (gap === 0) return plan;
  const placed = [...plan.placed];
  const most = mostOf(problem, placed);
  if (placed.every(({ piece, rotation }) => rotation === most[piece])) return plan;
  const copies = [...placed, ...pinned].map((copy) => copyOf(problem, copy));
  placed.forEach((copy, at) => {
    const rotation = most[copy.piece] as number;
    if (copy.rotation === rotation) return;
    const [was, next] = [copies[at] as Copy, copyOf(problem, { ...copy, rotation })];
    const isAsLarge =
      Math.abs(next.width - was.width) <= ROUNDED && Math.abs(next.length - was.length) <= ROUNDED;
    if (!isAsLarge || !copies.every((other, each) => each === at || isApart(next, other, gap))) return;
    copies[at] = next;
    placed[at] = { ...copy, rotation };
  });
  return { ...plan, placed };
}
