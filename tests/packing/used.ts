import type { Plan, Span } from '../../src/packing';
import type { Micrometres } from '../../src/units';

/** The roll that a plan takes. */
export function rollUsed({ used }: Plan): { readonly length: Micrometres; readonly spans: readonly Span[] } {
  if (used.kind !== 'roll') throw new Error('the plan takes sheets');
  return used;
}

/** How many sheets a plan takes. */
export function sheetsUsed({ used }: Plan): number {
  if (used.kind !== 'sheets') throw new Error('the plan takes a roll');
  return used.sheets;
}
