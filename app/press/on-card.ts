import type { LaidCopy, LaidRun } from '../../src/layout';
import { spoiledOn, turnsOf } from '../../src/model';
import { groupBy } from '../../src/units';
import { useShop } from '../store/shop';

/** An order on a run, with its copies there. */
export interface OnCard {
  readonly order: LaidCopy['order'];
  readonly copies: readonly LaidCopy[];
}

/** The orders of a run with some of its copies, those in a rush first, then soonest due. */
export function ordersOn({ view }: Pick<LaidRun, 'view'>, copies: readonly LaidCopy[]): OnCard[] {
  const turns = turnsOf(Object.values(view.order));
  const turnOf = ({ id }: LaidCopy['order']) => turns.get(id) ?? turns.size;
  return [...groupBy(copies, ({ order }) => order.id).values()]
    .flatMap((own) => own.slice(0, 1).map(({ order }) => ({ order, copies: own })))
    .sort((a, b) => turnOf(a.order) - turnOf(b.order) || a.order.code.localeCompare(b.order.code));
}

/** What of a run goes on its cards: what was spoiled on it is in no bag. */
export function useOnCards(run: LaidRun): {
  readonly copies: readonly LaidCopy[];
  readonly orders: OnCard[];
} {
  const book = useShop((shop) => shop.book);
  const spoiled = spoiledOn(book, run.id);
  const copies = run.copies.filter(({ id }) => !spoiled.has(id));
  return { copies, orders: ordersOn(run, copies) };
}

/** How many copies of a transfer are printed again, among some. */
export function reprintsAmong(
  { view }: Pick<LaidRun, 'view'>,
  copies: readonly LaidCopy[],
  transfer: string,
): number {
  const reprints = view.reprints();
  return copies.filter((copy) => copy.transfer.id === transfer && reprints.has(copy.id)).length;
}
