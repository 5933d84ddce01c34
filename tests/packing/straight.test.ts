import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type CutTree,
  createPlanner,
  cutCount,
  cutTree,
  type Plan,
  type Problem,
  type Rect,
  validatePlan,
} from '../../src/packing';
import { QUARTER, UPRIGHT, um } from '../../src/units';
import { squaredPlan, squaredRectangles } from './bouwkamp';
import { anyRoll, anySheets, bareRoll, piece, pinSome } from './problems';
import { rollUsed } from './used';

const rectsOf = (problem: Problem, plan: Plan, sheet = 0): Rect[] =>
  plan.placed
    .filter((copy) => copy.sheet === sheet)
    .map(({ piece: index, x, y, angle }) => {
      const own = problem.pieces[index] ?? piece(1, 1);
      return angle === QUARTER
        ? { x, y, width: own.length, length: own.width }
        : { x, y, width: own.width, length: own.length };
    });

/** Takes a film apart by its tree alone: every cut runs from edge to edge of its part and through no copy. */
function takeApart(
  tree: CutTree,
  copies: readonly Rect[],
  part: { from: number[]; to: number[] },
  found: number[],
): void {
  if (tree.kind === 'copy') {
    found.push(tree.copy);
    const copy = copies[tree.copy];
    expect(copy && copy.x >= (part.from[0] ?? 0) && copy.x + copy.width <= (part.to[0] ?? 0)).toBe(true);
    expect(copy && copy.y >= (part.from[1] ?? 0) && copy.y + copy.length <= (part.to[1] ?? 0)).toBe(true);
    return;
  }
  expect(tree.parts).toHaveLength(tree.at.length + 1);
  const axis = tree.axis === 'along' ? 0 : 1;
  tree.parts.forEach((child, index) => {
    const from = [...part.from];
    const to = [...part.to];
    from[axis] = tree.at[index - 1] ?? part.from[axis] ?? 0;
    to[axis] = tree.at[index] ?? part.to[axis] ?? 0;
    takeApart(child, copies, { from, to }, found);
  });
}

/** How many times the direction of the cuts changes on the way to a copy, and one. */
const stages = (tree: CutTree): number =>
  tree.kind === 'copy' ? 0 : 1 + Math.max(...tree.parts.map(stages));

const whole = { from: [-1, -1], to: [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY] };

