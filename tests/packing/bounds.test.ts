import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createPlanner, leastFilm, type Problem } from '../../src/packing';
import { QUARTER, um } from '../../src/units';
import { fewestSheets, shortestStrip } from './exhaustive';
import { anyRoll, anySheets, bareRoll, piece } from './problems';
import { rollUsed, sheetsUsed } from './used';

const tinyPieces = fc.array(
  fc
    .tuple(
      fc.integer({ min: 1, max: 4 }),
      fc.integer({ min: 1, max: 4 }),
      fc.constantFrom('fixed' as const, 'quarter' as const),
    )
    .map(([width, length, turn]) => piece(width, length, { turn })),
  { minLength: 1, maxLength: 4 },
);
/** The least film as the plain number that plans count: micrometres of a roll, or sheets. */
const least = (problem: Problem): number => {
  const film = leastFilm(problem);
  return film.kind === 'roll' ? film.length : film.sheets;
};
const tinyGap = fc.constantFrom(0, 2);

describe('the least film', () => {
  it('is never above the true optimum of a strip, found by trying everything', () => {
    fc.assert(
      fc.property(tinyPieces, fc.integer({ min: 4, max: 6 }), tinyGap, (pieces, width, gap) => {
        const problem: Problem = { ...bareRoll(width, pieces), gap: um(gap) };
        expect(least(problem)).toBeLessThanOrEqual(shortestStrip(pieces, gap, width));
      }),
      { numRuns: 150 },
    );
  });

  it('is never above the fewest sheets, found by trying everything', () => {
    fc.assert(
      fc.property(tinyPieces, tinyGap, (pieces, gap) => {
        const problem: Problem = {
          ...bareRoll(1, pieces),
          film: { kind: 'sheet', width: um(5), length: um(5), sheetLimit: null, printed: 0 },
          gap: um(gap),
        };
        expect(least(problem)).toBeLessThanOrEqual(fewestSheets(pieces, gap, 5, 5));
      }),
      { numRuns: 100 },
    );
  });

  it('is never above what the engine reaches, with margins, gaps, spans and turns', () => {
    fc.assert(
      fc.property(fc.oneof(anyRoll, anySheets), (anyProblem) => {
        const problem: Problem =
          anyProblem.film.kind === 'roll'
            ? { ...anyProblem, film: { ...anyProblem.film, lengthLimit: null } }
            : anyProblem;
        const planner = createPlanner(problem, 1);
        planner.step(60);
        const plan = planner.best();
        expect(least(problem)).toBeLessThanOrEqual(
          problem.film.kind === 'roll' ? rollUsed(plan).length : sheetsUsed(plan),
        );
      }),
      { numRuns: 100 },
    );
  });

  it('lets no sheet be called finished that could keep a longer clean end, found by trying everything', () => {
    fc.assert(
      fc.property(tinyPieces, tinyGap, fc.integer(), (pieces, gap, seed) => {
        const problem: Problem = {
          ...bareRoll(1, pieces),
          film: { kind: 'sheet', width: um(5), length: um(40), sheetLimit: null, printed: 0 },
          gap: um(gap),
        };
        const planner = createPlanner(problem, seed);
        planner.step(1);
        fc.pre(planner.finished());
        const ends = planner
          .best()
          .placed.map(
            ({ piece: own, y, angle }) =>
              y + (angle === QUARTER ? (pieces[own]?.width ?? 0) : (pieces[own]?.length ?? 0)),
          );
        expect(Math.max(...ends)).toBe(shortestStrip(pieces, gap, 5));
      }),
      { numRuns: 100 },
    );
  });

  it('counts the film within half a gap of each copy that keeps it by its outline', () => {
    const side = 40_000;
    const square = Float64Array.of(0, 0, side, 0, side, side, 0, side);
    const half = Float64Array.of(0, 0, side, 0, 0, side);
    const [width, gap, count] = [200_000, 8_001, 30];
    const lengthOf = (outline: readonly Float64Array[] | null): number => {
      const own = piece(side, side, { count });
      const problem = {
        ...bareRoll(width, [{ ...own, outline }]),
        gap: um(gap),
        cutting: 'outlines' as const,
      };
      const film = leastFilm(problem);
      return film.kind === 'roll' ? film.length : Number.NaN;
    };
    const apart = gap - 1;
    const along = (area: number) => Math.floor((count * area) / (width + apart) - apart);
    // The area within r of a convex figure is A + P r + pi r^2 (Steiner); of one of area A it is least of a disc.
    expect(lengthOf(null)).toBe(along(side ** 2 + 2 * side * apart + (Math.PI * apart ** 2) / 4));
    const least = (area: number) => (Math.sqrt(area) + (Math.sqrt(Math.PI) * apart) / 2) ** 2;
    expect(lengthOf([square])).toBe(along(least(side ** 2)));
    expect(lengthOf([half])).toBe(along(least(side ** 2 / 2)));
    expect(lengthOf([half])).toBeGreaterThan(along(side ** 2 / 2));
  });

  it('sees that copies too wide to lie beside each other must follow one another', () => {
    // Each takes 60% of the width: the area bound alone says 120, they need 200.
    expect(leastFilm(bareRoll(100, [piece(60, 100, { count: 2 })]))).toEqual({ kind: 'roll', length: 200 });
  });
});
