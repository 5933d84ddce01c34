/** An image made by a function of a point, in pixels from the corner; each pixel is looked at in its middle. */
export function paint(
  width: number,
  height: number,
  ink: (x: number, y: number) => readonly [number, number, number, number],
): Uint8ClampedArray {
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const at = 4 * (y * width + x);
      const colour = ink(x + 0.5, y + 0.5);
      for (let channel = 0; channel < 4; channel += 1) rgba[at + channel] = colour[channel] ?? 0;
    }
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

/** How far from its middle a point of a pixel lies that is looked at: 3.5 of its eighths across and down. */
const REACH = Math.hypot(3.5, 3.5) / 8;

/**
 * The same of a shape that is told by how far its edge is, negative within it: away from the edge no point has to be looked at.
 * @param edge never changes by more than what lies between two points
 */
export function smoothEdge(edge: (x: number, y: number) => number) {
  const sampled = smooth((x, y) => edge(x, y) < 0);
  return (x: number, y: number) => {
    const far = edge(x, y);
    if (Math.abs(far) <= REACH + 1e-9) return sampled(x, y);
    return [200, 0, 0, far < 0 ? 255 : 0] as const;
  };
}
