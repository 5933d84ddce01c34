import { describe, expect, it } from 'vitest';
import { type Plan, type Problem, validatePlan } from '../../src/packing';
import { QUARTER, UPRIGHT, um } from '../../src/units';
import { piece } from './problems';
import { rollUsed } from './used';

const problem: Problem = {
  film: {
    kind: 'roll',
    width: um(100),
    lengthLimit: um(300),
    spanMax: um(120),
    cutBlank: um(0),
    noPrint: [],
  },
  margins: { left: um(5), right: um(5), lead: um(10), tail: um(10) },
  gap: um(4),
  cutting: 'free',
  together: { kind: 'any' },
  pieces: [piece(40, 80, { count: 2 }), piece(30, 60, { count: 2, turn: 'quarter' })],
  pinned: [],
};

const good: Plan = {
  placed: [
    { piece: 0, sheet: 0, x: um(5), y: um(10), angle: UPRIGHT },
    { piece: 0, sheet: 0, x: um(49), y: um(10), angle: UPRIGHT },
    { piece: 1, sheet: 0, x: um(5), y: um(94), angle: QUARTER },
    { piece: 1, sheet: 0, x: um(5), y: um(128), angle: QUARTER },
  ],
  unplaced: [],
  used: {
    kind: 'roll',
    length: um(168),
    spans: [
      { from: um(0), to: um(92) },
      { from: um(92), to: um(168) },
    ],
  },
};

/** That plan, as if it took another length of the roll, or was cut elsewhere. */
const taking = (used: Partial<ReturnType<typeof rollUsed>>, plan = good): Plan => ({
  ...plan,
  used: { kind: 'roll', ...rollUsed(plan), ...used },
});

const moved = (index: number, change: Partial<Plan['placed'][number]>): Plan => ({
  ...good,
  placed: good.placed.map((copy, at) => (at === index ? { ...copy, ...change } : copy)),
});

const short = good.placed.slice(0, 3);

const broken: [string, Plan, string][] = [
  ['a copy over the near edge', moved(0, { x: um(4) }), 'edge'],
  ['a copy over the far edge', moved(1, { x: um(56) }), 'edge'],
  ['a copy in the lead', moved(0, { y: um(9) }), 'edge'],
  ['a copy past the end of the roll', moved(3, { y: um(261) }), 'edge'],
  ['two copies closer than the gap across the film', moved(1, { x: um(48) }), 'too-close'],
  ['two copies closer than the gap along it', moved(2, { y: um(93) }), 'too-close'],
  ['a fixed piece turned', moved(0, { angle: QUARTER }), 'turned-but-fixed'],
  ['a piece there is not', moved(0, { piece: 7 }), 'no-such-piece'],
  ['a copy that is missing', taking({ length: um(134) }, { ...good, placed: short }), 'wrong-count'],
  ['a copy too many', { ...good, unplaced: [{ piece: 0, count: 1, reason: 'no-room' }] }, 'wrong-count'],
  ['a wrong length', taking({ length: um(167) }), 'wrong-length'],
  ['a span too long', taking({ spans: [{ from: um(0), to: um(168) }] }), 'span-too-long'],
  [
    'a hole between spans',
    taking({ spans: [{ from: um(0), to: um(91) }, ...rollUsed(good).spans.slice(1)] }),
    'broken-spans',
  ],
  ['no spans', taking({ spans: [] }), 'broken-spans'],
  [
    'a knife line closer than half a gap',
    taking({
      spans: [
        { from: um(0), to: um(91) },
        { from: um(91), to: um(168) },
      ],
    }),
    'cut-by-knife',
  ],
];

const codes = (asked: Problem, of: Plan) => validatePlan(asked, of).map(({ code }) => code);

