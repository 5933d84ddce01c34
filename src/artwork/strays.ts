import { type Micrometres, toMm } from '../units';
import type { Pitch } from './disc';
import { LEAST_ALPHA, type PixelBox } from './trim';

/** What lies this far from all else, in micrometres, is no part of it: a full stop lies nearer to its line. */
const APART = 1000;
/** All that is stray together is no more than this share of the ink. */
const FEW = 0.01;
/** What lies by itself, and how large the rest is. */
export interface Strays {
  /** Where each lies, in pixels. */
  readonly boxes: readonly PixelBox[];
  /** Squares that hold all of them and nothing else, in pixels; those at the edge may reach beyond it. */
  readonly cells: readonly PixelBox[];
  /** Around all the rest, in pixels. */
  readonly rest: PixelBox;
}

interface Group {
  readonly cells: number[];
  ink: number;
  box: { x1: number; y1: number; x2: number; y2: number };
}

const union = (a: Group['box'], b: Group['box']): Group['box'] => ({
  x1: Math.min(a.x1, b.x1),
  y1: Math.min(a.y1, b.y1),
  x2: Math.max(a.x2, b.x2),
  y2: Math.max(a.y2, b.y2),
});

const pixelBox = ({ x1, y1, x2, y2 }: Group['box']): PixelBox => ({
  x: x1,
  y: y1,
  width: x2 - x1 + 1,
  height: y2 - y1 + 1,
});

/**
 * Finds ink that is next to nothing, however faint, and lies far from all else. The image comes in strips; it is kept as cells of
 * a millimetre, of which those that touch belong together.
 * @param pitch micrometres a pixel
 * @param largest across what may be stray, in micrometres
 */
export function strayFinder(
  { width, height }: { readonly width: number; readonly height: number },
  pitch: Pitch,
  largest: Micrometres,
): {
  /** @param rgba four bytes a pixel, straight alpha */
  add(rgba: Uint8ClampedArray, top: number, rows: number): void;
  find(): Strays | null;
} {
  const side = { x: Math.max(1, Math.round(APART / pitch.x)), y: Math.max(1, Math.round(APART / pitch.y)) };
  const [across, down] = [Math.ceil(width / side.x), Math.ceil(height / side.y)];
  const ink = new Uint32Array(across * down);
  const [left, top, right, bottom] = [width, height, 0, 0].map((start) =>
    new Uint32Array(across * down).fill(start),
  ) as [Uint32Array, Uint32Array, Uint32Array, Uint32Array];

  const addStretch = (cell: number, y: number, x1: number, x2: number): void => {
    (ink[cell] as number) += x2 - x1 + 1;
    left[cell] = Math.min(left[cell] as number, x1);
    right[cell] = Math.max(right[cell] as number, x2);
    top[cell] = Math.min(top[cell] as number, y);
    bottom[cell] = Math.max(bottom[cell] as number, y);
  };

  /** Cells that touch, beginning with one of them; each cell goes into one group. */
  const groupFrom = (first: number, seen: Uint8Array): Group => {
    const waiting = [first];
    const group: Group = { cells: [], ink: 0, box: { x1: width, y1: height, x2: 0, y2: 0 } };
    seen[first] = 1;
    for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
      group.cells.push(cell);
      group.ink += ink[cell] as number;
      group.box = union(group.box, {
        x1: left[cell] as number,
        y1: top[cell] as number,
        x2: right[cell] as number,
        y2: bottom[cell] as number,
      });
      const [column, row] = [cell % across, Math.floor(cell / across)];
      for (let y = Math.max(0, row - 1); y <= Math.min(down - 1, row + 1); y += 1) {
        for (let x = Math.max(0, column - 1); x <= Math.min(across - 1, column + 1); x += 1) {
          const next = y * across + x;
          if (ink[next] === 0 || seen[next] === 1) continue;
          seen[next] = 1;
          waiting.push(next);
        }
      }
    }
    return group;
  };

  return {
    add(rgba, from, rows) {
      for (let row = 0; row < rows; row += 1) {
        const y = from + row;
        const first = Math.floor(y / side.y) * across;
        const start = 4 * row * width + 3;
        for (let x = 0; x < width; x += 1) {
          if ((rgba[start + 4 * x] as number) < LEAST_ALPHA) continue;
          const cell = Math.floor(x / side.x);
          const end = Math.min(width, (cell + 1) * side.x);
          const x1 = x;
          while (x + 1 < end && (rgba[start + 4 * (x + 1)] as number) >= LEAST_ALPHA) x += 1;
          addStretch(first + cell, y, x1, x);
        }
      }
    },
    find() {
      const seen = new Uint8Array(ink.length);
      const groups: Group[] = [];
      for (let cell = 0; cell < ink.length; cell += 1) {
        if (ink[cell] !== 0 && seen[cell] === 0) groups.push(groupFrom(cell, seen));
      }
      const pixel = toMm(pitch.x as Micrometres) * toMm(pitch.y as Micrometres);
      const most = Math.max(...groups.map((group) => group.ink));
      const isSmall = (group: Group) => group.ink < most && group.ink * pixel <= toMm(largest) ** 2;
      const strays = groups.filter(isSmall);
      const rest = groups.filter((group) => !isSmall(group));
      const inkOf = (of: readonly Group[]) => of.reduce((sum, group) => sum + group.ink, 0);
      if (strays.length === 0 || inkOf(strays) > FEW * inkOf(rest)) return null;
      return {
        boxes: strays.map(({ box }) => pixelBox(box)),
        cells: strays.flatMap(({ cells }) =>
          cells.map((cell) => ({
            x: (cell % across) * side.x,
            y: Math.floor(cell / across) * side.y,
            width: side.x,
            height: side.y,
          })),
        ),
        rest: pixelBox(rest.map(({ box }) => box).reduce(union)),
      };
    },
  };
}
