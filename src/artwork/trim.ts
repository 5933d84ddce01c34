/** A box of whole pixels. */
export interface PixelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Pixels fainter than this do not print as far as a size goes. */
export const LEAST_ALPHA = 8;

/**
 * The box around all pixels with an alpha of at least {@link LEAST_ALPHA} in 255.
 * @param rgba four bytes a pixel, row by row
 * @returns `null` if no pixel is that strong
 */
export function trimBox(rgba: Uint8ClampedArray, width: number, height: number): PixelBox | null {
  const inked = (x: number, y: number) => (rgba[4 * (y * width + x) + 3] as number) >= LEAST_ALPHA;
  const rowInked = (y: number) => {
    for (let x = 0; x < width; x += 1) if (inked(x, y)) return true;
    return false;
  };
  let top = 0;
  while (top < height && !rowInked(top)) top += 1;
  if (top === height) return null;
  let bottom = height - 1;
  while (!rowInked(bottom)) bottom -= 1;
  let left = width - 1;
  let right = 0;
  for (let y = top; y <= bottom; y += 1) {
    let x = 0;
    while (x < left && !inked(x, y)) x += 1;
    left = Math.min(left, x);
    x = width - 1;
    while (x > right && !inked(x, y)) x -= 1;
    right = Math.max(right, x);
  }
  return { x: left, y: top, width: right - left + 1, height: bottom - top + 1 };
}
