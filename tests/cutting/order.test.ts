import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutStep, cutOrder, type FilmPart, type SpanOrder } from '../../src/cutting';
import { isReachable } from '../../src/cutting/taking';
import { createPlanner } from '../../src/packing';
import { fromMm, toMm } from '../../src/units';
import { longRun, runOf } from '../output/runs';

type Box = Parameters<typeof runOf>[0][number];

/** A run laid out by the engine from sizes in millimetres; three orders take turns. */
function planned(sizes: readonly (readonly [number, number])[], cutting: 'free' | 'straight') {
  const planner = createPlanner(
    {
      film: {
        kind: 'roll',
        width: fromMm(330),
        lengthLimit: null,
        spanMax: fromMm(480),
        cutBlank: fromMm(0),
        noPrint: [],
      },
      margins: { left: fromMm(5), right: fromMm(5), lead: fromMm(10), tail: fromMm(10) },
      gap: fromMm(6),
      cutting,
      together: { kind: 'any' },
      pieces: sizes.map(([width, length], index) => ({
        id: String(index),
        width: fromMm(width),
        length: fromMm(length),
        count: 2,
        turn: 'fixed',
        rank: 0,
      })),
      pinned: [],
    },
    1,
  );
  const numbers = [0, 0, 0];
  const boxes = planner.best().placed.map(({ piece, x, y }): Box => {
    const order = piece % 3;
    numbers[order] = (numbers[order] ?? 0) + 1;
    const [width = 0, length = 0] = sizes[piece] ?? [];
    return {
      code: ['A', 'B', 'C'][order] ?? '',
      number: numbers[order] ?? 0,
      x: toMm(x),
      y: toMm(y),
      width,
      length,
    };
  });
  return runOf(boxes, { cutting, gap: fromMm(6) });
}

const sizes = fc.array(fc.tuple(fc.integer({ min: 30, max: 150 }), fc.integer({ min: 30, max: 200 })), {
  minLength: 1,
  maxLength: 12,
});

/** The pieces that a span's straight cuts leave, made by cutting alone. */
function piecesAfter({ steps, from, to }: SpanOrder): FilmPart[] {
  let pieces: FilmPart[] = [
    { x: fromMm(0), y: from, width: fromMm(330), length: (to - from) as FilmPart['length'] },
  ];
  for (const step of steps) {
    if (step.kind !== 'cut') continue;
    const { axis, at, piece, fromEdge } = step;
    const own = pieces.find(({ x, y, width, length }) =>
      [x - piece.x, y - piece.y, width - piece.width, length - piece.length].every((off) => off === 0),
    );
    if (!own) throw new Error('this piece was not there to be cut');
    const start = axis === 'across' ? own.y : own.x;
    const size = axis === 'across' ? own.length : own.width;
    expect(fromEdge).toBe(at - start);
    expect(fromEdge).toBeGreaterThan(0);
    expect(fromEdge).toBeLessThan(size);
    const rest = (size - fromEdge) as FilmPart['length'];
    pieces = [
      ...pieces.filter((other) => other !== own),
      axis === 'across' ? { ...own, length: fromEdge } : { ...own, width: fromEdge },
      axis === 'across' ? { ...own, y: at, length: rest } : { ...own, x: at, width: rest },
    ];
  }
  return pieces;
}

