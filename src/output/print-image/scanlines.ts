/** Filter types of a scanline (W3C PNG, third edition, 9.2). */
const NONE = 0;
const SUB = 1;
const UP = 2;

/** Byte by byte, what two pixels differ by: four subtractions at once, with the carries kept apart. */
const difference = (a: number, b: number): number =>
  ((a | 0x80808080) - (b & 0x7f7f7f7f)) ^ ((a ^ ~b) & 0x80808080);

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
  const up = new Uint32Array(width);
  const sub = new Uint32Array(width);
  const [upBytes, subBytes] = [new Uint8Array(up.buffer), new Uint8Array(sub.buffer)];
  let before = above;
  for (let row = 0; row < rows; row += 1) {
    const now = pixels.subarray(row * width, (row + 1) * width);
    let missedUp = 0;
    let missedSub = 0;
    let left = 0;
    for (let x = 0; x < width; x += 1) {
      const pixel = now[x] as number;
      const over = before[x] as number;
      if (pixel === over) up[x] = 0;
      else {
        up[x] = difference(pixel, over);
        missedUp += 1;
      }
      if (pixel === left) sub[x] = 0;
      else {
        sub[x] = difference(pixel, left);
        missedSub += 1;
      }
      left = pixel;
    }
    const at = row * stride;
    if (missedUp === 0) filtered[at] = UP;
    else if (missedSub === 0) filtered[at] = NONE;
    else if (missedUp <= missedSub) {
      filtered[at] = UP;
      filtered.set(upBytes, at + 1);
    } else {
      filtered[at] = SUB;
      filtered.set(subBytes, at + 1);
    }
    before = now;
  }
  return filtered;
}
