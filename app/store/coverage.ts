import { coverageOf } from '../../src/artwork';
import type { CoverageOf } from '../../src/log';
import { useArtworkChecks } from './checks';

/** What each transfer's copies are printed with, as far as their artwork has been looked at. */
export function useCoverageOf(): CoverageOf {
  const checkOf = useArtworkChecks();
  return (transfer) => {
    const check = checkOf(transfer);
    return check && coverageOf(check.sums, check.pixels, transfer);
  };
}
