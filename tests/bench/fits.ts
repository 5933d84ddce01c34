import { cases, coverage } from '../costing/calibration/coverage';
import { printTable } from './table';

const LOGS = 2000;

/** In how many of 16,000 logs made with known rates the intervals hold them: 95 of 100, 97.5 of a rate that is 0. */
export function benchFits(): void {
  const percent = (share: number) => `${(100 * share).toFixed(1)}%`;
  printTable(
    `Intervals of rates found in ${LOGS} logs of each kind`,
    ['true rates', 'runs', 'held', 'told as 0'],
    cases.map((made) => {
      const { within, zero } = coverage(made, LOGS);
      return [made.truth.join(', '), made.rows, within.map(percent).join(', '), zero.map(percent).join(', ')];
    }),
  );
}
