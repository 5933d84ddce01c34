import type { Build } from './build';
import type { Bins } from './strip';

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
export function costOf(
  build: Build,
  { bins, width, across, along }: { bins: Bins; width: number; across: Float64Array; along: Float64Array },
): number {
  const missing = (1e3 * build.unplacedArea) / width;
  if (bins.kind === 'sheets') {
    const area = (piece: number) => (across[piece] as number) * (along[piece] as number);
    const least = build.bins === 0 ? 0 : emptiest(build, area, width, bins.other);
    return missing + bins.other * (Math.max(0, build.bins - 1) + least);
  }
  let length = 0;
  for (let bin = 0; bin < build.bins; bin += 1) length += build.tops[bin] as number;
  return missing + length + bins.between * Math.max(0, build.bins - 1);
}

export function keep(build: Build, cost: number): Layout {
  const { length } = build;
  return {
    piece: build.piece.slice(0, length),
    bin: build.bin.slice(0, length),
    x: build.x.slice(0, length),
    y: build.y.slice(0, length),
    turned: build.turned.slice(0, length),
    tops: build.tops.slice(0, build.bins),
    cost,
    complete: build.unplacedArea === 0,
  };
}
