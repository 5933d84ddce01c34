import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createOutlinePlanner, type OutlinePlan, outlineFaults } from '../../src/nesting';
import { alike } from '../../src/nesting/alike';
import { um } from '../../src/units';
import { anyProblem, box, disc, piece, ring, roll } from './outlines';

const at = (x: number, rotation: number, number = 0) => ({
  piece: number,
  sheet: 0,
  x: um(x * 1000),
  y: um(0),
  rotation,
});
const planOf = (...placed: OutlinePlan['placed']): OutlinePlan => ({
  placed,
  used: { kind: 'roll', length: um(40_000), spans: [] },
});
const rotationsOf = ({ placed }: OutlinePlan) => placed.map(({ rotation }) => rotation);

describe('copies of one transfer', () => {
  it.each([
    ['boxes', box(30, 40), [0, 180, 0, 180, 180]],
    ['discs', disc(20), [0, 90, 90, 270, 90]],
  ])('that are %s lie alike', (_, outline, rotations) => {
    const problem = roll(300, [piece('p', [outline], 5, [0, 90, 180, 270])], { gap: 4 });
    const plan = alike(problem, planOf(...rotations.map((rotation, index) => at(50 * index, rotation))));
    expect(new Set(rotationsOf(plan)).size).toBe(1);
    expect(outlineFaults(problem, plan)).toEqual([]);
  });

  it('lie in each other where they do, since there they have no room', () => {
    const half = piece('half', [ring([0, 0], [40, 0], [0, 40])], 3, [0, 180]);
    const problem = roll(140, [half], { gap: 1 });
    // Two make a square; the third lies by itself.
    const plan = alike(problem, planOf(at(0, 0), at(0, 180), at(60, 0)));
    expect(rotationsOf(plan)).toEqual([0, 180, 0]);
    const apart = alike(problem, planOf(at(0, 0), at(45, 180), at(95, 0)));
    expect(rotationsOf(apart)).toEqual([0, 0, 0]);
  });

  it('lie as they lay where there is no gap: a copy turned onto another crosses none of its edges', () => {
    const half = piece('half', [ring([40, 0], [0, 40], [0, 0])], 3, [0, 180]);
    const problem = roll(100, [half], { gap: 0 });
    const plan = planOf(at(0, 0), at(0, 180), at(60, 0));
    expect(outlineFaults(problem, plan)).toEqual([]);
    expect(rotationsOf(alike(problem, plan))).toEqual([0, 180, 0]);
    expect(outlineFaults(problem, alike(problem, plan))).toEqual([]);
  });

  it('lie in no more turns than before, on the same film, and hold', () => {
    const turnsIn = ({ placed }: OutlinePlan) =>
      new Set(placed.map((copy) => `${copy.piece} ${copy.rotation}`)).size;
    fc.assert(
      fc.property(anyProblem, fc.nat(50), (problem, seed) => {
        const planner = createOutlinePlanner(problem, seed);
        planner.step(20);
        const plan = planner.best();
        const again = alike(problem, plan);
        expect(outlineFaults(problem, again)).toEqual([]);
        expect(again.used).toEqual(plan.used);
        expect(turnsIn(again)).toBeLessThanOrEqual(turnsIn(plan));
      }),
      { numRuns: 30 },
    );
  });
});