describe('a layout for straight cuts', () => {
  it('holds, and its cut tree alone takes it apart, copy by copy', () => {
    fc.assert(
      fc.property(fc.oneof(anyRoll, anySheets), fc.boolean(), (any, isStaged) => {
        const film = any.film.kind === 'roll' ? { ...any.film, noPrint: [] } : any.film;
        const problem: Problem = { ...any, film, cutting: isStaged ? 'staged' : 'straight' };
        const planner = createPlanner(problem, 1);
        planner.step(80);
        const plan = planner.best();
        expect(validatePlan(problem, plan)).toEqual([]);
        const bins = plan.used.kind === 'sheets' ? plan.used.sheets : 1;
        for (let sheet = 0; sheet < bins; sheet += 1) {
          const copies = rectsOf(problem, plan, sheet);
          if (copies.length === 0) continue;
          const tree = cutTree(copies);
          if (!tree) throw new Error('straight cuts do not part it');
          const found: number[] = [];
          takeApart(tree, copies, whole, found);
          expect(found.toSorted((a, b) => a - b)).toEqual([...copies.keys()]);
          expect(cutCount(tree)).toBe(copies.length - 1);
          if (isStaged) expect(stages(tree)).toBeLessThanOrEqual(3);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('parts every copy that is laid around others, and around film that may not be used', () => {
    fc.assert(
      fc.property(
        fc.oneof(anyRoll, anySheets),
        fc.constantFrom('straight' as const, 'staged' as const),
        fc.nat({ max: 2 }),
        (any, cutting, printed) => {
          const film = any.film.kind === 'sheet' ? { ...any.film, printed } : any.film;
          const problem: Problem = { ...any, film, cutting };
          // As copies lie that were laid out for scissors.
          const first = createPlanner({ ...problem, cutting: 'free' }, 1).best();
          const pinned = pinSome(problem, first, (index) => index % 3 === 0);
          const planner = createPlanner(pinned, 1);
          planner.step(20);
          expect(validatePlan(pinned, planner.best())).toEqual([]);
          if (film.kind === 'sheet') expect(planner.best().unplaced).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('parts what an order leaves beside a copy that stays, where the next one is apart from it', () => {
    const soon = { rank: 0 };
    const late = { rank: 1 };
    const problem: Problem = {
      ...bareRoll(100, [
        piece(10, 60, { count: 0 }),
        piece(50, 30, soon),
        piece(30, 20, { ...late, count: 2 }),
      ]),
      film: { kind: 'sheet', width: um(100), length: um(60), sheetLimit: 1, printed: 0 },
      cutting: 'staged',
      together: { kind: 'apart' },
      pinned: [{ piece: 0, sheet: 0, x: um(0), y: um(0), angle: UPRIGHT }],
    };
    const plan = createPlanner(problem, 1).best();
    expect(validatePlan(problem, plan)).toEqual([]);
    expect(plan.placed.length).toBeGreaterThan(2);
  });

  it('fills what is free beside and between copies that stay', () => {
    // A column beside the one that lies there, and the film behind it.
    const problem: Problem = {
      ...bareRoll(100, [piece(60, 50), piece(20, 25, { count: 4 })]),
      cutting: 'staged',
      pinned: [{ piece: 0, sheet: 0, x: um(0), y: um(0), angle: UPRIGHT }],
    };
    const pieces = problem.pieces.map((own, index) => ({ ...own, count: index === 0 ? 0 : own.count }));
    expect(rollUsed(createPlanner({ ...problem, pieces }, 1).best()).length).toBe(50);
  });

  it('needs no more film than a rectangle that was cut up in many stages', () => {
    // 100 x 60: along at 40, the rest across at 20, what lies behind along at 25, and across at 15 again.
    const pieces = [piece(40, 60), piece(60, 20), piece(25, 40), piece(35, 15), piece(35, 25)];
    const problem: Problem = { ...bareRoll(100, pieces), cutting: 'straight' };
    const planner = createPlanner(problem, 1);
    planner.step(3000);
    const plan = planner.best();
    expect(rollUsed(plan).length).toBe(60);
    const tree = cutTree(rectsOf(problem, plan));
    expect(tree && stages(tree)).toBeGreaterThan(3);
  });

  it.each(['straight', 'staged'] as const)(
    'costs film where copies lie best around one another: %s',
    (cutting) => {
      // Nine squares fill 33 x 32 in one way, which no straight cut parts (Moron 1925).
      const rectangle = squaredRectangles.find(({ width }) => width === 33);
      const squares = (rectangle?.code ?? []).map((side) => piece(side, side));
      const lengths = (['free', cutting] as const).map((way) => {
        const planner = createPlanner({ ...bareRoll(33, squares), cutting: way }, 1);
        planner.step(5000);
        expect(planner.best().unplaced).toEqual([]);
        return rollUsed(planner.best()).length;
      });
      expect(lengths[0]).toBe(rectangle?.height);
      expect(lengths[1]).toBeGreaterThan(lengths[0] ?? 0);
    },
  );
});

describe('the cut tree', () => {
  it('finds rows, then columns, then what lies behind one another', () => {
    const copies = [
      { x: um(0), y: um(0), width: um(40), length: um(60) },
      { x: um(50), y: um(0), width: um(40), length: um(25) },
      { x: um(50), y: um(30), width: um(40), length: um(30) },
      { x: um(0), y: um(70), width: um(90), length: um(20) },
    ];
    const tree = cutTree(copies);
    expect(tree).toEqual({
      kind: 'cut',
      axis: 'across',
      at: [65],
      parts: [
        {
          kind: 'cut',
          axis: 'along',
          at: [45],
          parts: [
            { kind: 'copy', copy: 0 },
            {
              kind: 'cut',
              axis: 'across',
              at: [27.5],
              parts: [
                { kind: 'copy', copy: 1 },
                { kind: 'copy', copy: 2 },
              ],
            },
          ],
        },
        { kind: 'copy', copy: 3 },
      ],
    });
    expect(tree && cutCount(tree)).toBe(3);
  });

  it.each(squaredRectangles)('does not exist for the $name, which no straight cut parts', (squared) => {
    const { problem, plan } = squaredPlan(squared);
    expect(cutTree(rectsOf(problem, plan))).toBeNull();
  });
});
