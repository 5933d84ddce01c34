import type { LaidCopy } from '../layout';
import { countBy, inOrder, type Micrometres } from '../units';

/** Which copies of a transfer there are, and what it takes to know one by sight. */
export interface Tally {
  readonly transfer: LaidCopy['transfer']['id'];
  readonly order: LaidCopy['order'];
  readonly name: string;
  readonly artwork: LaidCopy['transfer']['artwork'];
  readonly size: Size;
  /** Of its copies, one each. */
  readonly numbers: readonly number[];
}

/** The printed size, as the artwork stands upright. */
interface Size {
  readonly width: Micrometres;
  readonly height: Micrometres;
}

export const uprightSize = ({ transfer: { width, height } }: Pick<LaidCopy, 'transfer'>): Size => ({
  width,
  height,
});

/** Copies counted by transfer, in the order of the orders' codes; within an order as they come out. */
export function tallyByTransfer(copies: readonly LaidCopy[]): Tally[] {
  const tallies = new Map<string, Tally & { readonly numbers: number[] }>();
  for (const copy of copies) {
    const { transfer, order } = copy;
    const numbers = tallies.get(transfer.id)?.numbers ?? [];
    numbers.push(copy.number);
    tallies.set(transfer.id, {
      transfer: transfer.id,
      order,
      name: transfer.name,
      artwork: transfer.artwork,
      size: uprightSize(copy),
      numbers,
    });
  }
  return [...tallies.values()].sort((a, b) => inOrder(a.order.code, b.order.code));
}

/** The fewest garments that copies can be for, none of which takes a transfer twice: as many as the most frequent one has. */
export const fewestGarments = (copies: readonly LaidCopy[]): number =>
  Math.max(0, ...tallyByTransfer(copies).map(({ numbers }) => numbers.length));

/** How many copies of each order there are, in the order of their codes: what the pile of a span must hold. */
export function tallyByOrder(
  copies: readonly LaidCopy[],
): { readonly order: LaidCopy['order']; readonly count: number }[] {
  const orders = new Map(copies.map(({ order }) => [order.id, order]));
  return [...countBy(copies, ({ order }) => order.id)]
    .flatMap(([id, count]) => {
      const order = orders.get(id);
      return order ? [{ order, count }] : [];
    })
    .sort((a, b) => inOrder(a.order.code, b.order.code));
}
