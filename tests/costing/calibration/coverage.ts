import { type Estimate, fitRates } from '../../../src/costing/calibration/fit';
import { chance } from './random';

/** Rates that logs are made with, how many runs a log has, and how far a measured figure scatters. */
export interface Made {
  readonly truth: readonly number[];
  readonly rows: number;
  readonly noise: number;
}

/** Shares of so many logs of made-up runs in which each true coefficient lies in its interval, and is told as exactly 0. */
export function coverage(
  { truth, rows, noise }: Made,
  logs: number,
): { readonly within: readonly number[]; readonly zero: readonly number[] } {
  const { even, normal } = chance(20_261_126);
  const within = truth.map(() => 0);
  const zero = truth.map(() => 0);
  for (let log = 0; log < logs; log += 1) {
    // A square metre and more of print a run, something for each run, and one to six spans.
    const drivers = [() => 0.3 + 1.5 * even(), () => 1, () => 1 + Math.floor(6 * even())];
    const columns = truth.map((_, at) => Array.from({ length: rows }, drivers[at] ?? (() => 0)));
    const measured = Array.from(
      { length: rows },
      (_, row) =>
        truth.reduce((sum, each, at) => sum + each * (columns[at]?.[row] ?? 0), 0) + noise * normal(),
    );
    fitRates(columns, measured)?.estimates.forEach(({ value, low, high }: Estimate, at) => {
      const own = truth[at] ?? 0;
      if (low <= own && own <= high) within[at] = (within[at] ?? 0) + 1;
      if (value === 0) zero[at] = (zero[at] ?? 0) + 1;
    });
  }
  return { within: within.map((count) => count / logs), zero: zero.map((count) => count / logs) };
}

/** Cases with every rate well above nothing, with one near it, and with one that is nothing. */
export const cases: readonly Made[] = [
  { truth: [9], rows: 6, noise: 1 },
  { truth: [9, 5], rows: 8, noise: 0.7 },
  { truth: [9, 5], rows: 30, noise: 1 },
  { truth: [60, 40, 45], rows: 15, noise: 10 },
  { truth: [9, 0.3], rows: 12, noise: 1 },
  { truth: [9, 0.6], rows: 12, noise: 1 },
  { truth: [9, 1], rows: 12, noise: 1 },
  { truth: [9, 0], rows: 12, noise: 1 },
];
