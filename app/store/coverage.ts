import type { CoverageOf } from '../../src/costing';
import { coverageNow, useDoneChecks } from './checks';
import { useShop } from './shop';

/** What each transfer's copies are printed with, as far as their artwork has been looked at. */
export function useCoverageOf(): CoverageOf {
  const book = useShop((shop) => shop.book);
  useDoneChecks();
  return coverageNow(book);
}
