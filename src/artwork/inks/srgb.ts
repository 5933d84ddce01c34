import type { InksToLab, Lab } from './profile';

const D50 = [0.964_212, 1, 0.825_188] as const;
/** From XYZ for D50 to linear sRGB: IEC 61966-2-1 by the Bradford adaptation of ICC.1:2022, annex E. */
const TO_RGB = [
  [3.134_112_1, -1.617_392_4, -0.490_633_4],
  [-0.978_787_2, 1.916_256_7, 0.033_442_7],
  [0.071_983_1, -0.228_985_9, 1.405_386_1],
] as const;

const cubed = (value: number): number => (value > 6 / 29 ? value ** 3 : 3 * (6 / 29) ** 2 * (value - 4 / 29));
const encoded = (linear: number): number =>
  linear <= 0.003_130_8 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;

/** A colour as sRGB of 0..255; what lies outside of it is brought to its edge, channel by channel. */
export function srgbOf([l, a, b]: Lab): [number, number, number] {
  const y = (l + 16) / 116;
  const xyz = [cubed(y + a / 500), cubed(y), cubed(y - b / 200)].map(
    (value, at) => value * (D50[at] as number),
  );
  return TO_RGB.map((row) => {
    const linear = row.reduce((sum, factor, at) => sum + factor * (xyz[at] as number), 0);
    return Math.round(255 * encoded(Math.min(1, Math.max(0, linear))));
  }) as [number, number, number];
}

/**
 * Pixels of four inks as opaque pixels of sRGB.
 * @param inks four bytes a pixel, 255: the ink in full
 */
export function inksToRgba(inks: ArrayLike<number>, look: InksToLab): Uint8ClampedArray<ArrayBuffer> {
  const pixels = inks.length / 4;
  const rgba = new Uint8ClampedArray(4 * pixels);
  const words = new Uint32Array(rgba.buffer);
  // Drawn artwork has few colours; a photograph has its neighbours' often enough.
  const known = new Map<number, number>();
  const four = new Uint8ClampedArray(4);
  const [word] = [new Uint32Array(four.buffer)];
  for (let pixel = 0; pixel < pixels; pixel += 1) {
    const at = 4 * pixel;
    const [c, m, y, k] = [inks[at], inks[at + 1], inks[at + 2], inks[at + 3]] as [
      number,
      number,
      number,
      number,
    ];
    const key = c * 0x1000000 + m * 0x10000 + y * 0x100 + k;
    let colour = known.get(key);
    if (colour === undefined) {
      four.set(srgbOf(look([c / 255, m / 255, y / 255, k / 255])));
      four[3] = 255;
      colour = word[0] as number;
      if (known.size < MOST_KNOWN) known.set(key, colour);
    }
    words[pixel] = colour;
  }
  return rgba;
}

const MOST_KNOWN = 200_000;
