import type { CoverageOf } from '../costing';
import type { LaidRun } from '../layout';
import type { Closing, Transfer } from '../model';

/** All copies of a run together; `null` where one of them is not known. */
export function runCoverage(
  { view: { placed } }: LaidRun,
  coverageOf: CoverageOf,
): Closing['work']['coverage'] {
  const sum = { colour: 0, white: 0 };
  const known = new Map<Transfer, ReturnType<CoverageOf>>();
  for (const { transfer } of placed) {
    const own = known.get(transfer) ?? coverageOf(transfer);
    if (!own) return null;
    known.set(transfer, own);
    sum.colour += own.colour;
    sum.white += own.white;
  }
  return sum;
}
