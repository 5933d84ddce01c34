import type { CoverageOf } from '../../src/costing';
import { type RunCosts, runCosts } from '../../src/costing/run';
import type { LaidRun } from '../../src/layout';
import type { Book } from '../../src/model';
import { coverageNow, useDoneChecks } from './checks';
import { settingsOrFirst } from './selectors';
import { useShop } from './shop';

/** What was worked out for one book with what its checks told: a book never changes, it is replaced. */
interface Known {
  readonly printed: CoverageOf;
  readonly runs: Map<LaidRun, RunCosts>;
}

let known: { book: Book; of: Known } | null = null;

/** What is known of a book by now. */
export function knownOf(book: Book): Known {
  const printed = coverageNow(book);
  if (known?.book !== book || known.of.printed !== printed) {
    known = { book, of: { printed, runs: new Map() } };
  }
  return known.of;
}

/** The costs of a run as it lies in the book. */
export function costsOf(book: Book, run: LaidRun): RunCosts {
  const { runs } = knownOf(book);
  const found = runs.get(run) ?? costsTried(book, run);
  runs.set(run, found);
  return found;
}

/** The costs of a run in a book that is only tried. */
export const costsTried = (book: Book, run: LaidRun): RunCosts =>
  runCosts(book, run, settingsOrFirst(book), coverageNow(useShop.getState().book));

export function useRunCosts(run: LaidRun): RunCosts {
  const book = useShop((shop) => shop.book);
  useDoneChecks();
  return costsOf(book, run);
}
