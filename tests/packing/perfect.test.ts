import { describe, expect, it } from 'vitest';
import { createPlanner, leastFilm, validatePlan } from '../../src/packing';
import { fromMm, um } from '../../src/units';
import { squaredPlan, squaredRectangles } from './bouwkamp';
import { rollUsed } from './used';

describe.each(squaredRectangles)('the $name', (squared) => {
  const { problem, plan } = squaredPlan(squared);

  it('is accepted by the validator', () => {
    expect(validatePlan(problem, plan)).toEqual([]);
  });

  it('leaves no film over', () => {
    const area = squared.code.reduce((sum, side) => sum + side * side, 0);
    expect(area).toBe(squared.width * squared.height);
  });

  it('is exceeded by no bound, and the area bound reaches it', () => {
    expect(leastFilm(problem)).toEqual({ kind: 'roll', length: fromMm(squared.height) });
  });

  it('is refused when one square moves by a micrometre', () => {
    plan.placed.forEach((_, moved) => {
      const placed = plan.placed.map((copy, index) =>
        index === moved ? { ...copy, x: um(copy.x + 1) } : copy,
      );
      expect(validatePlan(problem, { ...plan, placed })).not.toEqual([]);
    });
  });

  it('is not beaten by the engine', () => {
    const planner = createPlanner(problem, 1);
    planner.step(2000);
    expect(validatePlan(problem, planner.best())).toEqual([]);
    expect(rollUsed(planner.best()).length).toBeGreaterThanOrEqual(rollUsed(plan).length);
  });
});
