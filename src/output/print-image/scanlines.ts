/** Filter types of a scanline (W3C PNG, third edition, 9.2). */
const SUB = 1;
const UP = 2;

/** Byte by byte, what two pixels differ by: four subtractions at once, with the carries kept apart. */
const difference = (a: number, b: number): number =>
  ((a | 0x80808080) - (b & 0x7f7f7f7f)) ^ ((a ^ ~b) & 0x80808080);

/**
 * What the pixels of a row differ by from their neighbours: those above, or those before.
 * @returns how many differ at all
 */
function differences(now: Uint32Array, neighbours: Uint32Array, out: Uint32Array): number {
  let missed = 0;
  for (let x = 0; x < now.length; x += 1) {
    const pixel = now[x] as number;
    const other = neighbours[x] as number;
    if (pixel === other) out[x] = 0;
    else {
      out[x] = difference(pixel, other);
      missed += 1;
    }
  }
  return missed;
}

/** Where the row above foretells all but this share of the pixels, nothing better is looked for. */
const GOOD = 1 / 8;

/**
 * Filters rows of pixels for compression. A row is taken from the row above, or each pixel from the one before, by
 * which of the two foretells more pixels; drawn artwork is mostly flat, so that most of a row becomes zeros.
 * @param pixels RGBA as one number a pixel, `rows` rows of `width`
 * @param above the row above the first; zeros for the first of an image
 * @returns a filter type and `4 * width` bytes for each row
 */
export function filterRows(pixels: Uint32Array, above: Uint32Array, width: number): Uint8Array<ArrayBuffer> {
  const rows = pixels.length / width;
  const stride = 1 + 4 * width;
  const filtered = new Uint8Array(rows * stride);
  const [up, sub, before] = [new Uint32Array(width), new Uint32Array(width), new Uint32Array(width)];
  const [upBytes, subBytes] = [new Uint8Array(up.buffer), new Uint8Array(sub.buffer)];
  let over = above;
  for (let row = 0; row < rows; row += 1) {
    const now = pixels.subarray(row * width, (row + 1) * width);
    const at = row * stride;
    const missed = differences(now, over, up);
    let isUp = true;
    if (missed > width * GOOD) {
      before.set(now.subarray(0, width - 1), 1);
      isUp = missed <= differences(now, before, sub);
    }
    filtered[at] = isUp ? UP : SUB;
    if (missed > 0) filtered.set(isUp ? upBytes : subBytes, at + 1);
    over = now;
  }
  return filtered;
}
