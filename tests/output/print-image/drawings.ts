import { seededRandom } from '../../../src/units';
import { type Picture, paint } from './reference';

type Colour = readonly [number, number, number, number];
const CLEAR: Colour = [0, 0, 0, 0];

/** A disc with rings in flat colours and a soft edge, as most drawn artwork is. */
export const emblem = (width: number, height: number, seed: number): Picture =>
  paint(width, height, (x, y) => {
    const [u, v] = [(2 * x) / width - 1, (2 * y) / height - 1];
    const radius = Math.hypot(u, v);
    const edge = ((1 - radius) * width) / 2;
    if (edge <= 0) return CLEAR;
    const ring = Math.floor(radius * 7 + Math.atan2(v, u) + seed) % 3;
    const colour = [
      [190, 40 + seed * 9, 30],
      [30, 60, 120 + seed * 5],
      [240, 230, 210],
    ][Math.abs(ring)] ?? [0, 0, 0];
    return [colour[0] ?? 0, colour[1] ?? 0, colour[2] ?? 0, Math.min(255, Math.round(edge * 255))];
  });

/** A smooth shade on a plate with round corners. */
export const shade = (width: number, height: number): Picture =>
  paint(width, height, (x, y) => {
    const corner = width / 8;
    const [a, b] = [
      Math.max(corner - x, x - width + corner, 0),
      Math.max(corner - y, y - height + corner, 0),
    ];
    return Math.hypot(a, b) > corner
      ? CLEAR
      : [Math.round((255 * x) / width), Math.round((255 * y) / height), 120, 255];
  });

/** Grain over a shade: no two pixels alike, as in a photograph. */
export function grain(width: number, height: number): Picture {
  const random = seededRandom(7);
  return paint(width, height, (x, y) => {
    const light = 128 + 90 * Math.sin(x / 90) * Math.cos(y / 70) + 12 * (random() - 0.5);
    return [Math.round(light), Math.round(light * 0.8), Math.round(light * 0.6), 255];
  });
}
