import { candidateOf, type LaidRun, laidQuickly, layRun, orderAlone } from '../../layout';
import { type Book, copiesOfOrder, type Film } from '../../model';
import type { RunCosts } from './costs';

/** The costs of an order's copies, run by run. */
export interface OrderRuns {
  readonly runs: readonly RunCosts[];
  /** Not all of it is laid out: it is reckoned as a run of its own on this film. */
  readonly alone: Film | null;
}

/**
 * Where an order's cost comes from: the runs that its copies lie on; while some of them wait, a run of its own, laid out quickly.
 * @param costsOf a run's costs, which the caller may have at hand
 * @param film to reckon with where it is not laid out
 */
export function orderRuns(
  book: Book,
  id: string,
  film: Film | null,
  costsOf: (run: LaidRun, book: Book) => RunCosts,
): OrderRuns {
  const order = book.order[id];
  const copies = copiesOfOrder(book, id).filter(({ state }) => state !== 'shelved');
  const runs = new Set(copies.map(({ run, state }) => (state === 'placed' ? run : null)));
  if (!runs.has(null)) {
    const laid = [...runs].flatMap((run) => {
      const record = run === null ? undefined : book.run[run];
      return (record && layRun(book, record)) ?? [];
    });
    return { runs: laid.map((run) => costsOf(run, book)), alone: null };
  }
  if (!order || !film || copies.length === 0) return { runs: [], alone: null };
  const { book: apart, run } = orderAlone(book, order, film);
  const { book: own, laid } = laidQuickly(candidateOf(apart, run, { film, endless: true }));
  return { runs: laid ? [costsOf(laid, own)] : [], alone: film };
}
