import type { PixelBox } from '../../artwork';

/** Pixels of a box, `count` rows of its width from row `first` on; `null` leaves them clear. */
export type RowsOf<Box> = (box: Box, first: number, count: number) => Uint32Array | null;

/** The boxes that have pixels in some rows of an image. */
export const boxesWithin = <Box extends PixelBox>(boxes: readonly Box[], from: number, rows: number): Box[] =>
  boxes.filter(({ y, height }) => y < from + rows && y + height > from);

const overlap = (a: PixelBox, b: PixelBox): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** Lays a line of pixels into a row of others: of two on one place the one that hides more stays, whichever came first. */
function layInto(row: Uint32Array, line: Uint32Array, at: number): void {
  for (let x = 0; x < line.length; x += 1) {
    const pixel = line[x] as number;
    // Little-endian: the fourth byte is how opaque a pixel is.
    if (pixel >>> 24 > (row[at + x] as number) >>> 24) row[at + x] = pixel;
  }
}

/**
 * Fills rows of an image that is `width` pixels wide. A box that shares no pixel with one before it is copied as it is. Copies that were
 * laid out by their outlines lie in what is bare of the boxes of others: there each keeps its own pixels, and no see-through pixel of one
 * takes any of another.
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
  const within = boxesWithin(boxes, from, rows);
  for (const [index, box] of within.entries()) {
    const first = Math.max(0, from - box.y);
    const count = Math.min(box.height, from + rows - box.y) - first;
    const pixels = rowsOf(box, first, count);
    if (!pixels) continue;
    const isAlone = within.every((other, at) => at >= index || !overlap(box, other));
    for (let row = 0; row < count; row += 1) {
      const line = pixels.subarray(row * box.width, (row + 1) * box.width);
      const at = (box.y + first + row - from) * width + box.x;
      if (isAlone) strip.set(line, at);
      else layInto(strip, line, at);
    }
  }
}

/** A strip takes about this many bytes. */
const STRIP_BYTES = 2_000_000;

/** How many rows of an image are made at a time: memory for a strip does not grow with the image. */
export const stripRows = ({ width, height }: { width: number; height: number }): number =>
  Math.min(height, Math.max(1, Math.floor(STRIP_BYTES / (4 * width))));
