import { fromInches, fromMm, keysOf, type Micrometres } from '../units';
import type { Settings } from './records';

/** Rolls as the trade sells them, by width in inches (common practice, no source). */
const rollInches = {
  'roll-13in': 13,
  'roll-16in': 16,
  'roll-22in': 22,
  'roll-24in': 24,
} as const;

export type RollSize = keyof typeof rollInches;

export const rollSizes: readonly RollSize[] = keysOf(rollInches);

/** How wide a roll is; the narrowest is sold by the millimetre where that is the unit (common practice, no source). */
export const rollWidth = (size: RollSize, unit: Settings['unit']): Micrometres =>
  size === 'roll-13in' && unit === 'mm' ? fromMm(330) : fromInches(rollInches[size]);

/** Cut sheets by their trade names: A4 and A3 are ISO 216; 13 x 19 in is common practice, no source. */
export const sheetSizes = {
  'sheet-a4': { width: fromMm(210), length: fromMm(297) },
  'sheet-a3': { width: fromMm(297), length: fromMm(420) },
  'sheet-13x19in': { width: fromInches(13), length: fromInches(19) },
} as const satisfies Record<string, { width: Micrometres; length: Micrometres }>;

export type SheetSize = keyof typeof sheetSizes;

/** Film is sold no finer than this: 13 in and 330 mm are one size. */
const FINEST = fromMm(0.5);

export const isSameSize = (one: Micrometres, other: Micrometres): boolean => Math.abs(one - other) <= FINEST;
