import type { LaidCopy, LaidRun } from '../layout';
import { isCutStraight } from '../model';
import { type CutTree, cutTree, type Span } from '../packing';
import { type Micrometres, onceFor, um } from '../units';
import { copiesWithin, measured, runSpans } from './cuts';
import { takingOrder } from './taking';

/** A piece of film in the hand. */
export interface FilmPart {
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly width: Micrometres;
  readonly length: Micrometres;
}

/** One thing to do to take a span apart. */
export type CutStep =
  | {
      readonly kind: 'cut';
      /** From 1 within its span. */
      readonly number: number;
      /** From edge to edge of its piece: `across` the film, or `along` it. */
      readonly axis: 'across' | 'along';
      /** What is cut. */
      readonly piece: FilmPart;
      /** Where it lies on the run as it is planned, to be drawn. */
      readonly at: Micrometres;
      /** By a ruler, from the edge of the piece that is nearer to the start, or to the near side. */
      readonly fromEdge: Micrometres;
      /** What comes off on that side. */
      readonly off: readonly LaidCopy[];
      /** Copies that hang together with no other after it. */
      readonly frees: readonly LaidCopy[];
    }
  | { readonly kind: 'copy'; readonly copy: LaidCopy };

/** How a span is taken apart. */
export interface SpanOrder {
  /** From 0. */
  readonly span: number;
  readonly from: Micrometres;
  readonly to: Micrometres;
  readonly copies: readonly LaidCopy[];
  readonly steps: readonly CutStep[];
}

const copiesOf = (tree: CutTree, copies: readonly LaidCopy[]): LaidCopy[] =>
  tree.kind === 'copy'
    ? copies.slice(tree.copy, tree.copy + 1)
    : tree.parts.flatMap((part) => copiesOf(part, copies));

/** A piece parted by a straight cut: what comes off, and what is left. */
function part(piece: FilmPart, axis: 'across' | 'along', at: number): [FilmPart, FilmPart] {
  const { x, y, width, length } = piece;
  if (axis === 'across') {
    return [
      { ...piece, length: um(at - y) },
      { ...piece, y: um(at), length: um(y + length - at) },
    ];
  }
  return [
    { ...piece, width: um(at - x) },
    { ...piece, x: um(at), width: um(x + width - at) },
  ];
}

/** The cuts of a tree: all that part one piece first, each from its fresh edge, then its parts one after the other. */
function cutsOf(run: LaidRun, tree: CutTree, piece: FilmPart, copies: readonly LaidCopy[]): CutStep[] {
  if (tree.kind === 'copy') return [];
  const { axis, at, parts } = tree;
  const steps: CutStep[] = [];
  const pieces: FilmPart[] = [];
  let rest = piece;
  at.forEach((line, index) => {
    const place = um(line);
    const [off, left] = part(rest, axis, place);
    const copiesIn = (number: number) =>
      parts.slice(number, number + 1).flatMap((own) => copiesOf(own, copies));
    const taken = copiesIn(index);
    const remaining = index === at.length - 1 ? copiesIn(index + 1) : [];
    steps.push({
      kind: 'cut',
      number: 0,
      axis,
      piece: rest,
      at: place,
      fromEdge: axis === 'across' ? measured(run, um(place - rest.y)) : um(place - rest.x),
      off: taken,
      frees: [...(taken.length === 1 ? taken : []), ...(remaining.length === 1 ? remaining : [])],
    });
    pieces.push(off);
    rest = left;
  });
  pieces.push(rest);
  return [
    ...steps,
    ...parts.flatMap((inner, index) => {
      const own = pieces[index];
      return own ? cutsOf(run, inner, own, copies) : [];
    }),
  ];
}

/** Full-width cuts that part a span into strips with scissors, where rows of copies leave a line free, and what lies in each. */
function strips(
  run: LaidRun,
  copies: readonly LaidCopy[],
  whole: FilmPart,
): { steps: CutStep[]; groups: LaidCopy[][] } {
  const groups: LaidCopy[][] = [];
  const lines: number[] = [];
  let reached = Number.NEGATIVE_INFINITY;
  for (const copy of copies.toSorted((a, b) => a.y - b.y)) {
    const group = groups.at(-1);
    if (group && copy.y < reached) group.push(copy);
    else {
      if (group) lines.push((reached + copy.y) / 2);
      groups.push([copy]);
    }
    reached = Math.max(reached, copy.y + copy.length);
  }
  let rest = whole;
  const steps = lines.map((line, index): CutStep => {
    const at = um(line);
    const cut: CutStep = {
      kind: 'cut',
      number: 0,
      axis: 'across',
      piece: rest,
      at,
      fromEdge: measured(run, um(at - rest.y)),
      off: groups[index] ?? [],
      frees: [],
    };
    rest = part(rest, 'across', at)[1];
    return cut;
  });
  return { steps, groups };
}

/** Numbers the cuts of a span. */
function numbered(steps: readonly CutStep[]): CutStep[] {
  let number = 0;
  return steps.map((step) => {
    if (step.kind === 'copy') return step;
    number += 1;
    return { ...step, number };
  });
}

function orderOf(run: LaidRun, span: Span, index: number): SpanOrder {
  const copies = copiesWithin(run.copies, span);
  const { from, to } = span;
  const whole: FilmPart = { x: um(0), y: from, width: run.film.width, length: um(to - from) };
  const tree = isCutStraight(run.film) ? cutTree(copies) : null;
  if (tree) {
    const cuts = cutsOf(run, tree, whole, copies);
    const steps = copies.length === 1 ? copies.map((copy): CutStep => ({ kind: 'copy', copy })) : cuts;
    return { span: index, from, to, copies, steps: numbered(steps) };
  }
  const { steps, groups } = strips(run, copies, whole);
  // A strip is taken apart before the next one is cut off the span.
  const all: CutStep[] = [];
  let last: LaidCopy | null = null;
  groups.forEach((group, strip) => {
    const cut = steps[strip];
    if (cut) all.push(cut);
    for (const copy of takingOrder(group, run.film, last)) {
      all.push({ kind: 'copy', copy });
      last = copy;
    }
  });
  return { span: index, from, to, copies, steps: numbered(all) };
}

/**
 * How a run is taken apart, span by span: by the cut tree where straight cuts alone do it, else strip by strip and copy by copy. Found
 * once a run.
 */
export const cutOrder = onceFor((run: LaidRun): readonly SpanOrder[] =>
  runSpans(run).map((span, index) => orderOf(run, span, index)),
);
