import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxesOf,
  createOutlinePlanner,
  fromBoxes,
  type OutlineProblem,
  outlineFaults,
} from '../../src/nesting';
import { createPlanner } from '../../src/packing';
import { toMm, um } from '../../src/units';
import { anyProblem, box, corner, disc, piece, ring, roll } from './outlines';

function planned(problem: OutlineProblem, steps: number, seed = 1) {
  const planner = createOutlinePlanner(problem, seed);
  planner.step(steps);
  return planner.best();
}
const lengthOf = (problem: OutlineProblem, steps: number): number => {
  const { used } = planned(problem, steps);
  return used.kind === 'roll' ? toMm(used.length) : used.sheets;
};

describe('layouts by outlines', () => {
  it('hold, whatever the outlines, the film and the gap, and get no longer', () => {
    fc.assert(
      fc.property(anyProblem, fc.nat(100), (problem, seed) => {
        const planner = createOutlinePlanner(problem, seed);
        let last = Number.POSITIVE_INFINITY;
        for (const steps of [0, 15, 60]) {
          planner.step(steps);
          const plan = planner.best();
          expect(outlineFaults(problem, plan)).toEqual([]);
          const film = plan.used.kind === 'roll' ? plan.used.length : plan.used.sheets;
          expect(film).toBeLessThanOrEqual(last);
          last = film;
        }
      }),
      { numRuns: 40 },
    );
  });

  it('keep clear of film that may not be printed, also of less of it than the gap', () => {
    const stretch = fc
      .tuple(fc.integer({ min: 0, max: 300_000 }), fc.integer({ min: 100, max: 30_000 }))
      .map(([from, long]) => ({ from: um(from), to: um(from + long) }));
    fc.assert(
      fc.property(anyProblem, fc.array(stretch, { minLength: 1, maxLength: 3 }), (problem, noPrint) => {
        const { film } = problem;
        fc.pre(film.kind === 'roll' && film.spanMax === null);
        const own = { ...problem, film: { ...film, noPrint } };
        for (const steps of [0, 30]) expect(outlineFaults(own, planned(own, steps))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('lay every copy, whatever a plan that they begin from lacks or has too much of', () => {
    const problem = roll(
      100,
      [piece('corner', [corner(40, 12)], 5, [0, 180]), piece('box', [box(20, 30)], 3)],
      { gap: 4 },
    );
    const start = planned(problem, 5);
    const [first, ...others] = start.placed;
    if (!first) return expect.fail();
    for (const placed of [[], others, [first, first, ...start.placed]]) {
      const planner = createOutlinePlanner(problem, 1, { ...start, placed });
      planner.step(20);
      expect(outlineFaults(problem, planner.best())).toEqual([]);
    }
  });

  it('are the same for the same seed and steps', () => {
    const problem = roll(100, [piece('corner', [corner(40, 12)], 7, [0, 90, 180, 270])], { gap: 4 });
    expect(planned(problem, 300, 7)).toEqual(planned(problem, 300, 7));
  });

  it('a plan of the boxes is a plan of the outlines', () => {
    fc.assert(
      fc.property(anyProblem, (problem) => {
        const plan = createPlanner(boxesOf(problem), 1).best();
        expect(outlineFaults(problem, fromBoxes(problem, plan))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  // Shortest lengths by plane geometry; copies lie in rows of a millimetre while they are looked for, and not once they are pushed together.
  it.each([
    ['squares that fill the strip', roll(60, [piece('square', [box(20, 20)], 9)]), 60],
    // Two rectangular triangles make a square.
    ['triangles of a square', roll(40, [piece('half', [ring([0, 0], [40, 0], [0, 40])], 2, [0, 180])]), 40],
    // The second disc's middle lies in the strip's other corner: 20 + sqrt(40² − 20²) + 20 for radius 20 in a strip of 60.
    ['two discs in a strip', roll(60, [piece('disc', [disc(20)], 2)]), 40 + Math.sqrt(40 ** 2 - 20 ** 2)],
    // Two corner pieces, one half round and 10 beside the other, take no more film than one.
    ['corner pieces in each other', roll(40, [piece('corner', [corner(30, 10)], 2, [0, 180])]), 30],
  ])('%s', (_, problem, shortest) => {
    const length = lengthOf(problem, 3000);
    expect(length).toBeGreaterThanOrEqual(shortest - 0.01);
    expect(length).toBeLessThanOrEqual(shortest + 0.5);
  });

  it('a small copy lies in the hole of a large one', () => {
    const frame = [box(80, 80), ring([10, 10], [10, 70], [70, 70], [70, 10])];
    const problem = roll(80, [piece('frame', frame, 1), piece('badge', [disc(15)], 1)], { gap: 6 });
    expect(lengthOf(problem, 1)).toBeCloseTo(80, 0);
  });

  it('sheets are as few as the copies need', () => {
    const triangles = piece('half', [ring([0, 0], [90, 0], [0, 90])], 4, [0, 180]);
    const problem: OutlineProblem = {
      ...roll(100, [triangles]),
      film: { kind: 'sheet', width: um(100_000), length: um(100_000), sheetLimit: null },
    };
    expect(lengthOf(problem, 500)).toBe(2);
  });
});