describe('straight cuts', () => {
  it('leave every copy whole on a piece of its own', () => {
    fc.assert(
      fc.property(sizes, (list) => {
        for (const order of cutOrder(planned(list, 'straight'))) {
          const pieces = piecesAfter(order);
          const held = pieces.map(({ x, y, width, length }) =>
            order.copies.filter(
              (copy) =>
                copy.x >= x &&
                copy.y >= y &&
                copy.x + copy.width <= x + width &&
                copy.y + copy.length <= y + length,
            ),
          );
          expect(held.flat()).toHaveLength(order.copies.length);
          expect(held.every((copies) => copies.length <= 1)).toBe(true);
          const cuts = order.steps.filter((step) => step.kind === 'cut');
          expect(cuts.map(({ number }) => number)).toEqual(cuts.map((_, index) => index + 1));
          if (order.copies.length > 1) {
            expect(
              cuts
                .flatMap(({ frees }) => frees)
                .map(({ id }) => id)
                .toSorted(),
            ).toEqual(order.copies.map(({ id }) => id).toSorted());
          }
        }
      }),
      { numRuns: 40, seed: 3 },
    );
  });

  it('are measured from the fresh edge: two rows of two', () => {
    const run = runOf(
      [
        { code: 'A', number: 1, x: 5, y: 10, width: 100, length: 90 },
        { code: 'A', number: 2, x: 115, y: 10, width: 100, length: 90 },
        { code: 'A', number: 3, x: 5, y: 110, width: 100, length: 90 },
        { code: 'A', number: 4, x: 115, y: 110, width: 100, length: 90 },
      ],
      { cutting: 'straight' },
    );
    const steps = cutOrder(run)[0]?.steps ?? [];
    const told = steps.map(
      (step) => step.kind === 'cut' && [step.axis, toMm(step.fromEdge), step.frees.length],
    );
    expect(told).toEqual([
      ['across', 105, 0],
      ['along', 110, 2],
      ['along', 110, 2],
    ]);
  });
});

const takenOf = (steps: readonly CutStep[]) =>
  steps.flatMap((step) => (step.kind === 'copy' ? [step.copy] : []));

describe('cutting with scissors', () => {
  it('takes every copy out once, always one that scissors can come to', () => {
    fc.assert(
      fc.property(sizes, (list) => {
        const run = planned(list, 'free');
        for (const { copies, steps } of cutOrder(run)) {
          const taken = takenOf(steps);
          expect(new Set(taken)).toEqual(new Set(copies));
          expect(taken).toHaveLength(copies.length);
          // Between two cuts one strip is in the hand.
          let strip: typeof taken = [];
          for (const step of [...steps].reverse()) {
            if (step.kind === 'cut') strip = [];
            else {
              expect(isReachable(step.copy, strip)).toBe(true);
              strip = [...strip, step.copy];
            }
          }
        }
      }),
      { numRuns: 40, seed: 5 },
    );
  });

  it('cuts strips off where rows leave a line, and measures each from the edge before', () => {
    const run = longRun(4);
    const { steps, copies } = cutOrder(run)[0] ?? { steps: [], copies: [] };
    const cuts = steps.flatMap((step) => (step.kind === 'cut' ? [toMm(step.fromEdge)] : []));
    expect(copies).toHaveLength(12);
    expect(cuts).toEqual([102.5, 95, 95]);
    // A row is taken out before the next strip is cut off.
    expect(steps.map(({ kind }) => kind).slice(0, 5)).toEqual(['cut', 'copy', 'copy', 'copy', 'cut']);
  });

  it('lets copies of one order leave together', () => {
    const boxes = [0, 1, 2, 3].flatMap((column) =>
      [0, 1].map((row) => ({
        code: column % 2 === 0 ? 'A' : 'B',
        number: 1 + row + 2 * column,
        x: 5 + 80 * column,
        // Stepped, so that no line goes across.
        y: 10 + 100 * row + 20 * (column % 2),
        width: 70,
        length: 90,
      })),
    );
    const codes = takenOf(cutOrder(runOf(boxes))[0]?.steps ?? []).map(({ order }) => order.code);
    const changes = codes.filter((code, index) => index > 0 && code !== codes[index - 1]).length;
    expect(changes).toBeLessThanOrEqual(3);
  });

  it('leaves no copy hanging by itself while there is another way', () => {
    // Three in a row: the middle one is not taken first.
    const run = runOf([
      { code: 'A', number: 1, x: 120, y: 10, width: 100, length: 90 },
      { code: 'B', number: 1, x: 10, y: 10, width: 100, length: 90 },
      { code: 'B', number: 2, x: 225, y: 10, width: 100, length: 90 },
    ]);
    expect(takenOf(cutOrder(run)[0]?.steps ?? []).map(({ id }) => id)[0]).not.toBe('A-1');
  });
});
