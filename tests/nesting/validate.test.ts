import { describe, expect, it } from 'vitest';
import { type OutlinePlan, type OutlineProblem, outlineFaults } from '../../src/nesting';
import { um } from '../../src/units';
import { box, corner, piece, reversed, ring, roll } from './outlines';

const at = (which: number, x: number, y: number, rotation = 0, sheet = 0) => ({
  piece: which,
  sheet,
  x: um(Math.round(x * 1000)),
  y: um(Math.round(y * 1000)),
  rotation,
});
const planOf = (...placed: OutlinePlan['placed']): OutlinePlan => ({
  placed,
  used: { kind: 'roll', length: um(500_000), spans: [] },
});

const frame = [box(60, 60), reversed(ring([10, 10], [50, 10], [50, 50], [10, 50]))];
const problem: OutlineProblem = roll(
  100,
  [
    piece('frame', frame, 1),
    piece('square', [box(15, 15)], 1, [0, 45]),
    piece('corner', [corner(30, 10)], 2, [0, 180]),
  ],
  { gap: 6, side: 5, end: 10 },
);
/** Two corner pieces, one half round, whose arms end a gap apart corner to corner: 4.243 across and along. */
const NEST = 10 + 6 / Math.SQRT2;
const good = [at(0, 5, 10), at(1, 21, 26), at(2, 5, 76), at(2, 5 + NEST, 76 + NEST, 180)] as const;

describe('what is wrong with a plan of outlines', () => {
  it('is nothing where all keep their distance, one in the hole of another too', () => {
    expect(outlineFaults(problem, planOf(...good))).toEqual([]);
  });

  it.each<[string, OutlinePlan['placed'], object]>([
    ['a copy that is missing', good.slice(0, 3), { code: 'count', piece: 2, placed: 1 }],
    [
      'a turn that is not allowed',
      [good[0], good[1], good[2], at(2, 60, 76, 90)],
      { code: 'rotation', copy: 3 },
    ],
    ['a copy in the margin', [at(0, 4.9, 10), ...good.slice(1)], { code: 'off-film', copy: 0 }],
    ['a copy before the lead', [at(0, 5, 9.9), ...good.slice(1)], { code: 'off-film', copy: 0 }],
    [
      'a copy beyond the far margin',
      [at(0, 35.1, 10), at(1, 52, 26), ...good.slice(2)],
      { code: 'off-film', copy: 0 },
    ],
    ['copies that cross', [good[0], at(1, 48, 26), ...good.slice(2)], { code: 'too-near', copies: [0, 1] }],
    [
      'a copy too near to the edge of a hole',
      [good[0], at(1, 20.9, 26), ...good.slice(2)],
      { code: 'too-near', copies: [0, 1] },
    ],
    [
      'a copy within the ink of another',
      [good[0], at(1, 21, 12), ...good.slice(2)],
      { code: 'too-near', copies: [0, 1] },
    ],
    [
      'corners too near to each other',
      [good[0], good[1], good[2], at(2, 5 + NEST - 0.1, 76 + NEST - 0.1, 180)],
      { code: 'too-near', copies: [2, 3] },
    ],
  ])('%s', (_, placed, fault) => {
    expect(outlineFaults(problem, planOf(...placed))).toContainEqual(fault);
  });

  it('knows knife lines and spans', () => {
    const cut = { ...problem, film: { ...problem.film, spanMax: um(75_000) } } as OutlineProblem;
    const spans = (...knives: number[]) =>
      knives.slice(1).map((to, index) => ({ from: um((knives[index] ?? 0) * 1000), to: um(to * 1000) }));
    const faults = (...knives: number[]) =>
      outlineFaults(cut, { placed: good, used: { kind: 'roll', length: um(0), spans: spans(...knives) } });
    expect(faults(0, 73, 130.3)).toEqual([]);
    expect(faults(0, 72.9, 130.3)).toEqual([{ code: 'knife-line', copy: 0 }]);
    expect(faults(0, 130.3)).toEqual([{ code: 'span-too-long', span: 0 }]);
  });

  it('knows film that may not be printed, up to its edge', () => {
    const bare = { ...problem, film: { ...problem.film, noPrint: [{ from: um(70_000), to: um(76_000) }] } };
    expect(outlineFaults(bare as OutlineProblem, planOf(...good))).toEqual([]);
    const wider = { ...problem, film: { ...problem.film, noPrint: [{ from: um(69_900), to: um(76_000) }] } };
    expect(outlineFaults(wider as OutlineProblem, planOf(...good))).toEqual([{ code: 'no-print', copy: 0 }]);
  });

  it('without a gap outlines may touch, and not overlap', () => {
    const touching = roll(60, [piece('square', [box(20, 20)], 2)]);
    expect(outlineFaults(touching, planOf(at(0, 0, 0), at(0, 20, 0)))).toEqual([]);
    expect(outlineFaults(touching, planOf(at(0, 0, 0), at(0, 19.9, 0)))).toEqual([
      { code: 'too-near', copies: [0, 1] },
    ]);
  });

  it('copies on two sheets do not meet', () => {
    const sheets: OutlineProblem = {
      ...roll(60, [piece('square', [box(20, 20)], 2)]),
      film: { kind: 'sheet', width: um(60_000), length: um(30_000), sheetLimit: null },
    };
    const plan = (sheet: number): OutlinePlan => ({
      placed: [at(0, 0, 0), at(0, 0, 0, 0, sheet)],
      used: { kind: 'sheets', sheets: 2 },
    });
    expect(outlineFaults(sheets, plan(1))).toEqual([]);
    expect(outlineFaults(sheets, plan(0))).toEqual([{ code: 'too-near', copies: [0, 1] }]);
  });
});
