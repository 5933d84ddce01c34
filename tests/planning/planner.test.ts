import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createPlanner as createBoxPlanner,
  leastFilm,
  type Plan,
  type Problem,
  validatePlan,
} from '../../src/packing';
import { atOnce, createPlanner } from '../../src/planning';
import { angleOf, fromMm, mayLieAt, TURNINGS, type Turning, UPRIGHT, um } from '../../src/units';
import { corner, disc, ring } from '../nesting/outlines';

const mm = fromMm;
const lengthOf = ({ used }: Plan): number => (used.kind === 'roll' ? used.length : used.sheets);

const outlines = [
  null,
  [corner(40, 8)],
  [ring([0, 0], [40, 0], [0, 40])],
  [disc(20, 24)],
  // Islands in two corners of their box.
  [ring([0, 0], [14, 0], [0, 14]), ring([40, 40], [26, 40], [40, 26])],
];

/** Boxes of 40 mm with something bare in most of them. */
const problem = (
  which: readonly (readonly [outline: number, count: number, turn?: Turning])[],
  more: Partial<Problem> = {},
): Problem => ({
  film: {
    kind: 'roll',
    width: mm(110),
    lengthLimit: null,
    spanMax: null,
    cutBlank: um(0),
    noPrint: [],
  },
  margins: { left: mm(5), right: mm(5), lead: mm(10), tail: mm(5) },
  gap: mm(4),
  cutting: 'outlines',
  together: { kind: 'any' },
  pieces: which.map(([outline, count, turn = 'quarter'], index) => ({
    id: `${index}`,
    width: mm(40),
    length: mm(40),
    outline: outlines[outline] ?? null,
    count,
    turn,
    rank: index,
  })),
  pinned: [],
  ...more,
});

const FLUSH = { left: mm(0), right: mm(0), lead: mm(0), tail: mm(0) };
const roll = problem([]).film as Extract<Problem['film'], { kind: 'roll' }>;

/** A day of boxes of many sizes, some of whose outlines are known. */
const mixedDay = (outlined: readonly number[]): Problem =>
  problem([], {
    film: { ...roll, width: mm(330) },
    margins: { left: mm(5), right: mm(5), lead: mm(10), tail: mm(10) },
    gap: mm(5),
    pieces: (
      [
        [260, 149, 3],
        [170, 147, 4],
        [55, 55, 8],
        [95, 16, 9],
        [120, 17, 6],
        [115, 16, 4],
        [220, 220, 2],
        [66, 51, 5],
      ] as const
    ).map(([width, length, count], rank) => ({
      id: `${rank}`,
      width: mm(width),
      length: mm(length),
      outline: outlined.includes(rank) ? [ring([0, 0], [width, 0], [0, length])] : null,
      count,
      turn: 'quarter',
      rank,
    })),
  });

const anyProblem = fc
  .record({
    which: fc.array(
      fc.tuple(fc.nat(outlines.length - 1), fc.integer({ min: 1, max: 4 }), fc.constantFrom(...TURNINGS)),
      {
        minLength: 1,
        maxLength: 4,
      },
    ),
    gap: fc.constantFrom(0, 2, 6),
    film: fc.oneof(
      fc.constant(roll),
      fc.constant({ ...roll, spanMax: mm(150), cutBlank: mm(3) }),
      fc.constant({ ...roll, spanMax: mm(150), cutBlank: mm(3), noPrint: [{ from: mm(160), to: mm(181) }] }),
      fc.constant({ ...roll, lengthLimit: mm(160) }),
      fc.constant({
        ...roll,
        noPrint: [
          { from: mm(0), to: mm(33) },
          { from: mm(90), to: mm(97.3) },
        ],
      }),
      fc.constant({ kind: 'sheet', width: mm(110), length: mm(130), sheetLimit: 3, printed: 1 } as const),
    ),
    pins: fc.boolean(),
  })
  .map(({ which, gap, film, pins }): Problem => {
    const pinned = [
      { piece: 0, sheet: 0, x: mm(17), y: mm(31.7), angle: angleOf(30) },
      // On sheets of which the first is printed, and two are left; the other lies on the printed one.
      { piece: 0, sheet: film.kind === 'sheet' ? 2 : 0, x: mm(62), y: mm(80.1), angle: angleOf(180) },
    ];
    return problem(which, { gap: mm(gap), film, pinned: pins ? pinned : [] });
  });

