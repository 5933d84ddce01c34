import fc from 'fast-check';
import type { Piece, Placed, Plan, Problem } from '../../src/packing';
import { fromMm, um } from '../../src/units';

const none = um(0);

/** A roll without margins, gaps, spans or end, as strips of the literature are. */
export const bareRoll = (width: number, pieces: readonly Piece[]): Problem => ({
  film: { kind: 'roll', width: um(width), lengthLimit: null, spanMax: null, cutBlank: none, noPrint: [] },
  margins: { left: none, right: none, lead: none, tail: none },
  gap: none,
  cutting: 'free',
  together: { kind: 'any' },
  pieces,
  pinned: [],
});

export const piece = (width: number, length: number, more: Partial<Piece> = {}): Piece => ({
  id: `${width}x${length}`,
  width: um(width),
  length: um(length),
  count: 1,
  turn: 'fixed',
  rank: 0,
  ...more,
});

const mm = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => fromMm(tenths / 10));

const pieces = fc.array(
  fc.record({
    id: fc.constant('piece'),
    width: mm(8, 140),
    length: mm(8, 140),
    count: fc.integer({ min: 1, max: 6 }),
    turn: fc.constantFrom('fixed' as const, 'quarter' as const),
    rank: fc.integer({ min: 0, max: 3 }),
  }),
  { minLength: 1, maxLength: 8 },
);

const together = fc.constantFrom(
  { kind: 'any' } as const,
  { kind: 'near', share: 0.05 } as const,
  { kind: 'apart' } as const,
  { kind: 'by-due' } as const,
);
const margins = fc.record({ left: mm(0, 8), right: mm(0, 8), lead: mm(0, 15), tail: mm(0, 15) });
const gap = fc.integer({ min: 0, max: 40 }).map((half) => um(half * 200));

/** Rolls as shops have them: cut or not, with an end or without. Every piece fits a span alone. */
export const anyRoll: fc.Arbitrary<Problem> = fc.record({
  film: fc.record({
    kind: fc.constant('roll' as const),
    width: mm(165, 330),
    lengthLimit: fc.option(mm(180, 900), { nil: null }),
    spanMax: fc.option(mm(230, 400), { nil: null }),
    cutBlank: fc.oneof(fc.constant(none), mm(0, 30)),
    noPrint: fc.array(
      fc.tuple(mm(0, 600), mm(1, 60)).map(([from, length]) => ({ from, to: um(from + length) })),
      { maxLength: 2 },
    ),
  }),
  margins,
  gap,
  cutting: fc.constantFrom('free' as const, 'straight' as const, 'staged' as const),
  together,
  pieces,
  pinned: fc.constant([]),
});

export const anySheets: fc.Arbitrary<Problem> = fc.record({
  film: fc.record({
    kind: fc.constant('sheet' as const),
    width: mm(165, 330),
    length: mm(180, 480),
    sheetLimit: fc.constant(null),
    printed: fc.constant(0),
  }),
  margins,
  gap,
  cutting: fc.constantFrom('free' as const, 'straight' as const, 'staged' as const),
  together,
  pieces,
  pinned: fc.constant([]),
});

/** Pins some copies of a plan where they lie and takes them out of the counts. */
export function pinSome(problem: Problem, plan: Plan, isPinned: (index: number) => boolean): Problem {
  const pinned: Placed[] = plan.placed.filter((_, index) => isPinned(index));
  return {
    ...problem,
    pinned,
    pieces: problem.pieces.map((own, index) => ({
      ...own,
      count: own.count - pinned.filter((copy) => copy.piece === index).length,
    })),
  };
}
