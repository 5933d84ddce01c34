import type { Contour, Outline } from '../../../src/artwork';
import type { LaidCopy } from '../../../src/layout';
import { type Micrometres, um } from '../../../src/units';
import { sayFailed } from '../../store/failures';
import { lateChecker } from '../../store/late-checker';

/** The true outlines of copies, grown by half the gap: where two do not overlap, their copies keep the gap. */
export interface Outlines {
  /** Lines in micrometres from the corner of the artwork before it is turned; `null` while they are not there. */
  get(copy: LaidCopy, gap: Micrometres): readonly Contour[] | null;
}

/**
 * Grows outlines in a worker, once for each artwork, size and gap.
 * @param outlineOf the outline of an artwork, `null` while it is not known
 * @param onChange called when one has come in
 */
export function createOutlines(
  outlineOf: (artwork: string) => Outline | null,
  onChange: () => void,
): Outlines & { close(): void } {
  const checker = lateChecker();
  const known = new Map<string, readonly Contour[] | 'growing'>();
  return {
    get({ transfer }, gap) {
      const { artwork, width, height } = transfer;
      if (artwork === null) return null;
      const key = `${artwork} ${width}x${height} ${gap}`;
      const lines = known.get(key);
      if (lines) return lines === 'growing' ? null : lines;
      const outline = outlineOf(artwork);
      if (!outline) return null;
      known.set(key, 'growing');
      void checker
        .get()
        .then((opened) => opened.grow(outline, { width, height }, um(gap / 2)))
        .then(
          (grown) => {
            known.set(key, grown);
            onChange();
          },
          (error) => sayFailed('outline', error),
        );
      return null;
    },
    close: checker.close,
  };
}
