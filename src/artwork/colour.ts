/** Red, green and blue, 0 to 255. */
export type Rgb = readonly [number, number, number];

/** A colour written as `#rrggbb`. */
export const rgbOf = (colour: string): Rgb => {
  const value = Number.parseInt(colour.slice(1), 16);
  return [value >> 16, (value >> 8) & 0xff, value & 0xff];
};

type Bytes = { readonly [index: number]: number };

export const colourAt = (rgba: Bytes, pixel: number): Rgb => [
  rgba[4 * pixel] as number,
  rgba[4 * pixel + 1] as number,
  rgba[4 * pixel + 2] as number,
];

/** The channel in which a pixel differs most from a colour. */
export const differenceAt = (rgba: Bytes, pixel: number, [red, green, blue]: Rgb): number =>
  Math.max(
    Math.abs((rgba[4 * pixel] as number) - red),
    Math.abs((rgba[4 * pixel + 1] as number) - green),
    Math.abs((rgba[4 * pixel + 2] as number) - blue),
  );

/** Luma, 0 to 255 (ITU-R BT.601, 2.5.1): what JPEG keeps in full where it halves the rest. */
export const luma = ([r, g, b]: Rgb): number => 0.299 * r + 0.587 * g + 0.114 * b;
