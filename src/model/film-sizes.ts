import { fromInches, fromMm, type Micrometres } from '../units';

/** Rolls as the trade sells them, by width (common practice, no source). */
export const rollWidths = {
  'roll-13in': fromMm(330),
  'roll-16in': fromInches(16),
  'roll-22in': fromInches(22),
  'roll-24in': fromInches(24),
} as const satisfies Record<string, Micrometres>;

export type RollSize = keyof typeof rollWidths;
