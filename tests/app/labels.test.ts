import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../app/parts/labels';

const label = fc.record({
  at: fc.double({ min: -50, max: 450, noNaN: true }),
  size: fc.double({ min: 4, max: 90, noNaN: true }),
});
const labels = fc.array(label, { maxLength: 25 });
const line = { from: 0, to: 400 };
const GAP = 3;

describe('labels along a line', () => {
  it('never overlap and never leave it, whatever they are asked for', () => {
    fc.assert(
      fc.property(labels, (wanted) => {
        const boxes = spread(wanted, line, GAP)
          .flatMap((middle, index) => (middle === null ? [] : [{ middle, size: wanted[index]?.size ?? 0 }]))
          .toSorted((a, b) => a.middle - b.middle);
        for (const [index, { middle, size }] of boxes.entries()) {
          expect(middle - size / 2).toBeGreaterThanOrEqual(line.from - 1e-6);
          expect(middle + size / 2).toBeLessThanOrEqual(line.to + 1e-6);
          const next = boxes[index + 1];
          if (next)
            expect(next.middle - next.size / 2 - middle - size / 2).toBeGreaterThanOrEqual(GAP - 1e-6);
        }
      }),
    );
  });

  it('are all there where there is room, and keep the order of their places', () => {
    fc.assert(
      fc.property(labels, (wanted) => {
        fc.pre(wanted.reduce((sum, { size }) => sum + size + GAP, 0) < line.to);
        const middles = spread(wanted, line, GAP);
        expect(middles).not.toContain(null);
        const inOrder = wanted
          .map(({ at }, index) => ({ at, middle: middles[index] ?? 0 }))
          .toSorted((a, b) => a.at - b.at);
        for (const [index, { middle }] of inOrder.entries())
          expect(middle).toBeLessThanOrEqual((inOrder[index + 1]?.middle ?? 1e9) + 1e-6);
      }),
    );
  });

  it.each([
    ['one with room stays where it is asked for', [{ at: 100, size: 20 }], [100]],
    [
      'two that meet part by as little as they must',
      [
        { at: 100, size: 20 },
        { at: 105, size: 20 },
      ],
      [100, 123],
    ],
    ['the last is moved back from the end', [{ at: 398, size: 20 }], [390]],
    [
      'one for which there is no room is left out',
      [
        { at: 9, size: 390 },
        { at: 9, size: 20 },
      ],
      [195, null],
    ],
  ])('%s', (_, wanted, middles) => expect(spread(wanted, line, GAP)).toEqual(middles));
});
