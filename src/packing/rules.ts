import { areNearerOnce, boxRing, type Ring } from '../outlines';
import type { Micrometres } from '../units';
import type { Margins, Span } from './problem';

/** A copy as it lies: its corner nearest to x = 0 and the leading edge, and its extent across and along. */
export interface Rect {
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly width: Micrometres;
  readonly length: Micrometres;
  /** Its outline from that corner on, if it keeps the gap by it and not by its box. */
  readonly outline?: readonly Ring[] | null;
}

/** What of a film decides where a copy may lie. `end` is how far the film goes, `null` if it has no end. */
export interface Ground {
  readonly width: Micrometres;
  readonly end: Micrometres | null;
  readonly margins: Margins;
  readonly gap: Micrometres;
  readonly noPrint: readonly Span[];
}

/** Why a copy may not lie where it does; `other` is the index of the copy it is too close to. */
export type PlaceProblem =
  | { readonly code: 'outside-left' | 'outside-right' | 'before-lead' | 'past-end' | 'no-print' }
  | { readonly code: 'too-close'; readonly other: number };

/** Two boxes are a gap apart if they are so across or along the film (Chebyshev distance). */
const boxesTooClose = (a: Rect, b: Rect, gap: number): boolean =>
  a.x < b.x + b.width + gap &&
  b.x < a.x + a.width + gap &&
  a.y < b.y + b.length + gap &&
  b.y < a.y + a.length + gap;

/** What a box or an outline keeps the gap by: among outlines a box does so as they do, as the crow flies. */
export const keepsGapBy = (
  outline: readonly Ring[] | null,
  box: Pick<Rect, 'width' | 'length'>,
  amongOutlines: boolean,
): readonly Ring[] | null => outline ?? (amongOutlines ? [boxRing(box)] : null);

/** How far rounding may move a corner of an outline, micrometres. */
const ROUNDED = 1;

const lyingOf = (rect: Rect) => ({ rings: rect.outline ?? [boxRing(rect)], x: rect.x, y: rect.y });

/**
 * Whether two copies lie nearer to each other than the gap. Where one of them keeps it by its outline, it is measured as the crow
 * flies; boxes that are a gap apart always do.
 */
export const tooClose = (a: Rect, b: Rect, gap: number): boolean =>
  boxesTooClose(a, b, gap) &&
  (!(a.outline || b.outline) || areNearerOnce(lyingOf(a), lyingOf(b), Math.max(ROUNDED, gap - ROUNDED)));

/** Whether one copy lies within the margins. */
export function* edgeProblems({ width, end, margins, noPrint }: Ground, rect: Rect): Generator<PlaceProblem> {
  if (rect.x < margins.left) yield { code: 'outside-left' };
  if (rect.x + rect.width > width - margins.right) yield { code: 'outside-right' };
  if (rect.y < margins.lead) yield { code: 'before-lead' };
  if (end !== null && rect.y + rect.length > end - margins.tail) yield { code: 'past-end' };
  if (noPrint.some(({ from, to }) => rect.y < to && rect.y + rect.length > from)) yield { code: 'no-print' };
}

/** Why one copy may not lie where it does among others; none, if it may. */
export function checkPlace(ground: Ground, rect: Rect, others: readonly Rect[]): PlaceProblem[] {
  const problems = [...edgeProblems(ground, rect)];
  others.forEach((other, index) => {
    if (tooClose(rect, other, ground.gap)) problems.push({ code: 'too-close', other: index });
  });
  return problems;
}
