/** How opaque an image is, with a clear margin around it, so that nothing of a shape touches the edge. */
export interface AlphaRaster {
  /** With the margin on both sides. */
  readonly width: number;
  readonly height: number;
  readonly margin: number;
  /** Image pixels along a side of one pixel of this raster. */
  readonly shrink: number;
  readonly alpha: Uint8Array;
}

/**
 * Builds an alpha raster from an image that comes in strips, each pixel the mean of `shrink` x `shrink` of the image's.
 * @param width of the image, in its pixels
 */
export function alphaBuilder(
  width: number,
  height: number,
  shrink: number,
  margin: number,
): { readonly raster: AlphaRaster; add(rgba: Uint8ClampedArray, top: number, rows: number): void } {
  const across = Math.ceil(width / shrink) + 2 * margin;
  const down = Math.ceil(height / shrink) + 2 * margin;
  const alpha = new Uint8Array(across * down);
  const sums = new Float64Array(across);
  const flush = (row: number) => {
    const start = (row + margin) * across;
    for (let x = 0; x < across; x += 1)
      alpha[start + x] = Math.round((sums[x] as number) / (shrink * shrink));
    sums.fill(0);
  };
  return {
    raster: { width: across, height: down, margin, shrink, alpha },
    add(rgba, top, rows) {
      for (let y = 0; y < rows; y += 1) {
        const from = 4 * y * width + 3;
        if (shrink === 1) {
          const to = (top + y + margin) * across + margin;
          for (let x = 0; x < width; x += 1) alpha[to + x] = rgba[from + 4 * x] as number;
          continue;
        }
        for (let block = 0, x = 0; x < width; block += 1) {
          const end = Math.min(width, x + shrink);
          let sum = 0;
          for (; x < end; x += 1) sum += rgba[from + 4 * x] as number;
          sums[block + margin] = (sums[block + margin] as number) + sum;
        }
        const line = top + y;
        if (line % shrink === shrink - 1 || line === height - 1) flush(Math.floor(line / shrink));
      }
    },
  };
}
