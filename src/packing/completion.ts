import { compareEach } from '../units';

/** Orders are compared by their ranks, the lower the sooner. */
const ascending = (a: number, b: number): number => a - b;

/** Something printed in one go: how much film it takes, and the ranks of the copies on it. */
export interface Part {
  readonly length: number;
  readonly ranks: ReadonlySet<number>;
}

/** The ranks of all parts, the soonest first. */
const ranksOf = (parts: readonly Part[]): number[] =>
  [...new Set(parts.flatMap(({ ranks }) => [...ranks]))].sort(ascending);

/** Tells for an order of parts how much film is printed until each rank is complete, the soonest rank first. */
export function completionsOf(parts: readonly Part[]): (order: readonly number[]) => readonly number[] {
  const ranks = ranksOf(parts);
  const held = parts.map(({ ranks: own }) => ranks.flatMap((rank, index) => (own.has(rank) ? [index] : [])));
  return (order) => {
    const ends = new Array<number>(ranks.length).fill(0);
    let printed = 0;
    for (const part of order) {
      printed += parts[part]?.length ?? 0;
      for (const rank of held[part] ?? []) ends[rank] = printed;
    }
    return ends;
  };
}

/**
 * Puts parts in the order in which the soonest rank is complete after the least film, then the next, and so on: each rank parts the
 * last group that holds any of it, those with it first. No later rank undoes what an earlier one was given, so that the order is
 * the best there is; parts that no rank tells apart stay as they were.
 * @returns the indices of the parts
 */
export function soonestComplete(parts: readonly Part[]): number[] {
  let groups: number[][] = [[...parts.keys()]];
  for (const rank of ranksOf(parts)) {
    const has = (index: number) => parts[index]?.ranks.has(rank) ?? false;
    const last = groups.findLastIndex((group) => group.some(has));
    groups = groups.flatMap((group, at) =>
      at === last ? [group.filter(has), group.filter((index) => !has(index))] : [group],
    );
  }
  return groups.flat();
}

const moved = (order: readonly number[], from: number, to: number): number[] => {
  const next = order.toSpliced(from, 1);
  next.splice(to, 0, order[from] ?? 0);
  return next;
};

const neighbours = (order: readonly number[]): number[][] =>
  order.flatMap((_, from) => order.map((__, to) => moved(order, from, to)));

/** All orders of so many parts. */
const ordersOf = (parts: number): number[][] =>
  parts === 0
    ? [[]]
    : ordersOf(parts - 1).flatMap((order) =>
        Array.from({ length: parts }, (_, at) => order.toSpliced(at, 0, parts - 1)),
      );

/** Of so many parts every order is tried. */
const FEW_PARTS = 5;
/** Of more parts than this the best order is taken or none. */
const MOST_PARTS = 30;
/** Orders that are asked about, the best first. */
const MOST_ASKED = 120;

/**
 * The best order of parts that may be: the best of all; else, of few parts, the best of the others; of more, the best that moves of one part
 * at a time lead to, from the best of all and from how they lie.
 * @param mayBe whether parts may lie in an order; they may as they lie
 */
export function soonestAllowed(
  parts: readonly Part[],
  mayBe: (order: readonly number[]) => boolean,
): readonly number[] {
  const best = soonestComplete(parts);
  if (mayBe(best)) return best;
  const costOf = completionsOf(parts);
  let asked = 0;
  const firstAllowed = (orders: readonly (readonly number[])[], than: readonly number[]) =>
    orders
      .map((order) => ({ order, cost: costOf(order) }))
      .filter(({ cost }) => compareEach(cost, than) < 0)
      .sort((a, b) => compareEach(a.cost, b.cost))
      .find(({ order }) => {
        asked += 1;
        return asked <= MOST_ASKED && mayBe(order);
      })?.order;
  let found: readonly number[] = [...parts.keys()];
  if (parts.length > MOST_PARTS) return found;
  if (parts.length <= FEW_PARTS) return firstAllowed(ordersOf(parts.length), costOf(found)) ?? found;
  let from = [best, found];
  for (;;) {
    const next = firstAllowed(from.flatMap(neighbours), costOf(found));
    if (!next) return found;
    found = next;
    from = [next];
  }
}
