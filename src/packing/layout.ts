import type { Build } from './build';
import type { Strip } from './strip';

/** A build that is kept: where each copy lies, in grown coordinates. */
export interface Layout {
  readonly piece: Int32Array;
  readonly bin: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly turned: Uint8Array;
  readonly tops: Float64Array;
  /** Smaller is better; comparable among layouts of the same copies. */
  readonly cost: number;
  /** Every copy that was asked for has a place. */
  readonly complete: boolean;
}

/** How much of the last sheet its clean offcut weighs, against the area of the copies on it. */
const OFFCUT = 0.6;

/**
 * What the emptiest sheet takes, as a share of a sheet: by the area of its copies, which falls with every copy that finds room
 * elsewhere, and by the length they reach along it, past which the sheet stays clean over its full width.
 */
function emptiest(build: Build, area: (piece: number) => number, width: number, length: number): number {
  const filled = new Float64Array(build.bins);
  for (let index = 0; index < build.length; index += 1) {
    const bin = build.bin[index] as number;
    filled[bin] = (filled[bin] as number) + area(build.piece[index] as number);
  }
  let least = 1;
  for (let bin = 0; bin < build.bins; bin += 1) {
    const byArea = (filled[bin] as number) / (width * length);
    const byLength = (build.tops[bin] as number) / length;
    least = Math.min(least, (1 - OFFCUT) * byArea + OFFCUT * byLength);
  }
  return least;
}

/**
 * What a build costs, in micrometres: the length of its bins; of sheets the full ones and what the emptiest
 * takes, so that a search is drawn towards emptying it. Copies without a place weigh far more than any film.
 */
export function costOf(build: Build, strip: Strip): number {
  const { bins, width, across, along, together } = strip;
  const missing = (1e3 * build.unplacedArea) / width;
  let film = lengthOf(build, strip);
  if (bins.kind === 'sheets') {
    const area = (piece: number) => (across[piece] as number) * (along[piece] as number);
    const least = build.bins === 0 ? 0 : emptiest(build, area, width, bins.other);
    film = bins.other * (Math.max(0, build.bins - 1) + least);
  }
  return missing + (together.kind === 'near' ? film * (1 + together.share * spread(build, strip)) : film);
}

/** Grown film in all bins; of sheets, whole ones. */
function lengthOf({ tops, bins: used }: Pick<Build, 'tops' | 'bins'>, { bins }: Strip): number {
  if (bins.kind === 'sheets') return used * bins.other;
  let length = bins.between * Math.max(0, used - 1);
  for (let bin = 0; bin < used; bin += 1) length += tops[bin] as number;
  return length;
}

/**
 * How far the orders are spread over the film, from near 0 to 1: the share of it from an order's first copy to its last
 * one's end, each order weighed by its copies. A layout that is near at heart may so cost up to the share of film asked for.
 */
function spread(build: Build, strip: Strip): number {
  const { rank, across, along, bins } = strip;
  const film = lengthOf(build, strip);
  if (film === 0) return 0;
  const start = new Float64Array(build.bins);
  for (let bin = 1; bin < build.bins; bin += 1) {
    const before = bins.kind === 'sheets' ? bins.other : (build.tops[bin - 1] as number) + bins.between;
    start[bin] = (start[bin - 1] as number) + before;
  }
  const extents = new Map<number, { from: number; to: number; copies: number }>();
  for (let copy = 0; copy < build.length; copy += 1) {
    const piece = build.piece[copy] as number;
    const from = (start[build.bin[copy] as number] as number) + (build.y[copy] as number);
    const to = from + ((build.turned[copy] === 1 ? across[piece] : along[piece]) as number);
    const extent = extents.get(rank[piece] as number);
    if (extent) {
      extent.from = Math.min(extent.from, from);
      extent.to = Math.max(extent.to, to);
      extent.copies += 1;
    } else extents.set(rank[piece] as number, { from, to, copies: 1 });
  }
  let weighed = 0;
  for (const { from, to, copies } of extents.values()) weighed += copies * (to - from);
  return weighed / (build.length * film);
}

/** Where the copies of a build lie and how far its bins reach, as the next build of its decoder leaves them. */
export function copied(build: Build): Pick<Layout, 'piece' | 'bin' | 'x' | 'y' | 'turned' | 'tops'> {
  const { length } = build;
  return {
    piece: build.piece.slice(0, length),
    bin: build.bin.slice(0, length),
    x: build.x.slice(0, length),
    y: build.y.slice(0, length),
    turned: build.turned.slice(0, length),
    tops: build.tops.slice(0, build.bins),
  };
}

export const keep = (build: Build, cost: number): Layout => ({
  ...copied(build),
  cost,
  complete: build.unplacedArea === 0,
});
