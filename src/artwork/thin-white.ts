import { type Micrometres, um } from '../units';
import type { RasterCheck, Spot } from './check';
import type { Limits } from './limits';

/** What was found thin, of ink that is drawn and of dots. */
const thinInk = ({ strokes, specks, screens }: RasterCheck) => [strokes, specks, screens.dots];

/** What a width of ink has white under it, once both its sides are choked; less than nothing where none is left. */
const leftOf = (width: Micrometres, { choke }: Pick<Limits, 'choke'>): number => width - 2 * choke;

const isThin = (left: number, { white }: Pick<Limits, 'white'>): boolean => left > 0 && left < white;

/** The widths of white that hold too little, the thinnest first, and how many strokes and dots have none left. */
export function whitesOf(
  check: RasterCheck,
  limits: Limits,
): { readonly thin: readonly Micrometres[]; readonly lost: number } {
  const left = thinInk(check).flatMap((ink) => ink?.widths.map((width) => leftOf(width, limits)) ?? []);
  return {
    thin: left
      .filter((white) => isThin(white, limits))
      .sort((a, b) => a - b)
      .map(um),
    lost: left.filter((white) => white <= 0).length,
  };
}

/** Where that is. */
export function whitePlaces(
  check: RasterCheck,
  limits: Limits,
): { readonly thin: readonly Spot[]; readonly lost: readonly Spot[] } {
  const places = thinInk(check).flatMap((ink) => ink?.list ?? []);
  return {
    thin: places.filter(({ thickness }) => isThin(leftOf(thickness, limits), limits)),
    lost: places.filter(({ thickness }) => leftOf(thickness, limits) <= 0),
  };
}
