import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  atOnce,
  createPlanner,
  knifeLines,
  type Piece,
  type Placed,
  type Plan,
  type Problem,
  validatePlan,
} from '../../src/packing';
import { completionsOf, type Part, soonestComplete } from '../../src/packing/completion';
import { compareEach, fromMm, QUARTER, UPRIGHT, um } from '../../src/units';
import { anyRoll, anySheets, bareRoll, piece, pinSome } from './problems';
import { rollUsed, sheetsUsed } from './used';

const planned = (problem: Problem, iterations = 60): Plan => {
  const planner = createPlanner(problem, 1);
  planner.step(iterations);
  return planner.best();
};

/** Where each rank's copies end that may be moved, the soonest first; sheet after sheet. */
function ends({ pieces, film, pinned }: Problem, placed: readonly Placed[]): number[] {
  const far = new Map<number, number>();
  for (const { piece: index, y, sheet, angle } of placed.slice(pinned.length)) {
    const own = pieces[index];
    if (!own) continue;
    const end =
      (film.kind === 'sheet' ? sheet * film.length : 0) + y + (angle === QUARTER ? own.width : own.length);
    far.set(own.rank, Math.max(far.get(own.rank) ?? 0, end));
  }
  return [...far].sort(([a], [b]) => a - b).map(([, end]) => end);
}

function permutations(length: number): number[][] {
  if (length === 0) return [[]];
  return permutations(length - 1).flatMap((order) =>
    Array.from({ length }, (_, at) => order.toSpliced(at, 0, length - 1)),
  );
}

const withRanks = (problem: Problem, ranks: readonly number[]): Problem => ({
  ...problem,
  pieces: problem.pieces.map((own, index) => ({ ...own, rank: ranks[index % ranks.length] ?? 0 })),
});

const GAP = fromMm(4);
const SPAN = fromMm(230);

/** A roll cut into spans. */
const inSpans = (pieces: readonly Piece[], { lead = 0 } = {}): Problem => ({
  ...bareRoll(fromMm(300), pieces),
  film: {
    kind: 'roll',
    width: fromMm(300),
    lengthLimit: null,
    spanMax: SPAN,
    cutBlank: um(0),
    noPrint: [],
  },
  margins: { left: um(0), right: um(0), lead: fromMm(lead), tail: um(0) },
  gap: GAP,
});

const anyRanks = fc.array(fc.nat({ max: 4 }), { minLength: 8, maxLength: 8 });

describe('parts of a film in the order in which orders are complete soonest', () => {
  const part = fc.record({
    length: fc.integer({ min: 1, max: 9 }),
    ranks: fc.uniqueArray(fc.nat({ max: 4 }), { minLength: 1, maxLength: 3 }).map((own) => new Set(own)),
  });

  it('are as in the best of all orders', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts: Part[]) => {
        const costOf = completionsOf(parts);
        const best = permutations(parts.length).map(costOf).sort(compareEach)[0];
        const order = soonestComplete(parts);
        expect(order.toSorted((a, b) => a - b)).toEqual([...parts.keys()]);
        expect(costOf(order)).toEqual(best);
      }),
      { numRuns: 300 },
    );
  });
});

