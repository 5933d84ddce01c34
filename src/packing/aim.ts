import type { Limits } from './build';
import type { Layout } from './layout';
import type { Strip } from './strip';

/** How often a cycle tries to fit all into a shorter length, how much shorter, and how often a quarter of that: what is just missed else. */
const FIT_SHARE = 0.7;
const FIT_STEP = 0.002;
const NEARER = 0.25;
const NEARER_SHARE = 0.3;

/**
 * What a cycle of annealing makes small: the film, or the area that does not fit into less film, a given shorter length or one
 * sheet fewer.
 */
export type Aim =
  | { readonly kind: 'film' }
  | { readonly kind: 'fit'; readonly film: number; readonly limits: Limits };

export const FILM: Aim = { kind: 'film' };

/** What the aim of the next cycle depends on. */
interface Standing {
  readonly best: Layout | null;
  readonly limits: Limits;
  /** All lengths of a layout are multiples of it. */
  readonly unit: number;
  readonly random: () => number;
  /** No layout takes less, a length or a number of sheets; asked for only where less is to be tried. */
  readonly least: () => number;
}

/** Whether to make the film less as before, or to try to fit into less of it. */
export function nextAim({ bins }: Strip, { best, limits, unit, random, least }: Standing): Aim {
  if (bins.kind === 'spans' || !best?.complete || random() > FIT_SHARE) return FILM;
  if (bins.kind === 'sheets') {
    const film = best.tops.length - 1;
    return film >= least() ? { kind: 'fit', film, limits: { ...limits, most: film } } : FILM;
  }
  const length = best.tops[0] as number;
  const step = length * FIT_STEP * (random() < NEARER_SHARE ? NEARER : 1);
  const film = Math.max(least(), length - Math.max(unit, Math.round(step / unit) * unit));
  return film < length ? { kind: 'fit', film, limits: { ...limits, first: film, other: film } } : FILM;
}

/** All lengths of a layout are multiples of it. */
export function unitOf({ across, along, turns, count }: Strip): number {
  let unit = 0;
  const divide = (length: number) => {
    let [a, b] = [unit, length];
    while (b > 0) [a, b] = [b, a % b];
    unit = a;
  };
  for (const piece of count.keys()) {
    divide(along[piece] as number);
    if (turns[piece] === 1) divide(across[piece] as number);
  }
  return Math.max(1, unit);
}
