import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createPlanner, type Plan, type Problem, validatePlan } from '../../src/packing';
import { fromMm, QUARTER, UPRIGHT, um } from '../../src/units';
import { anyRoll, anySheets, bareRoll, piece, pinSome } from './problems';
import { rollUsed, sheetsUsed } from './used';

const planned = (problem: Problem, iterations = 80, seed = 1): Plan => {
  const planner = createPlanner(problem, seed);
  planner.step(iterations);
  return planner.best();
};

const unplacedCount = (plan: Plan) => plan.unplaced.reduce((sum, { count }) => sum + count, 0);

describe('the planner', () => {
  it('makes plans that hold, on any roll', () => {
    fc.assert(
      fc.property(anyRoll, fc.integer(), (problem, seed) => {
        expect(validatePlan(problem, planned(problem, 70, seed))).toEqual([]);
      }),
      { numRuns: 120 },
    );
  });

  it('makes plans that hold, on any sheets, and places every copy that fits one', () => {
    fc.assert(
      fc.property(anySheets, (problem) => {
        const plan = planned(problem);
        expect(validatePlan(problem, plan)).toEqual([]);
        expect(plan.unplaced.every(({ reason }) => reason !== 'no-room')).toBe(true);
      }),
      { numRuns: 80 },
    );
  });

  it('leaves no copy out of a roll without end, with no-print stretches and orders apart', () => {
    const endless = anyRoll.map((roll) =>
      roll.film.kind === 'roll' ? { ...roll, film: { ...roll.film, lengthLimit: null } } : roll,
    );
    fc.assert(
      fc.property(endless, (problem) => {
        expect(planned(problem, 40).unplaced).toEqual([]);
      }),
      { numRuns: 80 },
    );
  });

  it('lays the rest around pinned copies and never moves them', () => {
    fc.assert(
      fc.property(fc.oneof(anyRoll, anySheets), fc.integer({ min: 2, max: 4 }), (problem, every) => {
        const first = planned(problem, 20);
        const pinnedProblem = pinSome(problem, first, (index) => index % every === 0);
        const plan = planned(pinnedProblem, 12);
        expect(validatePlan(pinnedProblem, plan)).toEqual([]);
        expect(plan.placed.slice(0, pinnedProblem.pinned.length)).toEqual(pinnedProblem.pinned);
      }),
      { numRuns: 80 },
    );
  });

  it.each([
    { lies: 'printed sheets', printed: 2, pinned: [] },
    {
      lies: 'a copy on a sheet further on',
      printed: 0,
      pinned: [{ piece: 1, sheet: 4, x: um(0), y: um(0), angle: UPRIGHT }],
    },
  ])('finds the one copy that it lays a place where there are $lies', ({ printed, pinned }) => {
    const problem: Problem = {
      ...bareRoll(100, [piece(90, 60), piece(100, 100, { count: 0 })]),
      film: { kind: 'sheet', width: um(100), length: um(100), sheetLimit: null, printed },
      pinned,
    };
    const plan = planned(problem);
    expect(validatePlan(problem, plan)).toEqual([]);
    expect(plan.placed.at(-1)?.sheet).toBe(printed);
  });

  it('lays nothing behind printed copies that no knife line can follow', () => {
    // Between the two there is no line; behind the second, half a gap on, a span would be 80.1 mm long.
    const problem: Problem = {
      film: {
        kind: 'roll',
        width: fromMm(120),
        lengthLimit: null,
        spanMax: fromMm(80),
        cutBlank: um(0),
        noPrint: [{ from: um(0), to: fromMm(68.1) }],
      },
      margins: { left: um(0), right: um(0), lead: um(0), tail: um(0) },
      gap: fromMm(4),
      cutting: 'free',
      together: { kind: 'any' },
      pieces: [
        { id: 'wide', width: fromMm(64.1), length: fromMm(23.1), count: 0, turn: 'fixed', rank: 0 },
        { id: 'long', width: fromMm(23.1), length: fromMm(64.1), count: 0, turn: 'fixed', rank: 0 },
        { id: 'tag', width: fromMm(10), length: fromMm(10), count: 7, turn: 'fixed', rank: 0 },
      ],
      pinned: [
        { piece: 0, sheet: 0, x: um(0), y: um(0), angle: UPRIGHT },
        { piece: 1, sheet: 0, x: fromMm(68.1), y: fromMm(14), angle: UPRIGHT },
      ],
    };
    const plan = planned(problem, 4);
    expect(validatePlan(problem, plan)).toEqual([]);
    // Four lie on one side of the second and two on the other; a seventh has no film.
    expect(plan.placed.slice(2).map(({ y }) => y)).toEqual(Array(6).fill(fromMm(68.1)));
    expect(unplacedCount(plan)).toBe(1);
  });

  it('fills the hole beside and before a pinned copy', () => {
    const free = bareRoll(100, [piece(50, 50, { count: 3 })]);
    const problem: Problem = {
      ...free,
      pinned: [{ piece: 0, sheet: 0, x: um(50), y: um(50), angle: UPRIGHT }],
    };
    expect(rollUsed(planned(problem)).length).toBe(100);
  });

  it('is the same for the same problem, seed and iterations', () => {
    fc.assert(
      fc.property(anyRoll, fc.integer(), (problem, seed) => {
        const inSlices = createPlanner(problem, seed);
        for (let slice = 0; slice < 10; slice += 1) inSlices.step(12);
        expect(inSlices.best()).toEqual(planned(problem, 120, seed));
      }),
      { numRuns: 25 },
    );
  });

  it('goes on from what another engine has found, and lets an idea of another problem be', () => {
    fc.assert(
      fc.property(anyRoll, fc.integer(), (problem, seed) => {
        const long = createPlanner(problem, seed);
        long.step(200);
        const idea = long.idea();
        const fresh = createPlanner(problem, seed + 1);
        fresh.step(1);
        const before = fresh.cost();
        if (idea) expect(fresh.take(idea)).toBe(fresh.cost() < before);
        if (idea && long.best().unplaced.length === 0) expect(fresh.cost()).toBeLessThanOrEqual(long.cost());
        expect(validatePlan(problem, fresh.best())).toEqual([]);
        const other = createPlanner(bareRoll(100, [piece(50, 30)]), 1);
        other.step(1);
        if (idea) expect(other.take(idea)).toBe(false);
        expect(rollUsed(other.best()).length).toBe(30);
      }),
      { numRuns: 60 },
    );
  });

  it('never gets worse', () => {
    const pieces = [
      piece(63, 47, { count: 6, turn: 'quarter' }),
      piece(31, 82, { count: 5, turn: 'quarter' }),
    ];
    const planner = createPlanner(bareRoll(200, pieces), 7);
    let least = Number.POSITIVE_INFINITY;
    for (let slice = 0; slice < 40; slice += 1) {
      planner.step(50);
      const { length } = rollUsed(planner.best());
      expect(length).toBeLessThanOrEqual(least);
      least = length;
    }
  });

  it('stops as proven when the bound is reached', () => {
    const planner = createPlanner(bareRoll(100, [piece(50, 30, { count: 4 })]), 1);
    planner.step(1);
    expect(planner.proven()).toBe(true);
    expect(rollUsed(planner.best()).length).toBe(60);
  });

  it('turns a piece where that is allowed and needed', () => {
    const lying = bareRoll(100, [piece(150, 80, { turn: 'quarter' })]);
    expect(planned(lying).placed[0]?.angle).toBe(QUARTER);
    expect(planned(bareRoll(100, [piece(150, 80)])).unplaced).toEqual([
      { piece: 0, count: 1, reason: 'too-wide' },
    ]);
  });

  it('names what is too large with the reason and places the rest', () => {
    const problem: Problem = {
      ...bareRoll(fromMm(330), [
        piece(fromMm(331), fromMm(20)),
        piece(fromMm(20), fromMm(401)),
        piece(fromMm(100), fromMm(100), { count: 3 }),
      ]),
      film: {
        kind: 'roll',
        width: fromMm(330),
        lengthLimit: null,
        spanMax: fromMm(400),
        cutBlank: um(0),
        noPrint: [],
      },
    };
    const plan = planned(problem);
    expect(plan.unplaced).toEqual([
      { piece: 0, count: 1, reason: 'too-wide' },
      { piece: 1, count: 1, reason: 'too-long' },
    ]);
    expect(plan.placed).toHaveLength(3);
  });

  it('takes the soonest first where the roll is short, and fills up with what still fits', () => {
    const problem: Problem = {
      ...bareRoll(fromMm(100), [
        piece(fromMm(90), fromMm(90), { count: 2, rank: 1, id: 'later' }),
        piece(fromMm(100), fromMm(100), { count: 2, rank: 0, id: 'soonest' }),
        piece(fromMm(100), fromMm(30), { count: 1, rank: 2, id: 'last, but small' }),
      ]),
      film: {
        kind: 'roll',
        width: fromMm(100),
        lengthLimit: fromMm(240),
        spanMax: null,
        cutBlank: um(0),
        noPrint: [],
      },
    };
    const plan = planned(problem);
    expect(validatePlan(problem, plan)).toEqual([]);
    const placed = plan.placed.map((copy) => copy.piece);
    expect(placed.filter((own) => own === 1)).toHaveLength(2);
    expect(placed.filter((own) => own === 2)).toHaveLength(1);
    expect(plan.unplaced).toEqual([{ piece: 0, count: 2, reason: 'no-room' }]);
    expect(rollUsed(plan).length).toBeLessThanOrEqual(fromMm(240));
  });

  it('keeps clear of no-print stretches and uses the film on both sides', () => {
    const bare = bareRoll(fromMm(100), [piece(fromMm(100), fromMm(50), { count: 3 })]);
    const noPrint = [{ from: fromMm(60), to: fromMm(80) }];
    const problem: Problem = {
      ...bare,
      film: { kind: 'roll', width: fromMm(100), lengthLimit: null, spanMax: null, cutBlank: um(0), noPrint },
    };
    const plan = planned(problem);
    expect(validatePlan(problem, plan)).toEqual([]);
    expect(plan.placed.map(({ y }) => y).toSorted((a, b) => a - b)).toEqual([0, fromMm(80), fromMm(130)]);
  });

  it('uses no more sheets than there are, the soonest first', () => {
    const problem: Problem = {
      ...bareRoll(1, [
        piece(90, 90, { count: 2, rank: 1 }),
        piece(90, 90, { count: 2, rank: 0, id: 'soon' }),
      ]),
      film: { kind: 'sheet', width: um(100), length: um(100), sheetLimit: 3, printed: 0 },
    };
    const plan = planned(problem);
    expect(validatePlan(problem, plan)).toEqual([]);
    expect(sheetsUsed(plan)).toBe(3);
    expect(plan.unplaced).toEqual([{ piece: 0, count: 1, reason: 'no-room' }]);
  });

  it('keeps as much of the last sheet clean over its full width as can be, and then knows that it has finished', () => {
    const problem: Problem = {
      ...bareRoll(1, [piece(100, 100), piece(20, 50, { count: 6, turn: 'quarter' })]),
      film: { kind: 'sheet', width: um(100), length: um(100), sheetLimit: null, printed: 0 },
    };
    const planner = createPlanner(problem, 1);
    // Five beside each other and one behind them would do by area alone, and leave nothing.
    planner.step(400);
    const plan = planner.best();
    expect(validatePlan(problem, plan)).toEqual([]);
    const last = plan.placed.filter(({ sheet }) => sheet === sheetsUsed(plan) - 1);
    expect(last).toHaveLength(6);
    expect(Math.max(...last.map(({ y, angle }) => y + (angle === QUARTER ? 20 : 50)))).toBe(60);
    expect(planner.finished()).toBe(true);
  });

  it('gives back nothing for nothing', () => {
    const plan = planned(bareRoll(100, []));
    expect(plan).toEqual({ placed: [], unplaced: [], used: { kind: 'roll', length: 0, spans: [] } });
    expect(unplacedCount(plan)).toBe(0);
  });
});
