import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freeParts, type Part } from '../../src/packing/free-parts';

const whole: Part = { x: 0, y: 0, across: 20, along: 30 };

/** Rectangles that do not overlap each other; some reach over the film's edges. */
const anyTaken = fc
  .array(
    fc.record({
      x: fc.integer({ min: -3, max: 19 }),
      y: fc.integer({ min: -3, max: 29 }),
      across: fc.integer({ min: 1, max: 12 }),
      along: fc.integer({ min: 1, max: 12 }),
    }),
    { maxLength: 8 },
  )
  .map((parts) =>
    parts.filter((part, index) => !parts.slice(0, index).some((other) => overlap(part, other))),
  );

const overlap = (a: Part, b: Part): boolean =>
  a.x < b.x + b.across && b.x < a.x + a.across && a.y < b.y + b.along && b.y < a.y + a.along;

describe('what is free around copies', () => {
  it('overlaps nothing that lies there, no other part, and no edge', () => {
    fc.assert(
      fc.property(anyTaken, fc.constantFrom(1, 2, 3, Number.POSITIVE_INFINITY), (taken, most) => {
        const parts = freeParts(taken, whole, most);
        for (const [index, part] of parts.entries()) {
          expect(part.stage).toBeLessThanOrEqual(most);
          expect([...taken, ...parts.slice(0, index)].filter((other) => overlap(part, other))).toEqual([]);
          expect(part.x >= 0 && part.x + part.across <= 20 && part.y >= 0 && part.y + part.along <= 30).toBe(
            true,
          );
          if (part.stage === 1) expect(part.across).toBe(20);
        }
      }),
    );
  });

  it.each([
    ['nothing', [], [{ x: 0, y: 0, across: 20, along: 30, stage: 0 }]],
    [
      'a copy in the middle: before it, on both sides, and behind it',
      [{ x: 5, y: 10, across: 5, along: 5 }],
      [
        { x: 0, y: 0, across: 20, along: 10, stage: 1 },
        { x: 0, y: 10, across: 5, along: 5, stage: 2 },
        { x: 10, y: 10, across: 10, along: 5, stage: 2 },
        { x: 0, y: 15, across: 20, along: 15, stage: 1 },
      ],
    ],
    [
      'two beside each other, one of them shorter: behind that one too',
      [
        { x: 0, y: 0, across: 10, along: 30 },
        { x: 10, y: 0, across: 10, along: 20 },
      ],
      [{ x: 10, y: 20, across: 10, along: 10, stage: 3 }],
    ],
  ])('around %s', (_, taken, parts) => {
    expect(freeParts(taken, whole, 3)).toEqual(parts);
  });
});
