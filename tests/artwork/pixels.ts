/** An image made by a function of a point, in pixels from the corner; each pixel is looked at in its middle. */
export function paint(
  width: number,
  height: number,
  ink: (x: number, y: number) => readonly [number, number, number, number],
): Uint8ClampedArray {
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) rgba.set(ink(x + 0.5, y + 0.5), 4 * (y * width + x));
  }
  return rgba;
}

export const CLEAR = [0, 0, 0, 0] as const;
export const RED = [200, 0, 0, 255] as const;

/** Red where a shape is, clear elsewhere. */
export const shape = (inside: (x: number, y: number) => boolean) => (x: number, y: number) =>
  inside(x, y) ? RED : CLEAR;

/** Red as dense as the share of each pixel that a shape covers, by 8 x 8 points in it. */
export function smooth(inside: (x: number, y: number) => boolean) {
  const points = Array.from({ length: 8 }, (_, index) => (index - 3.5) / 8);
  return (x: number, y: number) => {
    let covered = 0;
    for (const dy of points) for (const dx of points) if (inside(x + dx, y + dy)) covered += 1;
    return [200, 0, 0, Math.round((255 * covered) / 64)] as const;
  };
}
