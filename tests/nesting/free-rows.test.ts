import fc from 'fast-check';
import { expect, it } from 'vitest';
import { clearance } from '../../src/nesting/clearance';
import { FreeRows } from '../../src/nesting/free-rows';
import { shapeOf } from '../../src/nesting/shape';
import { anyRings } from './outlines';

const WIDTH = 200_000;
const shape = anyRings.map((rings) => shapeOf(0, rings, 0, { gap: 3000, height: 1500 }));
const lying = fc.record({ shape, share: fc.double({ min: 0, max: 1, noNaN: true }), row: fc.nat(60) });

it('a row that is too narrow has no room for the shape, wherever it lies across', () => {
  let refused = 0;
  fc.assert(
    fc.property(fc.array(lying, { maxLength: 8 }), shape, (all, own) => {
      const free = new FreeRows(0, WIDTH);
      const laid = all.map((each) => ({ ...each, x: Math.floor(each.share * (WIDTH - each.shape.width)) }));
      for (const each of laid) free.take(each.shape, { shape: 0, x: each.x, row: each.row });
      for (let row = 0; row < 120; row += 5) {
        if (!free.isTooNarrow(own, row)) continue;
        refused += 1;
        const blocked = laid.flatMap((each) => {
          const { starts, from, to, before } = clearance(each.shape, own);
          const step = row - each.row + before;
          const [first = 0, end = 0] = starts.slice(Math.max(0, step), step + 2);
          return step < 0 || step >= starts.length - 1
            ? []
            : [...from.slice(first, end).keys()].map((at) => ({
                from: (from[first + at] ?? 0) + each.x,
                to: (to[first + at] ?? 0) + each.x,
              }));
        });
        // Where it might lie, it lies at the film's side or at the end of what it may not lie for.
        const isFree = [0, ...blocked.map(({ to }) => to)].some(
          (x) => x >= 0 && x + own.width <= WIDTH && blocked.every(({ from, to }) => x <= from || x >= to),
        );
        expect(isFree).toBe(false);
      }
    }),
  );
  // What refuses nothing would prove nothing.
  expect(refused).toBeGreaterThan(0);
});
