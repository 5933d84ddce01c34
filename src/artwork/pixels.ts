/** An image as pixels, four bytes each, straight alpha. */
export interface Pixels {
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}

/** An image with clear pixels added on all sides. */
export function padded({ rgba, width, height }: Pixels, by: number): Pixels {
  if (by === 0) return { rgba, width, height };
  const wide = width + 2 * by;
  const larger = new Uint8ClampedArray(4 * wide * (height + 2 * by));
  for (let y = 0; y < height; y += 1) {
    larger.set(rgba.subarray(4 * y * width, 4 * (y + 1) * width), 4 * ((y + by) * wide + by));
  }
  return { rgba: larger, width: wide, height: height + 2 * by };
}
