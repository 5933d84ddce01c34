import type fc from 'fast-check';
import type { LaidRun } from '../../src/layout';
import { createOutlinePlanner } from '../../src/nesting';
import { areaOf, turned } from '../../src/outlines';
import { toMm } from '../../src/units';
import { anyProblem } from '../nesting/outlines';
import { runOf } from './runs';

/** Runs of stars and frames, laid out by the engine of outlines on a roll, cut into spans or not; three orders take turns. */
export const anyOutlinedRun: fc.Arbitrary<LaidRun> = anyProblem
  .filter(({ film }) => film.kind === 'roll')
  .map((problem) => {
    const planner = createOutlinePlanner(problem, 1);
    planner.step(2);
    const numbers = [0, 0, 0];
    const boxes = planner.best().placed.map(({ piece, x, y, rotation }) => {
      const order = piece % 3;
      numbers[order] = (numbers[order] ?? 0) + 1;
      const lying = turned(problem.pieces[piece]?.rings ?? [], rotation);
      return {
        code: ['A', 'B', 'C'][order] ?? '',
        number: numbers[order] ?? 0,
        x: toMm(x),
        y: toMm(y),
        width: lying.width / 1000,
        length: lying.length / 1000,
        outline: lying.rings,
      };
    });
    const { film, gap } = problem;
    if (film.kind !== 'roll') throw new Error('no roll');
    return runOf(boxes, { cutting: 'outlines', width: film.width, gap, spanMax: film.spanMax });
  });

/** The area within closed lines of points, whatever way they run; holes counted like the rest. */
export const areaWithin = (points: readonly (readonly [number, number])[]): number =>
  Math.abs(areaOf([Float64Array.from(points.flat())]));
