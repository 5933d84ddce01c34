import { type MaskRuns, markSheet } from './mask-runs';
import { LEAST_ALPHA } from './trim';

/** A row of a matrix, or a colour. */
type Three = readonly [number, number, number];

/** A profile whose colours are found by curves and a matrix (ICC.1:2022, 8.3.3): all wide RGB spaces that artwork comes in are. */
export interface MatrixProfile {
  /** From a byte of each channel to its share of light. */
  readonly curves: readonly [Float64Array, Float64Array, Float64Array];
  /** From shares of light to those of sRGB, which lie outside of 0 to 1 for what sRGB does not hold. */
  readonly toSrgb: readonly [Three, Three, Three];
}

/**
 * From the profile connection space, XYZ under D50, to linear sRGB: the matrices of CSS Color 4, 18, sample code, multiplied
 * (XYZ_to_lin_sRGB x D50_to_D65, which adapts by Bradford).
 */
const FROM_XYZ: readonly [Three, Three, Three] = [
  [3.1341359569958707, -1.6173863321612538, -0.4906619460083532],
  [-0.978795502912089, 1.916254567259524, 0.03344273116131949],
  [0.07195537988411677, -0.2289768264158322, 1.405386058324125],
];

const s15Fixed16 = (view: DataView, at: number): number => view.getInt32(at) / 65_536;

/** What a curve makes of shares (10.6 curveType, 10.18 parametricCurveType); `null` if it is of neither type or cut off. */
function curveOf(tag: DataView): ((share: number) => number) | null {
  const type = tag.getUint32(0);
  if (type === 0x63757276) {
    const count = tag.getUint32(8);
    if (count === 0) return (share) => share;
    if (count === 1) return (share) => share ** (tag.getUint16(12) / 256);
    return (share) => {
      const place = share * (count - 1);
      const low = Math.min(count - 2, Math.floor(place));
      const [before, after] = [tag.getUint16(12 + 2 * low), tag.getUint16(14 + 2 * low)];
      return (before + (after - before) * (place - low)) / 65_535;
    };
  }
  if (type !== 0x70617261) return null;
  const kind = tag.getUint16(8);
  const [g = 1, a = 1, b = 0, c = 0, d = 0, e = 0, f = 0] = Array.from(
    { length: [1, 3, 4, 5, 7][kind] ?? 0 },
    (_, index) => s15Fixed16(tag, 12 + 4 * index),
  );
  switch (kind) {
    case 0:
      return (share) => share ** g;
    case 1:
      return (share) => (share >= -b / a ? (a * share + b) ** g : 0);
    case 2:
      return (share) => (share >= -b / a ? (a * share + b) ** g + c : c);
    case 3:
      return (share) => (share >= d ? (a * share + b) ** g : c * share);
    case 4:
      return (share) => (share >= d ? (a * share + b) ** g + e : c * share + f);
    default:
      return null;
  }
}

const TAGS = { rXYZ: 0x7258595a, gXYZ: 0x6758595a, bXYZ: 0x6258595a } as const;
const CURVES = { rTRC: 0x72545243, gTRC: 0x67545243, bTRC: 0x62545243 } as const;
/** A table from device to profile space goes before the matrix (8.3.2). */
const TABLE = 0x41324230;

/** Reads one of an RGB space; `null` if it has tables instead, or is damaged. */
export function readMatrixProfile(icc: Uint8Array): MatrixProfile | null {
  try {
    const view = new DataView(icc.buffer, icc.byteOffset, icc.byteLength);
    if (view.getUint32(36) !== 0x61637370 || view.getUint32(16) !== 0x52474220) return null;
    const tags = new Map<number, DataView>();
    for (let entry = 0; entry < Math.min(200, view.getUint32(128)); entry += 1) {
      const at = 132 + 12 * entry;
      const [start, size] = [view.getUint32(at + 4), view.getUint32(at + 8)];
      tags.set(view.getUint32(at), new DataView(icc.buffer, icc.byteOffset + start, size));
    }
    if (tags.has(TABLE)) return null;
    const columns = Object.values(TAGS).map((name): Three | null => {
      const tag = tags.get(name);
      return tag ? [s15Fixed16(tag, 8), s15Fixed16(tag, 12), s15Fixed16(tag, 16)] : null;
    });
    const curves = Object.values(CURVES).map((name) => {
      const tag = tags.get(name);
      const curve = tag && curveOf(tag);
      return curve ? Float64Array.from({ length: 256 }, (_, byte) => curve(byte / 255)) : null;
    });
    const [red, green, blue] = columns;
    const [r, g, b] = curves;
    if (!red || !green || !blue || !r || !g || !b) return null;
    const shareOf = (row: Three, column: Three) =>
      row[0] * column[0] + row[1] * column[1] + row[2] * column[2];
    const rowOf = (row: Three): Three => [shareOf(row, red), shareOf(row, green), shareOf(row, blue)];
    return { curves: [r, g, b], toSrgb: [rowOf(FROM_XYZ[0]), rowOf(FROM_XYZ[1]), rowOf(FROM_XYZ[2])] };
  } catch {
    return null;
  }
}

/** The light of an sRGB channel, linear, at so many levels of 255 (IEC 61966-2-1), below black as above it. */
const LEVEL = 4 / 255;
const LEAST_LIGHT = -LEVEL / 12.92;
const MOST_LIGHT = ((1 + LEVEL + 0.055) / 1.055) ** 2.4;

/** What of an image's ink sRGB does not hold. */
export interface Clipped {
  readonly share: number;
  readonly where: MaskRuns;
}

/**
 * Finds pixels that lose colour when they are brought to sRGB: a channel would have to be over or under its ends by four levels of 255
 * and more. Less is not seen (ours, no source).
 */
export function clipFinder(
  { width, height }: { readonly width: number; readonly height: number },
  { curves: [r, g, b], toSrgb }: MatrixProfile,
): {
  /** @param rgba as the file has them, not brought to another space; straight alpha */
  add(rgba: Uint8ClampedArray, top: number, rows: number): void;
  find(): Clipped;
} {
  const marks = markSheet(width, height);
  let [bearing, lost] = [0, 0];
  const isLost = (rgba: Uint8ClampedArray, at: number): boolean => {
    const [red, green, blue] = [
      r[rgba[at] as number] as number,
      g[rgba[at + 1] as number] as number,
      b[rgba[at + 2] as number] as number,
    ];
    return toSrgb.some((row) => {
      const light = row[0] * red + row[1] * green + row[2] * blue;
      return light < LEAST_LIGHT || light > MOST_LIGHT;
    });
  };
  return {
    add(rgba, top, rows) {
      const pixels = new Uint32Array(rgba.buffer, rgba.byteOffset, width * rows);
      let [before, is] = [0, false];
      for (let at = 0; at < pixels.length; at += 1) {
        const pixel = pixels[at] as number;
        if ((rgba[4 * at + 3] as number) < LEAST_ALPHA) continue;
        bearing += 1;
        if (pixel !== before) [before, is] = [pixel, isLost(rgba, 4 * at)];
        if (!is) continue;
        lost += 1;
        marks.mark(at % width, top + Math.floor(at / width));
      }
    },
    find: () => ({ share: bearing === 0 ? 0 : lost / bearing, where: marks.runs() }),
  };
}
