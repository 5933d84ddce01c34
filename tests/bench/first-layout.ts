import { createPlanner, type Problem } from '../../src/packing';
import { seededRandom } from '../../src/packing/random';
import { fromMm, um } from '../../src/units';
import { percentile, printTable } from './table';

/** A day of so many copies in transfers of four, on a 560 mm roll cut into spans. */
function dayOf(copies: number): Problem {
  const random = seededRandom(copies);
  const size = (least: number, most: number) =>
    fromMm(Math.round(10 * (least + random() * (most - least))) / 10);
  return {
    film: {
      kind: 'roll',
      width: fromMm(560),
      lengthLimit: null,
      spanMax: fromMm(500),
      cutBlank: um(0),
      noPrint: [],
    },
    margins: { left: fromMm(5), right: fromMm(5), lead: fromMm(10), tail: fromMm(10) },
    gap: fromMm(6),
    pieces: Array.from({ length: copies / 4 }, (_, index) => ({
      id: String(index),
      width: size(40, 300),
      length: size(30, 300),
      count: 4,
      turn: index % 3 === 0 ? ('fixed' as const) : ('quarter' as const),
      rank: 0,
    })),
    pinned: [],
  };
}

const ROUNDS = 15;

/** Times a first layout, from the problem to a plan, as the worker computes it. */
export function benchFirstLayout(): void {
  const rows = [
    { copies: 200, target: 50 },
    { copies: 2000, target: 300 },
  ].map(({ copies, target }) => {
    const problem = dayOf(copies);
    const times = Array.from({ length: ROUNDS }, () => {
      const from = performance.now();
      createPlanner(problem, 1).best();
      return performance.now() - from;
    });
    const cold = times[0] ?? Number.NaN;
    return [copies, `${cold.toFixed(1)} ms`, `${percentile(times, 0.5).toFixed(1)} ms`, `${target} ms`];
  });
  printTable('First layout, copies of four each', ['copies', 'first run, cold', 'median', 'target'], rows);
}
