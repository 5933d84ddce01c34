import { createPlanner, type Problem } from '../../src/packing';
import { fromMm, seededRandom, um } from '../../src/units';
import { percentile, printTable } from './table';

/** A day of so many copies in transfers of eight, on a 560 mm roll; so many transfers are of one order, all if it is left out. */
function dayOf(copies: number, ofAnOrder = Number.POSITIVE_INFINITY): Problem {
  const random = seededRandom(copies);
  const size = (least: number, most: number) =>
    fromMm(Math.round(10 * (least + random() * (most - least))) / 10);
  return {
    film: {
      kind: 'roll',
      width: fromMm(560),
      lengthLimit: null,
      spanMax: null,
      cutBlank: um(0),
      noPrint: [],
    },
    margins: { left: fromMm(5), right: fromMm(5), lead: fromMm(10), tail: fromMm(10) },
    gap: fromMm(6),
    cutting: 'free',
    together: { kind: 'any' },
    pieces: Array.from({ length: Math.ceil(copies / 8) }, (_, index) => ({
      id: String(index),
      width: size(40, 300),
      length: size(30, 300),
      count: 8,
      turn: index % 3 === 0 ? ('fixed' as const) : ('quarter' as const),
      rank: Math.floor(index / ofAnOrder),
    })),
    pinned: [],
  };
}

const ROUNDS = 25;
const counts = [100, 200, 1000, 2000, 10_000];

/** How long first layouts take, from the problem to a plan, in milliseconds. */
const timesOf = (problem: Problem): number[] =>
  Array.from({ length: ROUNDS }, () => {
    const from = performance.now();
    createPlanner(problem, 1).best();
    return performance.now() - from;
  });

/** Times a first layout, of one order and of many, as the worker computes it, and full builds a second. */
export function benchFirstLayout(): void {
  const rows = counts.map((copies) => {
    const problem = dayOf(copies);
    const times = timesOf(problem);
    const planner = createPlanner(problem, 1);
    planner.step(100);
    const from = performance.now();
    let builds = 0;
    for (; performance.now() - from < 1000; builds += 20) planner.step(20);
    return {
      copies,
      cold: times[0] ?? Number.NaN,
      warm: percentile(times, 0.5),
      ranked: percentile(timesOf(dayOf(copies, 5)), 0.5),
      builds: builds / ((performance.now() - from) / 1000),
      heap: process.memoryUsage().heapUsed,
    };
  });
  const [first, last] = [rows[0], rows.at(-1)];
  const growth =
    first && last ? Math.log(last.warm / first.warm) / Math.log(last.copies / first.copies) : Number.NaN;
  printTable(
    `First layout, copies of eight each; it grows as n^${growth.toFixed(2)}`,
    ['copies', 'cold', 'warm, median', 'of many orders, median', 'full builds a second', 'heap'],
    rows.map(({ copies, cold, warm, ranked, builds, heap }) => [
      copies,
      `${cold.toFixed(1)} ms`,
      `${warm.toFixed(2)} ms`,
      `${ranked.toFixed(2)} ms`,
      builds.toFixed(0),
      `${(heap / 1e6).toFixed(0)} MB`,
    ]),
  );
}