describe('planning copies by their outlines', () => {
  it('holds on any film, around what is pinned or may not be printed, and takes no more than boxes do', () => {
    let shorter = 0;
    fc.assert(
      fc.property(anyProblem, fc.nat(50), (any, seed) => {
        const planner = createPlanner(any, seed);
        planner.step(64);
        const plan = planner.best();
        expect(validatePlan(any, plan)).toEqual([]);
        if (plan.unplaced.length === 0) {
          const { kind, ...least } = leastFilm(any);
          expect(kind === plan.used.kind).toBe(true);
          expect(Object.values(least)[0]).toBeLessThanOrEqual(lengthOf(plan));
        }
        const boxes = createBoxPlanner(any, seed);
        boxes.step(8);
        const plain = boxes.best();
        const left = ({ unplaced }: Plan) => unplaced.reduce((sum, { count }) => sum + count, 0);
        expect(left(plan)).toBeLessThanOrEqual(left(plain));
        if (left(plan) < left(plain)) return;
        expect(lengthOf(plan)).toBeLessThanOrEqual(lengthOf(plain));
        if (lengthOf(plan) < lengthOf(plain)) shorter += 1;
      }),
      { numRuns: 60 },
    );
    expect(shorter).toBeGreaterThan(5);
  });

  it.each([
    ['corner pieces lie in each other', [[1, 2, 'fixed']], { width: 64 }],
    // Three discs where boxes lie in one row of two: the third drops between them.
    ['a disc lies between two', [[3, 3, 'fixed']], { width: 110 }],
  ] as const)('%s', (_, which, { width }) => {
    const film = { ...roll, width: mm(width) };
    const plan = (cutting: Problem['cutting']) => {
      const planner = createPlanner(problem(which, { film, cutting }), 1);
      planner.step(400);
      return lengthOf(planner.best());
    };
    expect(plan('outlines')).toBeLessThan(plan('free') - mm(2));
  });

  it('turns copies half round where they may: two triangles share one box', () => {
    const film = { ...roll, width: mm(58) };
    const lengthFor = (turn: Turning): number => {
      const planner = createPlanner(problem([[2, 2, turn]], { film }), 1);
      planner.step(200);
      const plan = planner.best();
      expect(plan.placed.every(({ angle }) => mayLieAt(turn, angle))).toBe(true);
      return lengthOf(plan);
    };
    // One behind the other their tips lie between the slopes; half round, slope lies by slope.
    expect(lengthFor('half')).toBeLessThan(lengthFor('fixed') - mm(10));
    expect(lengthFor('any')).toBeLessThanOrEqual(lengthFor('fixed'));
  });

  const cut = { ...roll, spanMax: mm(190), cutBlank: mm(3) };
  it.each([
    ['spans around a pinned copy', cut, [{ piece: 0, sheet: 0, x: mm(9), y: mm(31), angle: angleOf(10) }]],
    ['spans behind what is printed', { ...cut, noPrint: [{ from: mm(0), to: mm(120) }] }, []],
    [
      'sheets around a pinned copy',
      { kind: 'sheet', width: mm(110), length: mm(180), sheetLimit: null, printed: 0 } as const,
      [{ piece: 0, sheet: 1, x: mm(40), y: mm(70), angle: angleOf(10) }],
    ],
  ])('takes less film than boxes do on %s', (_, film, pinned) => {
    const plan = (cutting: Problem['cutting']) => {
      const laid = problem([[1, 21, 'fixed']], { film, pinned, cutting });
      const planner = createPlanner(laid, 1);
      planner.step(3000);
      expect(validatePlan(laid, planner.best())).toEqual([]);
      return lengthOf(planner.best());
    };
    expect(plan('outlines')).toBeLessThan(plan('free'));
  });

  it('has room for a copy in the first span alone, which begins without blank film', () => {
    const film = { ...roll, spanMax: mm(46), cutBlank: mm(14) };
    const tight = problem([[3, 5]], { film, gap: mm(0), margins: FLUSH });
    const planner = createPlanner(tight, 1);
    planner.step(40);
    const plan = planner.best();
    expect(validatePlan(tight, plan)).toEqual([]);
    expect(plan.unplaced).toEqual([{ piece: 0, count: 3, reason: 'no-room' }]);
  });

  it('is told of at once by the boxes, and of a copy put beside what lies there by its outline', () => {
    const one = problem([[1, 1, 'fixed']], {
      pinned: [{ piece: 0, sheet: 0, x: mm(5), y: mm(10), angle: UPRIGHT }],
      film: { ...roll, width: mm(64) },
    });
    expect(validatePlan(one, atOnce.firstPlan(one))).toEqual([]);
    expect(lengthOf(atOnce.firstPlan(one))).toBeLessThan(mm(10 + 40 + 4 + 40 + 5));
  });

  it('is of the boxes alone where orders are to lie apart', () => {
    const apart = problem(
      [
        [1, 2],
        [3, 2],
      ],
      { together: { kind: 'apart' } },
    );
    const planner = createPlanner(apart, 1);
    planner.step(50);
    expect(validatePlan(apart, planner.best())).toEqual([]);
  });
});

describe('film of which none may be printed', () => {
  it('stays bare, also where it is cut', () => {
    const bare = problem([[1, 1]], {
      film: { ...roll, spanMax: mm(150), lengthLimit: mm(60), noPrint: [{ from: mm(0), to: mm(60) }] },
    });
    const planner = createPlanner(bare, 1);
    planner.step(20);
    expect(validatePlan(bare, planner.best())).toEqual([]);
    expect(planner.best().placed).toEqual([]);
  });
});

describe('a day of which some outlines are not known yet', () => {
  it.each([[[0]], [[2, 6]], [[1, 3, 5]], [[0, 1, 6]]])('is laid out soundly with those of %j', (outlined) => {
    const day = mixedDay(outlined);
    const planner = createPlanner(day, 1);
    for (let round = 0; round < 12; round += 1) {
      planner.step(10);
      expect(validatePlan(day, planner.best())).toEqual([]);
    }
  });
});
