import type { PixelBox } from '../../artwork';

/** Pixels of a box, `count` rows of its width from row `first` on; `null` leaves them clear. */
export type RowsOf<Box> = (box: Box, first: number, count: number) => Uint32Array | null;

/** The boxes that have pixels in some rows of an image. */
export const boxesWithin = <Box extends PixelBox>(boxes: readonly Box[], from: number, rows: number): Box[] =>
  boxes.filter(({ y, height }) => y < from + rows && y + height > from);

/**
 * Fills rows of an image that is `width` pixels wide. Boxes share no pixel, so that each is copied as it is.
 * @param strip as many rows as it holds, from row `from` of the image on
 */
export function composeRows<Box extends PixelBox>(
  strip: Uint32Array,
  width: number,
  from: number,
  boxes: readonly Box[],
  rowsOf: RowsOf<Box>,
): void {
  strip.fill(0);
  const rows = strip.length / width;
  for (const box of boxesWithin(boxes, from, rows)) {
    const first = Math.max(0, from - box.y);
    const count = Math.min(box.height, from + rows - box.y) - first;
    const pixels = rowsOf(box, first, count);
    if (!pixels) continue;
    for (let row = 0; row < count; row += 1) {
      const line = pixels.subarray(row * box.width, (row + 1) * box.width);
      strip.set(line, (box.y + first + row - from) * width + box.x);
    }
  }
}

/** A strip takes about this many bytes. */
const STRIP_BYTES = 2_000_000;

/** How many rows of an image are made at a time: memory for a strip does not grow with the image. */
export const stripRows = ({ width, height }: { width: number; height: number }): number =>
  Math.min(height, Math.max(1, Math.floor(STRIP_BYTES / (4 * width))));
