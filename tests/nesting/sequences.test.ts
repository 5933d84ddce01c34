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

it('sequences are varied until their layout is the shortest, and rest when they get no better', () => {
  const stock = stockOf(problem, binsOf(problem), 1500);
  const sequences = new Sequences(stock, [worst], seededRandom(1));
  const reachOf = (layout: ReturnType<Sequences['next']>) => layout?.reach[0] ?? Number.POSITIVE_INFINITY;
  const first = reachOf(sequences.next());
  let least = first;
  let rests = 0;
  for (let built = 0; built < 400 && rests === 0; built += 1) {
    const layout = sequences.next();
    if (!layout) rests += 1;
    else least = Math.min(least, reachOf(layout));
  }
  expect(first).toBeGreaterThan(120_000);
  // Four rows of 30 mm: the area of all over the width.
  expect(least).toBe(120_000);
  expect(rests).toBe(1);
  expect(sequences.next()).not.toBeNull();
});
