import type { LaidCopy } from '../layout';
import type { Film } from '../model';
import { areNearer, boxRing, type Lying, type SweepTurn, sweptInto } from '../outlines';
import { fromMm } from '../units';
import { hostsOf } from './holes';

type Placed = Pick<LaidCopy, 'x' | 'y' | 'width' | 'length' | 'outline'>;

const lyingOf = ({ x, y, outline, ...box }: Placed): Lying => ({ rings: outline ?? [boxRing(box)], x, y });

/** Outlines are come to from eight sides, boxes from the first four. */
const ALL_AROUND: readonly SweepTurn[] = [0, 90, 45, 135];
const SIDES = ALL_AROUND.slice(0, 2);

/** The turns along which a copy may be pushed out, forwards or backwards. */
const turnsOf = ({ outline }: Placed): readonly SweepTurn[] => (outline ? ALL_AROUND : SIDES);

/** Of each copy, from each side that it may be come to from, those of the others that it would be cut through. */
function waysOut(copies: readonly Placed[]): Set<number>[][] {
  const lying = copies.map(lyingOf);
  const ways = copies.map((copy) =>
    turnsOf(copy).map(() => ({ forwards: new Set<number>(), backwards: new Set<number>() })),
  );
  lying.forEach((one, index) => {
    lying.slice(0, index).forEach((other, before) => {
      ALL_AROUND.forEach((turn, at) => {
        const [own, others] = [ways[index]?.[at], ways[before]?.[at]];
        if (!own && !others) return;
        const { forwards, backwards } = sweptInto(one, other, turn);
        // What one runs into forwards runs into it backwards.
        if (forwards) own?.forwards.add(before);
        if (backwards) own?.backwards.add(before);
        if (forwards) others?.backwards.add(index);
        if (backwards) others?.forwards.add(index);
      });
    });
  });
  return ways.map((own) => own.flatMap(({ forwards, backwards }) => [forwards, backwards]));
}

/** Whether a copy has a free way out: from one side at least, scissors come to it without cutting through another. */
export const isReachable = (copy: Placed, others: readonly Placed[]): boolean =>
  waysOut([copy, ...others])[0]?.some((blockers) => blockers.size === 0) ?? false;

/** Outlines nearer than this hold one another by the film between them, whatever the gap. */
const HOLDS = fromMm(2);

/** Whether two copies lie side by side, so that the film between them holds them together. */
function areNeighbours(a: LaidCopy, b: LaidCopy, gap: number): boolean {
  const reach = 2 * (a.outline || b.outline ? Math.max(gap, HOLDS) : gap);
  const areNear =
    a.x < b.x + b.width + reach &&
    b.x < a.x + a.width + reach &&
    a.y < b.y + b.length + reach &&
    b.y < a.y + a.length + reach;
  return areNear && (!(a.outline || b.outline) || areNearer(lyingOf(a), lyingOf(b), reach));
}

/** Those of which one, taken away, would leave others that no longer hold together (R. Tarjan, 1972). */
function holders(neighbours: readonly ReadonlySet<number>[], left: ReadonlySet<number>): Set<number> {
  const [reached, lowest] = [new Map<number, number>(), new Map<number, number>()];
  const found = new Set<number>();
  for (const root of left) {
    if (reached.has(root)) continue;
    let roots = 0;
    const path: { readonly at: number; readonly from: number; readonly rest: Iterator<number> }[] = [];
    const enter = (at: number, from: number) => {
      reached.set(at, reached.size);
      lowest.set(at, reached.size - 1);
      path.push({ at, from, rest: (neighbours[at] ?? new Set<number>()).values() });
    };
    enter(root, -1);
    for (let here = path.at(-1); here; here = path.at(-1)) {
      const { at, from, rest } = here;
      const { value: next, done } = rest.next();
      if (!done) {
        if (!left.has(next) || next === from) continue;
        const seen = reached.get(next);
        if (seen === undefined) enter(next, at);
        else lowest.set(at, Math.min(lowest.get(at) ?? seen, seen));
        continue;
      }
      path.pop();
      if (from < 0) continue;
      const low = lowest.get(at) ?? 0;
      lowest.set(from, Math.min(lowest.get(from) ?? low, low));
      if (from === root) roots += 1;
      else if (low >= (reached.get(from) ?? 0)) found.add(from);
    }
    if (roots > 1) found.add(root);
  }
  return found;
}

const distance = (a: Placed, b: Placed): number =>
  Math.hypot(a.x + a.width / 2 - b.x - b.width / 2, a.y + a.length / 2 - b.y - b.length / 2);

/** The corner at the leading edge and the near side, where the first cut begins. */
const corner = { x: 0, y: 0, width: 0, length: 0 } as LaidCopy;

/**
 * The order in which to take copies out of a piece of film with scissors, from the outside in: always one that has a free way out, as long
 * as any has, that leaves no other hanging by itself, of the order at hand as long as there is one, and of those the nearest. What lies
 * in a copy's hole leaves the film with it, and is taken out next.
 * @param before the copy that was taken out last, of the piece before
 */
export function takingOrder(
  copies: readonly LaidCopy[],
  { gap }: Pick<Film, 'gap'>,
  before: LaidCopy | null,
): LaidCopy[] {
  const hosts = hostsOf(copies);
  const held = copies.filter((copy) => !hosts.has(copy));
  const ways = waysOut(held);
  const neighbours = held.map(
    (copy) =>
      new Set(
        held.flatMap((other, index) => (other !== copy && areNeighbours(copy, other, gap) ? [index] : [])),
      ),
  );
  const left = new Set(held.keys());
  const taken: LaidCopy[] = [];
  const take = (copy: LaidCopy): void => {
    taken.push(copy);
    for (const [inner, host] of hosts) if (host === copy) take(inner);
  };
  let last = before;
  while (left.size > 0) {
    const holding = holders(neighbours, left);
    const start = Math.min(...[...left].map((index) => held[index]?.y ?? Infinity));
    const origin = taken.length > 0 && last ? last : { ...corner, y: start as LaidCopy['y'] };
    let best = -1;
    let least: readonly number[] = [];
    for (const index of left) {
      const copy = held[index];
      if (!copy) continue;
      const key = [
        Math.min(...(ways[index] ?? []).map((blockers) => blockers.size)),
        holding.has(index) ? 1 : 0,
        copy.order.id === last?.order.id ? 0 : 1,
        distance(copy, origin),
      ];
      const at = key.findIndex((value, each) => value !== least[each]);
      if (best >= 0 && (at < 0 || (key[at] ?? 0) > (least[at] ?? 0))) continue;
      best = index;
      least = key;
    }
    const copy = held[best];
    if (!copy) break;
    left.delete(best);
    for (const own of ways) for (const blockers of own) blockers.delete(best);
    take(copy);
    last = copy;
  }
  return taken;
}
