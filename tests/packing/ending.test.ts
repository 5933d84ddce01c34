import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Problem, validatePlan } from '../../src/packing';
import { FILM } from '../../src/packing/aim';
import { assemble, placedOf } from '../../src/packing/assemble';
import { SkylineDecoder } from '../../src/packing/decode-skyline';
import { Ending } from '../../src/packing/ending';
import { Lane } from '../../src/packing/lane';
import { keep, type Layout } from '../../src/packing/layout';
import { placedOrder } from '../../src/packing/sequence';
import { startSequences } from '../../src/packing/starts';
import { type Strip, stripOf } from '../../src/packing/strip';
import { waysOf } from '../../src/packing/ways';
import { seededRandom, um } from '../../src/units';
import { anyRoll, bareRoll, piece } from './problems';

/** Rolls that boxes are put on freely, with nothing on them. */
const bare = anyRoll.map((problem): Problem => {
  const { film } = problem;
  return {
    ...problem,
    film: film.kind === 'roll' ? { ...film, noPrint: [] } : film,
    cutting: 'free',
    together: { kind: 'any' },
  };
});

/** Lanes that have each had a cycle, and come to a sorted order. */
function lanesOf(strip: Strip): Lane[] {
  return waysOf(strip).map((way) => {
    const lane = new Lane(way, strip, strip.bins);
    for (const sequence of startSequences(strip, strip.count))
      lane.keepIfBetter(sequence, lane.build(sequence, FILM).film);
    lane.begin(FILM);
    return lane;
  });
}

/** The layouts that its ends being tried for some time leads to. */
function improved(strip: Strip, lanes: readonly Lane[], seed: number, steps: number): Layout[] {
  const ending = Ending.of(lanes, {
    strip,
    count: strip.count,
    limits: strip.bins,
    random: seededRandom(seed),
    unit: 1,
    least: () => 0,
  });
  return Array.from({ length: steps }, () => ending?.step(lanes) ?? []).flat();
}

describe('a layout', () => {
  it('is the same when it is gone on with from any of its copies', () => {
    fc.assert(
      fc.property(bare, fc.nat(29), fc.nat(4), fc.nat(), (problem, start, rule, at) => {
        const strip = stripOf(problem);
        const sequences = startSequences(strip, strip.count);
        const sequence = sequences[start % sequences.length];
        const way = waysOf(strip)[rule];
        const decoder = new SkylineDecoder(strip);
        if (!sequence || !way) throw new Error('No way to build it.');
        const build = decoder.decode(sequence, way.rule, strip.bins);
        const whole = keep(build, 0);
        const copies = whole.piece.length;
        fc.pre(whole.complete && copies > 1);
        const held = 1 + (at % (copies - 1));
        const part = decoder.partOf(placedOrder(whole, 0, copies), held, way.rule, strip.bins);
        expect(part.piece).toHaveLength(held);
        const rest = decoder.decode(placedOrder(whole, held, copies), way.rule, strip.bins, part);
        expect(keep(rest, 0)).toEqual(whole);
      }),
      { numRuns: 300 },
    );
  });
});

describe('the ends of layouts, tried again', () => {
  // Sizes of our own, a hundred copies of a dozen pieces: sorted orders leave the small ones to the end.
  const pieces = Array.from({ length: 12 }, (_, index) =>
    piece(40_000 + 17_100 * index, 55_000 + 23_300 * ((index * 5) % 12), { count: 9, turn: 'quarter' }),
  );
  const problem = bareRoll(560_000, pieces);

  it.each([1, 2, 3])('take less film, every time a layout is told, and hold (seed %i)', (seed) => {
    const strip = stripOf(problem);
    const lanes = lanesOf(strip);
    const least = Math.min(...lanes.map(({ bestCost }) => bestCost));
    const layouts = improved(strip, lanes, seed, 12_000);
    const best = Math.min(...layouts.map(({ cost }) => cost));
    expect(best).toBeLessThan(least);
    for (const layout of layouts) {
      const plan = assemble(problem, strip, placedOf(layout, strip, problem));
      expect(validatePlan(problem, plan)).toEqual([]);
      expect(layout.piece).toHaveLength(108);
      expect(layout.tops[0]).toBe(layout.cost);
    }
  });

  it('hold on rolls that are cut, too', () => {
    const cut: Problem = { ...problem, film: { ...problem.film, spanMax: um(900_000) } as Problem['film'] };
    const strip = stripOf(cut);
    const layouts = improved(strip, lanesOf(strip), 1, 6000);
    expect(layouts.length).toBeGreaterThan(0);
    for (const layout of layouts) {
      const plan = assemble(cut, strip, placedOf(layout, strip, cut));
      expect(validatePlan(cut, plan)).toEqual([]);
      expect(layout.piece).toHaveLength(108);
    }
  });

  it('are let be on sheets, among few copies and where copies are left out', () => {
    const on = (other: Problem) => {
      const strip = stripOf(other);
      return improved(strip, lanesOf(strip), 1, 50);
    };
    const few = bareRoll(560_000, pieces.slice(0, 3));
    const sheets: Problem = {
      ...problem,
      film: { kind: 'sheet', width: um(560_000), length: um(900_000), sheetLimit: null, printed: 0 },
    };
    const short: Problem = {
      ...problem,
      film: { ...problem.film, lengthLimit: um(900_000) } as Problem['film'],
    };
    expect([few, sheets, short].map(on)).toEqual([[], [], []]);
  });
});
