import { uprightSize } from '../cutting';
import type { LaidCopy } from '../layout';
import type { Press, RunView } from '../model';
import { fitsOn } from './loads';
import { isOnCap } from './measures';

/** The presses that take a transfer: it lies on their platen, and on a cap they have a curved one for it. */
export function pressesFor(view: RunView, presses: readonly Press[], copy: LaidCopy): Press[] {
  const { width, height } = uprightSize(copy);
  const isCap = isOnCap(view, copy);
  return presses.filter(({ platen, caps }) => (caps || !isCap) && fitsOn({ width, length: height }, platen));
}
