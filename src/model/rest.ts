import { copiesBeyond } from './beyond';
import type { Book } from './book';
import { type Run, runStates } from './run';

/** What of an order does not come with a run. */
export interface Rest {
  /** Names of runs that are ahead of it, and of those that follow. */
  readonly came: readonly string[];
  readonly follows: readonly string[];
  /** Copies without a place on any film. */
  readonly waiting: number;
}

/** What of each order does not come with a run, and which runs bring it. */
export function restBeside(book: Book, run: Pick<Run, 'id' | 'name' | 'state'>): (order: string) => Rest {
  const beyond = copiesBeyond(book, (id) => id === run.id);
  const runsOf = new Map<string, Set<Run>>();
  for (const copy of Object.values(book.copy)) {
    const other = copy.state === 'placed' && copy.run !== run.id ? book.run[copy.run] : undefined;
    const order = book.transfer[copy.transfer]?.order;
    if (!other || order === undefined || copy.role !== 'ordered') continue;
    runsOf.set(order, (runsOf.get(order) ?? new Set<Run>()).add(other));
  }
  const byName = (a: Pick<Run, 'name'>, b: Pick<Run, 'name'>) =>
    a.name.localeCompare(b.name, undefined, { numeric: true });
  // The further on, the sooner it came.
  const isAhead = (other: Run) => {
    const [own, its] = [run, other].map(({ state }) => runStates.indexOf(state));
    if (own !== its) return (its ?? 0) > (own ?? 0);
    return byName(other, run) < 0;
  };
  return (order) => {
    const others = [...(runsOf.get(order) ?? [])].sort(byName);
    const names = (isMeant: (other: Run) => boolean) => others.filter(isMeant).map(({ name }) => name);
    return {
      came: names(isAhead),
      follows: names((other) => !isAhead(other)),
      waiting: beyond(order).waiting,
    };
  };
}
