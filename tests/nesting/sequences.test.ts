import { expect, it } from 'vitest';
import { binsOf } from '../../src/nesting/bins';
import { Sequences } from '../../src/nesting/sequences';
import { stockOf } from '../../src/nesting/stock';
import { seededRandom } from '../../src/units';
import { box, piece, roll } from './outlines';

/** Boxes of a strip that is full when 60 lies beside 40 and 70 beside 30, laid in an order that wastes film. */
const problem = roll(100, [
  piece('60', [box(60, 30)], 2),
  piece('70', [box(70, 30)], 2),
  piece('40', [box(40, 30)], 2),
  piece('30', [box(30, 30)], 2),
]);
const worst = { pieces: Int32Array.of(3, 3, 2, 2, 0, 0, 1, 1), leaning: 1, turns: 'all' } as const;

it('sequences are varied until their layout is the shortest, and rest once behind each that is no better', () => {
  const stock = stockOf(problem, binsOf(problem), 1500);
  const sequences = new Sequences(stock, [worst], seededRandom(1));
  const first = sequences.next();
  let least = first?.cost ?? 0;
  let isToRest = false;
  let shortest = Number.POSITIVE_INFINITY;
  for (let built = 0; built < 800; built += 1) {
    const layout = sequences.next();
    expect(layout === null).toBe(isToRest);
    isToRest = layout !== null && layout.cost >= least;
    if (layout === null) continue;
    least = Math.min(least, layout.cost);
    shortest = Math.min(shortest, layout.reach[0] as number);
  }
  expect(first?.reach[0]).toBeGreaterThan(120_000);
  // Four rows of 30 mm: the area of all over the width.
  expect(shortest).toBe(120_000);
});
