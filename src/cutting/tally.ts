import type { LaidCopy } from '../layout';
import { countBy, type Micrometres } from '../units';

/** How many copies of a transfer there are, and what it takes to know one by sight. */
export interface Tally {
  readonly transfer: LaidCopy['transfer']['id'];
  readonly code: string;
  readonly name: string;
  readonly artwork: LaidCopy['transfer']['artwork'];
  readonly size: Size;
  readonly count: number;
}

/** The printed size, as the artwork stands upright. */
interface Size {
  readonly width: Micrometres;
  readonly height: Micrometres;
}

export const uprightSize = ({ turned, width, length }: LaidCopy): Size =>
  turned ? { width: length, height: width } : { width, height: length };

/** Copies counted by transfer, in the order of the orders' codes; within an order as they come out. */
export function tallyByTransfer(copies: readonly LaidCopy[]): Tally[] {
  const tallies = new Map<string, Tally>();
  for (const copy of copies) {
    const { transfer, order } = copy;
    const count = (tallies.get(transfer.id)?.count ?? 0) + 1;
    tallies.set(transfer.id, {
      transfer: transfer.id,
      code: order.code,
      name: transfer.name,
      artwork: transfer.artwork,
      size: uprightSize(copy),
      count,
    });
  }
  return [...tallies.values()].sort((a, b) => (a.code < b.code ? -1 : a.code > b.code ? 1 : 0));
}

/** How many copies of each order there are, by its code: what the pile of a span must hold. */
export function tallyByOrder(
  copies: readonly LaidCopy[],
): { readonly code: string; readonly count: number }[] {
  return [...countBy(copies, ({ order }) => order.code)]
    .map(([code, count]) => ({ code, count }))
    .sort((a, b) => (a.code < b.code ? -1 : 1));
}