describe('copies of the soonest orders', () => {
  it('come first on any film, which gets no longer and breaks no rule by it', () => {
    fc.assert(
      fc.property(fc.oneof(anyRoll, anySheets), anyRanks, fc.nat({ max: 5 }), (asked, ranks, every) => {
        const free = {
          ...asked,
          together: asked.together.kind === 'near' ? asked.together : ({ kind: 'any' } as const),
        };
        const laid = planned(free);
        const left = free.pieces.map(
          (_, index) => laid.unplaced.find((each) => each.piece === index)?.count ?? 0,
        );
        const onFilm = {
          ...free,
          pieces: free.pieces.map((own, index) => ({ ...own, count: own.count - (left[index] ?? 0) })),
        };
        const problem = withRanks(
          pinSome(onFilm, laid, (index) => every > 1 && index % every === 0),
          ranks,
        );
        const isPinned = (index: number) => every > 1 && index % every === 0;
        const placed = [...problem.pinned, ...laid.placed.filter((...of) => !isPinned(of[1]))];
        const next = atOnce.reordered(problem, placed);
        expect(validatePlan(problem, next)).toEqual([]);
        if (onFilm.film.kind === 'sheet') expect(sheetsUsed(next)).toBeLessThanOrEqual(sheetsUsed(laid));
        else {
          const [now, before] = [rollUsed(next), rollUsed(laid)];
          expect(now.length).toBeLessThanOrEqual(before.length);
          if (before.spans.length > 0) expect(now.spans.length).toBeLessThanOrEqual(before.spans.length);
        }
        expect(next.unplaced).toEqual([]);
        expect(compareEach(ends(problem, next.placed), ends(problem, placed))).toBeLessThanOrEqual(0);
      }),
      { numRuns: 200 },
    );
  });

  it('lie as in the best order that keeps the number of spans', () => {
    // Each copy is as wide as the film, so that any order of them is a layout.
    const rows = fc.array(fc.tuple(fc.integer({ min: 40, max: 180 }), fc.nat({ max: 3 })), {
      minLength: 2,
      maxLength: 5,
    });
    fc.assert(
      fc.property(rows, fc.constantFrom(0, 12), (made, lead) => {
        const pieces = made.map(([length, rank]) => piece(fromMm(300), fromMm(length), { rank }));
        const problem = inSpans(pieces, { lead });
        const plan = planned(problem, 40);
        expect(validatePlan(problem, plan)).toEqual([]);
        const costs = permutations(pieces.length).flatMap((order) => {
          let y = fromMm(lead);
          const placed = order.map((index): Placed => {
            const at = { piece: index, sheet: 0, x: um(0), y, angle: UPRIGHT };
            y = um(y + (pieces[index]?.length ?? 0) + GAP);
            return at;
          });
          const rects = placed.map((own) => ({
            ...own,
            width: fromMm(300),
            length: pieces[own.piece]?.length ?? um(0),
          }));
          const spans = knifeLines(rects, {
            gap: GAP,
            spanMax: SPAN,
            cutBlank: um(0),
            lengthUsed: um(y - GAP),
          });
          return spans && spans.length <= rollUsed(plan).spans.length ? [ends(problem, placed)] : [];
        });
        expect(ends(problem, plan.placed)).toEqual(costs.sort(compareEach)[0]);
      }),
      { numRuns: 150 },
    );
  });

  it('are in the first span, though the shortest span costs least at the end', () => {
    const problem = inSpans([
      piece(fromMm(300), fromMm(200), { count: 3, rank: 1 }),
      piece(fromMm(300), fromMm(90), { rank: 0 }),
    ]);
    const plan = planned(problem);
    const first = plan.placed.find(({ piece: own }) => own === 1);
    expect(first?.y).toBe(0);
    expect(rollUsed(plan).spans).toHaveLength(4);
  });

  it('exchange places with copies of the same size', () => {
    const problem = inSpans([
      piece(fromMm(140), fromMm(200), { count: 5, rank: 1 }),
      piece(fromMm(140), fromMm(200), { count: 2, rank: 0 }),
      piece(fromMm(140), fromMm(200), { count: 1, rank: 2 }),
    ]);
    const plan = planned(problem);
    expect(ends(problem, plan.placed)[0]).toBe(fromMm(200));
    expect(validatePlan(problem, plan)).toEqual([]);
  });

  it('take the free film nearest to the front among copies that stay where they are', () => {
    const stays = piece(fromMm(300), fromMm(100), { count: 0, rank: 5 });
    // Two holes, each with room for one copy.
    const problem: Problem = {
      ...bareRoll(fromMm(300), [
        stays,
        piece(fromMm(200), fromMm(60), { rank: 1 }),
        piece(fromMm(190), fromMm(50), { rank: 0 }),
      ]),
      pinned: [0, 170, 340].map((mm) => ({ piece: 0, sheet: 0, x: um(0), y: fromMm(mm), angle: UPRIGHT })),
    };
    const plan = planned(problem);
    expect(validatePlan(problem, plan)).toEqual([]);
    expect(plan.placed.find(({ piece: own }) => own === 2)?.y).toBe(fromMm(100));
    expect(rollUsed(plan).length).toBe(fromMm(440));
  });

  it('keep what is asked of orders: stretches of their own in the order in which they are due', () => {
    fc.assert(
      fc.property(fc.oneof(anyRoll, anySheets), (asked) => {
        const problem: Problem = { ...asked, together: { kind: 'by-due' } };
        const plan = planned(problem);
        expect(validatePlan(problem, plan)).toEqual([]);
        const [soonest] = plan.placed.toSorted((a, b) => a.sheet - b.sheet || a.y - b.y);
        const ranks = plan.placed.map(({ piece: own }) => problem.pieces[own]?.rank ?? 0);
        if (soonest) expect(problem.pieces[soonest.piece]?.rank).toBe(Math.min(...ranks));
      }),
      { numRuns: 80 },
    );
  });
});
