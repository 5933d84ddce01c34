import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createPlanner, type Piece, type Problem, validatePlan } from '../../src/packing';
import { seededRandom, um } from '../../src/units';
import { anySheets, bareRoll, piece } from './problems';
import { sheetsUsed } from './used';

const SIDE = 1000;

/** Cuts a sheet into three pieces by straight cuts, and trims up to 3% of the sheet's side off each. */
function cutUp(random: () => number): Piece[] {
  const rects = [{ width: SIDE, length: SIDE }];
  while (rects.length < 3) {
    rects.sort((a, b) => b.width * b.length - a.width * a.length);
    const { width, length } = rects.shift() ?? { width: SIDE, length: SIDE };
    const share = 0.3 + 0.4 * random();
    if (width >= length) {
      const first = Math.round(width * share);
      rects.push({ width: first, length }, { width: width - first, length });
    } else {
      const first = Math.round(length * share);
      rects.push({ width, length: first }, { width, length: length - first });
    }
  }
  const trimmed = (side: number) => side - Math.floor(random() * 31);
  return rects.map(({ width, length }) => piece(trimmed(width), trimmed(length)));
}

const onSheets = (pieces: readonly Piece[]): Problem => ({
  ...bareRoll(SIDE, pieces),
  film: { kind: 'sheet', width: um(SIDE), length: um(SIDE), sheetLimit: null, printed: 0 },
});

describe('emptying one sheet into the others', () => {
  it('leaves plans that hold, long after the sorted orders', () => {
    fc.assert(
      fc.property(anySheets, fc.integer(), (problem, seed) => {
        const planner = createPlanner(problem, seed);
        planner.step(150);
        const cost = planner.cost();
        planner.step(400);
        expect(validatePlan(problem, planner.best())).toEqual([]);
        expect(planner.cost()).toBeLessThanOrEqual(cost);
      }),
      { numRuns: 60 },
    );
  });

  // What 24 sheets were cut into fits 24 again, and by area no fewer; sorted orders alone take one more.
  it.each([1, 2, 3, 4])('finds the fewest sheets that pieces were cut from (seed %i)', (seed) => {
    const random = seededRandom(seed);
    const pieces = Array.from({ length: 24 }, () => cutUp(random)).flat();
    const planner = createPlanner(onSheets(pieces), seed);
    planner.step(50);
    const sorted = sheetsUsed(planner.best());
    planner.step(15_000);
    expect(sheetsUsed(planner.best())).toBe(24);
    expect(sorted).toBeGreaterThan(24);
  });
});