describe('the validator', () => {
  it('accepts a plan that holds', () => {
    expect(validatePlan(problem, good)).toEqual([]);
  });

  it.each(broken)('finds %s', (_, plan, code) => {
    expect(validatePlan(problem, plan).map((found) => found.code)).toContain(code);
  });

  it('finds a pinned copy that was moved', () => {
    const pinned: Problem = {
      ...problem,
      pieces: [piece(40, 80, { count: 1 }), problem.pieces[1] ?? piece(1, 1)],
      pinned: good.placed.slice(0, 1),
    };
    expect(validatePlan(pinned, good)).toEqual([]);
    expect(validatePlan(pinned, moved(0, { x: um(6) })).map(({ code }) => code)).toContain('pinned-moved');
  });

  describe('asked for straight cuts', () => {
    // Four copies around a hole that a fifth fits into: no straight cut parts any of them.
    const wheel: Problem = {
      ...problem,
      film: { ...problem.film, kind: 'roll', spanMax: null, lengthLimit: null, cutBlank: um(0), noPrint: [] },
      margins: { left: um(0), right: um(0), lead: um(0), tail: um(0) },
      gap: um(0),
      pieces: [piece(60, 40, { count: 2 }), piece(40, 60, { count: 2 }), piece(20, 20)],
    };
    const at = (index: number, x: number, y: number) =>
      ({ piece: index, sheet: 0, x: um(x), y: um(y), angle: UPRIGHT }) as const;
    const around = [at(0, 0, 0), at(1, 60, 0), at(0, 40, 60), at(1, 0, 40)];
    const plan: Plan = {
      placed: [...around, at(2, 40, 40)],
      unplaced: [],
      used: { kind: 'roll', length: um(100), spans: [] },
    };
    it.each([
      ['free', []],
      ['straight', ['not-straight']],
      ['staged', ['not-staged']],
    ] as const)('of a layout around a hole, cut %s, tells %j', (cutting, expected) => {
      expect(codes({ ...wheel, cutting }, plan)).toEqual(expected);
    });

    it('lets pinned copies lie as they lie, and nothing among them', () => {
      const pieces = wheel.pieces.map((own, index) => ({ ...own, count: index === 2 ? 1 : 0 }));
      const pinned: Problem = { ...wheel, cutting: 'straight', pieces, pinned: around };
      expect(codes(pinned, plan)).toEqual(['not-straight']);
      const behind = taking({ length: um(120) }, { ...plan, placed: [...around, at(2, 40, 100)] });
      expect(codes(pinned, behind)).toEqual([]);
    });

    it.each([
      // Across at 10, along at 10, across at 10 of the rest.
      [3, []],
      // And along once more.
      [4, ['not-staged']],
    ] as const)('in stages, of a layout that takes %d directions of cuts tells %j', (stages, expected) => {
      const copies = [
        [100, 10, 0, 0],
        [10, 50, 0, 10],
        [90, 10, 10, 10],
        ...(stages === 4
          ? [
              [10, 40, 10, 20],
              [80, 40, 20, 20],
            ]
          : [[90, 40, 10, 20]]),
      ] as const;
      const asked: Problem = {
        ...wheel,
        cutting: 'staged',
        pieces: copies.map(([width, length]) => piece(width, length)),
      };
      const placed = copies.map(([, , x, y], index) => at(index, x, y));
      const own = taking({ length: um(60) }, { ...plan, placed });
      expect(codes(asked, own)).toEqual(expected);
      expect(codes({ ...asked, cutting: 'straight' }, own)).toEqual([]);
    });
  });

  it('finds a copy on a sheet that is printed, or that there is not', () => {
    const sheets: Problem = {
      ...problem,
      film: { kind: 'sheet', width: um(100), length: um(200), sheetLimit: 3, printed: 1 },
      pieces: [piece(40, 80)],
    };
    const on = (sheet: number): Plan => ({
      ...good,
      placed: good.placed.slice(0, 1).map((own) => ({ ...own, sheet })),
      used: { kind: 'sheets', sheets: sheet + 1 },
    });
    expect(validatePlan(sheets, on(0))).toMatchObject([{ code: 'edge', problem: 'no-print' }]);
    expect(validatePlan(sheets, on(1))).toEqual([]);
    expect(validatePlan(sheets, on(3))).toMatchObject([{ code: 'edge', problem: 'past-end' }]);
    // Those that were counted are fewer than are printed: what lies there was so before.
    const [pin] = on(0).placed;
    const none = { ...sheets, film: { ...sheets.film, sheetLimit: 0 } as Problem['film'] };
    const pieces = none.pieces.map((own) => ({ ...own, count: 0 }));
    expect(validatePlan({ ...none, pieces, pinned: pin ? [pin] : [] }, on(0))).toEqual([]);
  });

  it('finds a plan that no knife line cuts, unless copies that stay leave none a place', () => {
    const cut: Problem = {
      ...problem,
      film: {
        kind: 'roll',
        width: um(100),
        lengthLimit: null,
        spanMax: um(100),
        cutBlank: um(0),
        noPrint: [],
      },
      margins: { left: um(0), right: um(0), lead: um(0), tail: um(0) },
      gap: um(0),
      cutting: 'free',
      pieces: [piece(40, 80, { count: 2 })],
    };
    const chain = [
      { piece: 0, sheet: 0, x: um(0), y: um(0), angle: UPRIGHT },
      { piece: 0, sheet: 0, x: um(50), y: um(60), angle: UPRIGHT },
    ];
    const plan: Plan = { placed: chain, unplaced: [], used: { kind: 'roll', length: um(140), spans: [] } };
    expect(codes(cut, plan)).toEqual(['broken-spans']);
    const stays = { ...cut, pieces: [piece(40, 80, { count: 0 })], pinned: chain };
    expect(codes(stays, plan)).toEqual([]);
    // Lines could part these.
    const apart = chain.map((own, index) => ({ ...own, y: um(90 * index) }));
    const long = taking({ length: um(170) }, { ...plan, placed: apart });
    expect(codes({ ...stays, pinned: apart }, long)).toEqual(['broken-spans']);
  });

  it('finds sheets that are left out', () => {
    const sheets: Problem = {
      ...problem,
      film: { kind: 'sheet', width: um(100), length: um(200), sheetLimit: null, printed: 0 },
      pieces: [piece(40, 80)],
    };
    const plan: Plan = {
      ...good,
      placed: good.placed.slice(0, 1),
      used: { kind: 'sheets', sheets: 1 },
    };
    expect(validatePlan(sheets, plan)).toEqual([]);
    const late = { ...plan, placed: plan.placed.map((copy) => ({ ...copy, sheet: 1 })) };
    expect(validatePlan(sheets, late).map(({ code }) => code)).toContain('wrong-sheets');
  });
});
