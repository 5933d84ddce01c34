import { type Curve, readCurve, tableCurve } from './curves';
import { type Grid, lookUp } from './grid';

/** A colour of CIE L*a*b* for the white of D50. */
export type Lab = readonly [lightness: number, a: number, b: number];
/** What four inks of 0..1, cyan, magenta, yellow and black, look like in print. */
export type InksToLab = (inks: readonly [number, number, number, number]) => Lab;

const ascii = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((index) => view.getUint8(at + index)));

/** Colours are told relative to the paper; a profile that has one table alone means all of them. */
const TABLES = ['A2B1', 'A2B0'];
const MOST_PLACES = 4_000_000;
const D50 = [0.964_212, 1, 0.825_188] as const;

function tagOf(view: DataView, names: readonly string[]): DataView | null {
  const count = Math.min(view.getUint32(128), 200);
  for (const name of names) {
    for (let entry = 0; entry < count; entry += 1) {
      const at = 132 + 12 * entry;
      if (ascii(view, at) !== name) continue;
      const [start, size] = [view.getUint32(at + 4), view.getUint32(at + 8)];
      if (start + size > view.byteLength) return null;
      return new DataView(view.buffer, view.byteOffset + start, size);
    }
  }
  return null;
}

function gridAt(view: DataView, at: number, sides: Grid['sides'], bytes: 1 | 2): Grid | null {
  const places = sides.reduce((product, side) => product * side, 1);
  if (places === 0 || places > MOST_PLACES || at + 3 * places * bytes > view.byteLength) return null;
  const figures = Float32Array.from({ length: 3 * places }, (_, index) =>
    bytes === 1 ? view.getUint8(at + index) / 255 : view.getUint16(at + 2 * index) / 65_535,
  );
  return { sides, figures };
}

type Three = readonly [number, number, number];
const through = (curves: readonly Curve[], figures: readonly number[]): number[] =>
  figures.map((figure, index) => curves[index]?.(figure) ?? figure);

/** lut8Type and lut16Type (ICC.1:2022, 10.11 and 10.10): curves of the inks, a table, curves of the colour. */
function oldTable(view: DataView, bytes: 1 | 2): ((inks: readonly number[]) => Three) | null {
  const [inks, channels, side] = [view.getUint8(8), view.getUint8(9), view.getUint8(10)];
  if (inks !== 4 || channels !== 3 || side < 2) return null;
  const [entries, ends] = bytes === 1 ? [256, 256] : [view.getUint16(48), view.getUint16(50)];
  const start = bytes === 1 ? 48 : 52;
  const table = (at: number, length: number): Curve =>
    tableCurve(
      Float64Array.from({ length }, (_, index) =>
        bytes === 1 ? view.getUint8(at + index) / 255 : view.getUint16(at + 2 * index) / 65_535,
      ),
    );
  const before = [0, 1, 2, 3].map((ink) => table(start + ink * entries * bytes, entries));
  const gridStart = start + 4 * entries * bytes;
  const grid = gridAt(view, gridStart, [side, side, side, side], bytes);
  if (!grid) return null;
  const after = [0, 1, 2].map((channel) =>
    table(gridStart + (grid.figures.length + channel * ends) * bytes, ends),
  );
  return (given) =>
    through(
      after,
      lookUp(grid, through(before, given) as [number, number, number, number]),
    ) as unknown as Three;
}

function curvesAt(view: DataView, at: number, count: number): Curve[] | null {
  const curves: Curve[] = [];
  for (let [index, place] = [0, at]; index < count; index += 1) {
    const read = readCurve(view, place);
    if (!read) return null;
    curves.push(read.curve);
    place += (read.bytes + 3) & ~3;
  }
  return curves;
}

/** lutAToBType (ICC.1:2022, 10.12): curves, a table, curves, a matrix, curves, of which those behind the table may be missing. */
function newTable(view: DataView): ((inks: readonly number[]) => Three) | null {
  if (view.getUint8(8) !== 4 || view.getUint8(9) !== 3) return null;
  const [b, matrixAt, m, table, a] = [12, 16, 20, 24, 28].map((at) => view.getUint32(at)) as [
    number,
    number,
    number,
    number,
    number,
  ];
  if (table === 0 || b === 0) return null;
  const sides = [0, 1, 2, 3].map((ink) => view.getUint8(table + ink)) as [number, number, number, number];
  const grid = gridAt(view, table + 20, sides, view.getUint8(table + 16) === 1 ? 1 : 2);
  const [first, middle, last] = [
    a === 0 ? [] : curvesAt(view, a, 4),
    m === 0 ? [] : curvesAt(view, m, 3),
    curvesAt(view, b, 3),
  ];
  if (!grid || !first || !middle || !last) return null;
  const matrix =
    matrixAt === 0
      ? null
      : Array.from({ length: 12 }, (_, index) => view.getInt32(matrixAt + 4 * index) / 65_536);
  const mixed = (figures: readonly number[]): number[] =>
    matrix === null
      ? [...figures]
      : [0, 1, 2].map((row) =>
          Math.min(
            1,
            Math.max(
              0,
              figures.reduce(
                (sum, figure, at) => sum + figure * (matrix[3 * row + at] as number),
                matrix[9 + row] as number,
              ),
            ),
          ),
        );
  return (given) => {
    const looked = lookUp(grid, through(first, given) as [number, number, number, number]);
    return through(last, mixed(through(middle, looked))) as unknown as Three;
  };
}

/** CIE 15: from XYZ, relative to the white of D50. */
function labOf(xyz: Three): Lab {
  const [x, y, z] = xyz.map((value, index) => {
    const ratio = value / (D50[index] as number);
    return ratio > (6 / 29) ** 3 ? Math.cbrt(ratio) : ratio / (3 * (6 / 29) ** 2) + 4 / 29;
  }) as [number, number, number];
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** A figure of lut16Type tells L* by 0xFF00, a* and b* by steps of 256 (ICC.1:2022, 6.3.4.2 and table 42). */
const OLD_16 = 65_535 / 65_280;
/** XYZ is told up to this (6.3.4.2). */
const MOST_XYZ = 1 + 32_767 / 32_768;

/**
 * Reads how a profile of four inks tells what they look like: relative to its paper, by its own table.
 * @returns `null` if it is none of four inks, or damaged
 */
export function readInks(icc: Uint8Array): InksToLab | null {
  try {
    const view = new DataView(icc.buffer, icc.byteOffset, icc.byteLength);
    if (ascii(view, 36) !== 'acsp' || ascii(view, 16) !== 'CMYK') return null;
    const tag = tagOf(view, TABLES);
    if (!tag) return null;
    const type = ascii(tag, 0);
    const table = type === 'mft1' ? oldTable(tag, 1) : type === 'mft2' ? oldTable(tag, 2) : newTable(tag);
    if (!table || (type !== 'mft1' && type !== 'mft2' && type !== 'mAB ')) return null;
    if (ascii(view, 20) === 'XYZ ') {
      return (inks) => labOf(table(inks).map((figure) => figure * MOST_XYZ) as unknown as Three);
    }
    const scale = type === 'mft2' ? OLD_16 : 1;
    return (inks) => {
      const [l, a, b] = table(inks);
      return [100 * l * scale, 255 * a * scale - 128, 255 * b * scale - 128];
    };
  } catch (error) {
    // What points beyond its end is damaged.
    if (error instanceof RangeError) return null;
    throw error;
  }
}
