import { fromInches, fromMm, type Micrometres } from '../units';

/** Rolls as the trade sells them, by width (common practice, no source). */
export const rollWidths = {
  'roll-13in': fromMm(330),
  'roll-16in': fromInches(16),
  'roll-22in': fromInches(22),
  'roll-24in': fromInches(24),
} as const satisfies Record<string, Micrometres>;

export type RollSize = keyof typeof rollWidths;

/** Cut sheets by their trade names: A4 and A3 are ISO 216; 13 x 19 in is common practice, no source. */
export const sheetSizes = {
  'sheet-a4': { width: fromMm(210), length: fromMm(297) },
  'sheet-a3': { width: fromMm(297), length: fromMm(420) },
  'sheet-13x19in': { width: fromInches(13), length: fromInches(19) },
} as const satisfies Record<string, { width: Micrometres; length: Micrometres }>;

export type SheetSize = keyof typeof sheetSizes;
