import {
  type Blank,
  type Book,
  type Garment,
  type Id,
  linesFor,
  type Order,
  ordersOfRun,
  type Run,
  runView,
} from '../model';
import { countBy, groupBy, inOrder } from '../units';
import { standing } from './counter';
import { isSameBlank, suppliesOf, takenBlanks, takenFor } from './supplies';

/** Garments of one kind that a run prints for an order: pressed ones, and those that came to nothing. */
export interface RunBlanks {
  readonly blank: Blank;
  readonly order: Pick<Order, 'id' | 'code' | 'name'>;
  readonly used: number;
  readonly spoiled: number;
}

/**
 * The blanks in stock that a run uses. Several places on a garment take it once: of the transfers that go on the same garments,
 * the one with the most copies counts, and what an earlier run took for the order is not taken again.
 */
export function blanksOfRun(book: Book, run: Run): RunBlanks[] {
  if (run.state === 'draft') return [];
  const view = runView(book, run);
  const blanks = suppliesOf(book, 'blank').filter((item): item is Blank => item.kind === 'blank');
  const blankOf = (line: Garment) => blanks.find((blank) => isSameBlank(blank, line));
  const spoilt = Object.values(book.spoilage).filter((own) => own.run === run.id);
  const spoiltCopies = new Set<string>(spoilt.map(({ copy }) => copy));
  const copies = Object.values(view.copy);
  const onGarments = countBy(copies, ({ id, role, transfer }): string | undefined =>
    role === 'over' || spoiltCopies.has(id) ? undefined : transfer,
  );
  return Object.values(ordersOfRun(book, run)).flatMap((order): RunBlanks[] => {
    const lines = Object.values(view.garment).filter((line) => line.order === order.id);
    if (order.wants !== 'garments' || lines.length === 0) return [];
    const used = new Map<Blank, number>();
    const spoiled = new Map<Blank, number>();
    for (const transfer of Object.values(view.transfer).filter((each) => each.order === order.id)) {
      // Listed by hand, it may go on any of them.
      const own = linesFor(view, transfer, lines) ?? lines;
      const wanted = new Map<Blank, number>();
      for (const line of own) {
        const blank = blankOf(line);
        if (blank) wanted.set(blank, (wanted.get(blank) ?? 0) + line.count);
      }
      let left = onGarments.get(transfer.id) ?? 0;
      for (const [blank, count] of wanted) {
        const takes = Math.max(0, Math.min(left, count - takenFor(book.entry, blank.id, order.id)));
        used.set(blank, Math.max(used.get(blank) ?? 0, takes));
        left -= takes;
      }
      const [first] = wanted.keys();
      const lost = spoilt.filter(
        ({ copy, garment }) => garment && view.copy[copy]?.transfer === transfer.id,
      ).length;
      if (first) spoiled.set(first, (spoiled.get(first) ?? 0) + lost);
    }
    return [...new Set([...used.keys(), ...spoiled.keys()])]
      .map((blank) => ({ blank, order, used: used.get(blank) ?? 0, spoiled: spoiled.get(blank) ?? 0 }))
      .filter((each) => each.used + each.spoiled > 0);
  });
}

/**
 * How many blanks each order needs once more for a run: for garments that were spoiled under a copy which this run prints again, or which
 * still waits to be.
 */
export function blanksAgain(book: Book, run: Run): ReadonlyMap<string, number> {
  const view = runView(book, run);
  const reprints = view.reprints();
  const spoilt = groupBy(Object.values(book.spoilage), ({ copy }) => copy);
  const again = [...spoilt].flatMap(([copy, all]) => {
    const times = all.toSorted((a, b) => inOrder(a.changed, b.changed));
    const here = times.findIndex((own) => own.run === run.id);
    const before = here === -1 ? times.at(-1) : times[here - 1];
    const waits = here === times.length - 1 && book.copy[copy]?.state !== 'placed';
    return [
      ...(before?.garment && reprints.has(copy) ? [copy] : []),
      ...(waits && times[here]?.garment ? [copy] : []),
    ];
  });
  const counts = countBy(again, (copy) => view.transfer[view.copy[copy]?.transfer ?? '']?.order);
  return new Map([...counts].map(([order, count]) => [order, count]));
}

/** What closing a run takes of a blank. */
export interface TakenBlanks {
  readonly blank: Id<'item'>;
  readonly order: Id<'order'>;
  readonly used: number;
  readonly spoiled: number;
}

/** The blanks that a closed run has taken, by the entries that still count; those that are no longer kept are left out. */
export function blanksTaken(book: Book, run: Run): RunBlanks[] {
  const orders = ordersOfRun(book, run);
  const own = standing(book.entry, (entry) => entry.run === run.id && entry.order !== null);
  const pairs = new Map(own.map(({ item, order }) => [`${item} ${order}`, { item, order }]));
  return [...pairs.values()].flatMap(({ item, order: id }): RunBlanks[] => {
    const blank = book.item[item];
    const order = id === null ? undefined : orders[id];
    if (blank?.kind !== 'blank' || !order) return [];
    return [{ blank, order, ...takenBlanks(book.entry, run.id, item, order.id) }];
  });
}
