import type { EdgeLines } from '../../src/artwork/edge';

/** All four edges of one line of pixels. */
export const allRound = (pixels: readonly (readonly number[])[]): EdgeLines => {
  const line = pixels.flat();
  return { top: line, bottom: line, left: line, right: line };
};
