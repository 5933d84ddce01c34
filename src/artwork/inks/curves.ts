/** A curve from 0..1 to 0..1. */
export type Curve = (value: number) => number;

const clamp = (value: number): number => Math.min(1, Math.max(0, value));

/** A curve through figures at even steps, straight between them. */
export function tableCurve(table: ArrayLike<number>): Curve {
  const last = table.length - 1;
  return (value) => {
    const place = clamp(value) * last;
    const at = Math.min(Math.floor(place), Math.max(0, last - 1));
    const from = table[at] as number;
    return from + (place - at) * ((table[Math.min(at + 1, last)] as number) - from);
  };
}

/** How many figures each kind of formula has (ICC.1:2022, table 68). */
const FIGURES = [1, 3, 4, 5, 7] as const;

function formula(kind: number, [g = 1, a = 1, b = 0, c = 0, d = 0, e = 0, f = 0]: readonly number[]): Curve {
  const power = (x: number) => Math.max(0, a * x + b) ** g;
  switch (kind) {
    case 0:
      return (x) => x ** g;
    case 1:
      return (x) => (x >= -b / a ? power(x) : 0);
    case 2:
      return (x) => (x >= -b / a ? power(x) + c : c);
    case 3:
      return (x) => (x >= d ? power(x) : c * x);
    default:
      return (x) => (x >= d ? power(x) + e : c * x + f);
  }
}

/**
 * Reads a curve of a profile (ICC.1:2022, 10.6 curveType and 10.18 parametricCurveType).
 * @returns the curve and how many bytes it takes; `null` if it is none
 */
export function readCurve(view: DataView, at: number): { curve: Curve; bytes: number } | null {
  const type = view.getUint32(at);
  if (type === 0x63757276) {
    const count = view.getUint32(at + 8);
    if (count > 65_536 || at + 12 + 2 * count > view.byteLength) return null;
    const bytes = 12 + 2 * count;
    if (count === 0) return { curve: (x) => x, bytes };
    if (count === 1) {
      const gamma = view.getUint16(at + 12) / 256;
      return { curve: (x) => x ** gamma, bytes };
    }
    const table = Float64Array.from(
      { length: count },
      (_, index) => view.getUint16(at + 12 + 2 * index) / 65_535,
    );
    return { curve: tableCurve(table), bytes };
  }
  if (type !== 0x70617261) return null;
  const kind = view.getUint16(at + 8);
  const count = FIGURES[kind];
  if (count === undefined) return null;
  const figures = Array.from({ length: count }, (_, index) => view.getInt32(at + 12 + 4 * index) / 65_536);
  const own = formula(kind, figures);
  return { curve: (x) => clamp(own(x)), bytes: 12 + 4 * count };
}
