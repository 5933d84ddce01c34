import type { Transfer } from '../model';

/** What one copy is printed with in full, in square millimetres. */
interface Coverage {
  readonly colour: number;
  readonly white: number;
}

/** The coverage of a transfer's artwork at its size; `null` where it was not looked at. */
export type CoverageOf = (transfer: Pick<Transfer, 'id' | 'artwork' | 'width' | 'height'>) => Coverage | null;
