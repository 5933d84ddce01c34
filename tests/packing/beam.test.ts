import { describe, expect, it } from 'vitest';
import { createPlanner, type Piece, type Problem, validatePlan } from '../../src/packing';
import { Beam } from '../../src/packing/beam';
import { stripOf } from '../../src/packing/strip';
import { fromMm, seededRandom } from '../../src/units';
import { bareRoll, piece } from './problems';
import { rollUsed } from './used';

const SIDE = 200;

/** Cuts a square into four pieces around a fifth, and the largest of all again, as no straight cuts part them; millimetres. */
function pinwheels(pieces: number, random: () => number): Piece[] {
  const rects = [{ width: SIDE, length: SIDE }];
  const at = (side: number, from: number) =>
    Math.max(1, Math.min(side - 1, Math.round(side * (from + 0.25 * random()))));
  while (rects.length < pieces) {
    rects.sort((a, b) => b.width * b.length - a.width * a.length);
    const { width, length } = rects.shift() ?? { width: SIDE, length: SIDE };
    const [x, u, y, v] = [at(width, 0.2), at(width, 0.55), at(length, 0.2), at(length, 0.55)];
    rects.push(
      { width: u, length: y },
      { width: width - u, length: v },
      { width: width - x, length: length - v },
      { width: x, length: length - y },
      { width: u - x, length: v - y },
    );
  }
  return rects.map(({ width, length }) => piece(fromMm(width), fromMm(length)));
}

const cutOf = (seed: number): Problem => bareRoll(fromMm(SIDE), pinwheels(29, seededRandom(seed)));

// The shortest length is that of the square, by its area: E. Hopper and B. C. H. Turton, European Journal of Operational Research
// 128(1), 34-57, 2001, make such problems, with sizes of their own.
describe('strips cut up without waste', () => {
  // Draw 1 takes 20,000 to 390,000 steps by seed (1 to 8): with seed 2 it is there in time.
  it.each([
    [1, 2],
    [2, 1],
    [3, 1],
  ])('of 29 pieces are put together again (draw %i, seed %i)', (draw, seed) => {
    const problem = cutOf(draw);
    const planner = createPlanner(problem, seed);
    for (let slices = 0; slices < 60 && !planner.finished(); slices += 1) planner.step(500);
    expect(validatePlan(problem, planner.best())).toEqual([]);
    expect(rollUsed(planner.best()).length).toBe(fromMm(SIDE));
  });

  it('are put together the same way again with the same seed', () => {
    const [one, other] = [createPlanner(cutOf(1), 5), createPlanner(cutOf(1), 5)];
    one.step(3000);
    for (let slices = 0; slices < 30; slices += 1) other.step(100);
    expect(other.best()).toEqual(one.best());
  });
});

describe('layouts side by side', () => {
  it('keep to the film they are given, or find none', () => {
    const strip = stripOf(cutOf(1));
    const random = seededRandom(1);
    const beam = new Beam(strip, strip.count, random);
    const lengths = [SIDE, SIDE + 2, SIDE + 30, 2 * SIDE].map((length) => {
      const film = fromMm(length);
      beam.begin(film, 100);
      while (!beam.isComplete && beam.step());
      return beam.isComplete ? beam.layout().cost / film : null;
    });
    for (const share of lengths) expect(share ?? 1).toBeLessThanOrEqual(1);
    expect(lengths.at(-1)).not.toBeNull();
  });

  it('find none on less film than the area needs', () => {
    const strip = stripOf(cutOf(1));
    const beam = new Beam(strip, strip.count, seededRandom(1));
    beam.begin(fromMm(SIDE) - 1, 50);
    while (beam.step());
    expect(beam.isComplete).toBe(false);
    expect(beam.hasDropped).toBe(false);
  });

  it('tell whether they have looked at all there is', () => {
    const strip = stripOf(bareRoll(100, [piece(60, 50), piece(60, 40), piece(30, 60), piece(40, 21)]));
    const beam = new Beam(strip, strip.count, seededRandom(1));
    const hasDropped = [1, 100].map((width) => {
      beam.begin(91, width);
      while (!beam.isComplete && beam.step());
      return beam.hasDropped;
    });
    expect(hasDropped).toEqual([true, false]);
  });
});
