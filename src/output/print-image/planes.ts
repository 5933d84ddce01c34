/** Each byte of a row as it differs from the one above it: filter type 2 (W3C PNG, third edition, 9.2). */
const UP = 2;

/** Colours and alpha apart, as PDF wants them; each row with its filter type before it. */
export interface Planes {
  readonly colours: Uint8Array<ArrayBuffer>;
  readonly alpha: Uint8Array<ArrayBuffer>;
}

/**
 * Parts rows of pixels into rows of colours and rows of alpha, each filtered by the row above.
 * @param pixels RGBA as one number a pixel, whole rows of `width`
 * @param above the row above the first; zeros for the first of an image
 */
export function planesOf(pixels: Uint32Array, above: Uint32Array, width: number): Planes {
  const rows = pixels.length / width;
  const colours = new Uint8Array(rows * (1 + 3 * width));
  const alpha = new Uint8Array(rows * (1 + width));
  let [colourAt, alphaAt] = [0, 0];
  let before = new Uint8Array(above.buffer, above.byteOffset, 4 * width);
  for (let row = 0; row < rows; row += 1) {
    const now = new Uint8Array(pixels.buffer, pixels.byteOffset + 4 * row * width, 4 * width);
    colours[colourAt++] = UP;
    alpha[alphaAt++] = UP;
    for (let at = 0; at < 4 * width; at += 4) {
      colours[colourAt++] = (now[at] as number) - (before[at] as number);
      colours[colourAt++] = (now[at + 1] as number) - (before[at + 1] as number);
      colours[colourAt++] = (now[at + 2] as number) - (before[at + 2] as number);
      alpha[alphaAt++] = (now[at + 3] as number) - (before[at + 3] as number);
    }
    before = now;
  }
  return { colours, alpha };
}

/**
 * Rows of one byte a pixel, each behind its filter type and filtered by the row above.
 * @param above the row above the first; zeros for the first of an image
 */
export function filteredBytes(bytes: Uint8Array, above: Uint8Array, width: number): Uint8Array<ArrayBuffer> {
  const filtered = new Uint8Array(bytes.length + bytes.length / width);
  let to = 0;
  for (let from = 0; from < bytes.length; from += width) {
    filtered[to++] = UP;
    for (let at = from; at < from + width; at += 1) {
      const over = at < width ? (above[at] as number) : (bytes[at - width] as number);
      filtered[to++] = (bytes[at] as number) - over;
    }
  }
  return filtered;
}
