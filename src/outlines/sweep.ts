import type { Lying } from './near';
import type { Ring } from './ring';

/** The ways in which a shape is pushed: along each of these turns, in degrees, forwards and backwards. */
export type SweepTurn = 0 | 45 | 90 | 135;

/** Rows in which shapes are compared, in micrometres: finer than a hand. */
const ROW = 250;

/** A shape turned so that it is pushed along one axis: of each row across that axis how far its points reach either way. */
interface Profile {
  readonly from: number;
  readonly to: number;
  /** The furthest of all rows. */
  readonly begin: number;
  readonly end: number;
  readonly least: Float64Array;
  readonly most: Float64Array;
}

const known = new WeakMap<readonly Ring[], Map<SweepTurn, Profile>>();

const SINES: Readonly<Record<SweepTurn, readonly [cos: number, sin: number]>> = {
  0: [1, 0],
  45: [Math.SQRT1_2, Math.SQRT1_2],
  90: [0, 1],
  135: [-Math.SQRT1_2, Math.SQRT1_2],
};

function profileOf(rings: readonly Ring[], turn: SweepTurn): Profile {
  const own = known.get(rings) ?? new Map<SweepTurn, Profile>();
  known.set(rings, own);
  const made = own.get(turn);
  if (made) return made;
  const [cos, sin] = SINES[turn];
  const lines = rings.map((ring) => {
    const line = new Float64Array(ring.length);
    for (let at = 0; at < ring.length; at += 2) {
      const [x, y] = [ring[at] as number, ring[at + 1] as number];
      line[at] = x * cos + y * sin;
      line[at + 1] = y * cos - x * sin;
    }
    return line;
  });
  let [from, to, begin, end] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const line of lines)
    for (let at = 0; at < line.length; at += 2) {
      begin = Math.min(begin, line[at] as number);
      end = Math.max(end, line[at] as number);
      from = Math.min(from, line[at + 1] as number);
      to = Math.max(to, line[at + 1] as number);
    }
  const rows = Math.max(1, Math.ceil((to - from) / ROW));
  const [least, most] = [new Float64Array(rows).fill(Infinity), new Float64Array(rows).fill(-Infinity)];
  for (const line of lines) {
    let [x0, y0] = [line.at(-2) as number, line.at(-1) as number];
    for (let at = 0; at < line.length; at += 2) {
      const [x1, y1] = [line[at] as number, line[at + 1] as number];
      const [low, high] = [Math.min(y0, y1), Math.max(y0, y1)];
      const last = Math.min(rows - 1, Math.floor((high - from) / ROW));
      for (let row = Math.min(rows - 1, Math.floor((low - from) / ROW)); row <= last; row += 1) {
        const xAt = (y: number) => (y1 === y0 ? x0 : x0 + ((y - y0) * (x1 - x0)) / (y1 - y0));
        const a = y1 === y0 ? x0 : xAt(Math.max(low, from + row * ROW));
        const b = y1 === y0 ? x1 : xAt(Math.min(high, from + (row + 1) * ROW));
        least[row] = Math.min(least[row] as number, a, b);
        most[row] = Math.max(most[row] as number, a, b);
      }
      [x0, y0] = [x1, y1];
    }
  }
  const profile = { from, to, begin, end, least, most };
  own.set(turn, profile);
  return profile;
}

/**
 * Whether one shape, pushed straight away in its plane, would run into another that it does not overlap: forwards along a direction, which
 * is x turned towards y, and backwards. Told so for some that only pass within half a millimetre; never not told.
 */
export function sweptInto(
  moving: Lying,
  still: Lying,
  turn: SweepTurn,
): { readonly forwards: boolean; readonly backwards: boolean } {
  const [cos, sin] = SINES[turn];
  const [own, other] = [profileOf(moving.rings, turn), profileOf(still.rings, turn)];
  const x = (still.x - moving.x) * cos + (still.y - moving.y) * sin;
  const y = (still.y - moving.y) * cos - (still.x - moving.x) * sin;
  const from = Math.max(own.from, other.from + y);
  const to = Math.min(own.to, other.to + y);
  if (from >= to) return { forwards: false, backwards: false };
  if (other.begin + x >= own.end) return { forwards: true, backwards: false };
  if (other.end + x <= own.begin) return { forwards: false, backwards: true };
  let [forwards, backwards] = [false, false];
  const first = Math.floor((from - own.from) / ROW);
  const end = Math.min(own.least.length - 1, Math.floor((to - own.from) / ROW));
  for (let row = first; row <= end && !(forwards && backwards); row += 1) {
    const begins = own.from + row * ROW - y - other.from;
    const last = Math.min(other.least.length - 1, Math.floor((begins + ROW) / ROW));
    for (let beside = Math.max(0, Math.floor(begins / ROW)); beside <= last; beside += 1) {
      if ((other.most[beside] as number) + x > (own.least[row] as number)) forwards = true;
      if ((other.least[beside] as number) + x < (own.most[row] as number)) backwards = true;
    }
  }
  return { forwards, backwards };
}
