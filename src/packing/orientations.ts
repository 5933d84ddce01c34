import type { Strip } from './strip';

/** No orientation, no run. */
export const NONE = -1;

/** The ways all pieces of a strip may lie, to be found by width or by length. */
export interface Orientations {
  /** Widths, ascending; with each the piece, whether it is turned, and its length. */
  readonly widths: Float64Array;
  readonly pieces: Int32Array;
  readonly turned: Uint8Array;
  readonly lengths: Float64Array;
  /** The lengths once more, ascending, and where each is among the widths. */
  readonly sortedLengths: Float64Array;
  readonly byLength: Int32Array;
  /** Of each the same piece the other way; `NONE` if it may not turn. */
  readonly other: Int32Array;
  /** Where each piece stands as it is given, and turned; as it is given once more, if it may not turn. */
  readonly asGiven: Int32Array;
  readonly quarter: Int32Array;
}

export function orientationsOf({ across, along, turns, count }: Strip): Orientations {
  const ways = [...count.keys()].flatMap((piece) => {
    const [w, h] = [across[piece] as number, along[piece] as number];
    const lying = { piece, turned: 0, w, h };
    return turns[piece] === 1 ? [lying, { piece, turned: 1, w: h, h: w }] : [lying];
  });
  ways.sort((a, b) => a.w - b.w || a.piece - b.piece || a.turned - b.turned);
  const byLength = [...ways.keys()].sort((a, b) => (ways[a]?.h ?? 0) - (ways[b]?.h ?? 0) || a - b);
  const entryOf = new Map(ways.map(({ piece, turned }, entry) => [2 * piece + turned, entry]));
  return {
    other: Int32Array.from(ways, ({ piece, turned }) => entryOf.get(2 * piece + 1 - turned) ?? NONE),
    asGiven: Int32Array.from(count.keys(), (piece) => entryOf.get(2 * piece) ?? NONE),
    quarter: Int32Array.from(
      count.keys(),
      (piece) => entryOf.get(2 * piece + 1) ?? entryOf.get(2 * piece) ?? NONE,
    ),
    widths: Float64Array.from(ways, ({ w }) => w),
    pieces: Int32Array.from(ways, ({ piece }) => piece),
    turned: Uint8Array.from(ways, ({ turned }) => turned),
    lengths: Float64Array.from(ways, ({ h }) => h),
    sortedLengths: Float64Array.from(byLength, (entry) => ways[entry]?.h ?? 0),
    byLength: Int32Array.from(byLength),
  };
}

/** How many of ascending numbers are no greater than a limit: the last of them stands just before this index. */
export function countUpTo(ascending: Float64Array, limit: number): number {
  let low = 0;
  let high = ascending.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ascending[middle] as number) > limit) high = middle;
    else low = middle + 1;
  }
  return low;
}
