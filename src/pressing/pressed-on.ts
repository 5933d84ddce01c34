import type { LaidCopy } from '../layout';
import type { RunView } from '../model';

/** Whether a copy of a run is pressed here: a spare one is not, nor is one that the customer presses. */
export const pressedOn =
  ({ order, copy }: Pick<RunView, 'order' | 'copy'>) =>
  ({ id, order: { id: of } }: LaidCopy): boolean =>
    order[of]?.wants !== 'transfers' && copy[id]?.role !== 'over';
