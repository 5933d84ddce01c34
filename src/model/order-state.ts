import { countBy } from '../units';
import type { Book } from './book';
import type { Copy } from './copy';
import { copiesOfOrder, isFixed, isPrinted } from './lookup';
import type { Order } from './records';
import { type Run, runStates } from './run';

/** How far an order is. `ready` may be laid out; `part-done` has some copies printed, `printed` all. */
export type OrderState = 'waiting' | 'ready' | 'in-run' | 'part-done' | 'printed' | 'packed' | 'collected';

/** The state of an order: what was said of it, and else what its copies tell. */
export function orderState(book: Book, order: Order): OrderState {
  if (order.progress !== 'open') return order.progress;
  const own = copiesOfOrder(book, order.id);
  const wanted = own.filter(({ role }) => role !== 'filler');
  const printed = wanted.filter((copy) => {
    const run = copy.run === null ? undefined : book.run[copy.run];
    return (
      copy.state === 'shelved' ||
      (run !== undefined && isPrinted(run)) ||
      (copy.place !== null && copy.place.y < (run?.printed?.to ?? 0))
    );
  });
  if (wanted.length > 0 && printed.length === wanted.length) return 'printed';
  if (printed.length > 0) return 'part-done';
  if (own.some((copy) => copy.place !== null || isFixed(book, copy))) return 'in-run';
  return order.awaits.proof || order.awaits.blanks ? 'waiting' : 'ready';
}

/** Ordered copies that some runs do not bring to the bag. */
export interface Beyond {
  /** Without a place on any film; those that were spoiled among them. */
  readonly waiting: number;
  /** On the film of other runs. */
  readonly elsewhere: number;
}

/** What of each order does not come with the runs that are meant; the book is looked through once for all orders. */
export function copiesBeyond(book: Book, isMeant: (run: string) => boolean): (order: string) => Beyond {
  const orderOf = ({ transfer }: Copy): string | undefined => book.transfer[transfer]?.order;
  const ordered = Object.values(book.copy).filter(({ role }) => role === 'ordered');
  const waiting = countBy(
    ordered.filter(({ state }) => state === 'waiting'),
    orderOf,
  );
  const elsewhere = countBy(
    ordered.filter((copy) => copy.state === 'placed' && (copy.run === null || !isMeant(copy.run))),
    orderOf,
  );
  return (order) => ({ waiting: waiting.get(order) ?? 0, elsewhere: elsewhere.get(order) ?? 0 });
}

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
