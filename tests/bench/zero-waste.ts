import type { Piece, Problem } from '../../src/packing';
import { seededRandom, um } from '../../src/units';
import { rollUsed } from '../packing/used';
import { planFor } from './plan-for';
import { mean, printTable } from './table';

interface Rect {
  readonly width: number;
  readonly length: number;
}

type Random = () => number;

/** A part of a rectangle cut in two, or in more. */
type Cut = (rect: Rect, random: Random) => Rect[];

const halved: Cut = ({ width, length }, random) => {
  const share = 0.25 + 0.5 * random();
  if (width * (0.6 + 0.8 * random()) >= length) {
    const first = Math.max(1, Math.min(width - 1, Math.round(width * share)));
    return [
      { width: first, length },
      { width: width - first, length },
    ];
  }
  const first = Math.max(1, Math.min(length - 1, Math.round(length * share)));
  return [
    { width, length: first },
    { width, length: length - first },
  ];
};

/** Four pieces around a fifth, which no straight cut parts. */
const pinwheel: Cut = ({ width, length }, random) => {
  const at = (side: number, from: number, to: number) =>
    Math.max(1, Math.min(side - 1, Math.round(side * (from + (to - from) * random()))));
  const [x, u] = [at(width, 0.2, 0.45), at(width, 0.55, 0.8)];
  const [y, v] = [at(length, 0.2, 0.45), at(length, 0.55, 0.8)];
  if (u - x < 1 || v - y < 1) return halved({ width, length }, random);
  return [
    { width: u, length: y },
    { width: width - u, length: v },
    { width: width - x, length: length - v },
    { width: x, length: length - y },
    { width: u - x, length: v - y },
  ];
};

/**
 * Strips cut up without waste, so that the shortest length is known: the kinds of published sets (cut by straight lines, as
 * E. K. Burke, G. Kendall and G. Whitwell, Operations Research 52(4), 2004, do; by lines that straight cuts do not part, as
 * E. Hopper and B. C. H. Turton, European Journal of Operational Research 128(1), 2001, do), with sizes of our own.
 */
const families: readonly { readonly name: string; readonly side: number; readonly cut: Cut }[] = [
  { name: 'straight cuts, coarse sizes', side: 200, cut: halved },
  { name: 'straight cuts, fine sizes', side: 200_000, cut: halved },
  { name: 'pinwheels, fine sizes', side: 200_000, cut: pinwheel },
];

const counts = [10, 30, 100, 300, 1000, 3000];

/** Cuts the largest part again and again; of equal parts the first. */
function cutUp(side: number, cut: Cut, pieces: number, random: Random): Rect[] {
  const parts: Rect[] = [{ width: side, length: side }];
  while (parts.length < pieces) {
    let largest = 0;
    const area = (rect: Rect | undefined) => (rect ? rect.width * rect.length : 0);
    for (const index of parts.keys()) if (area(parts[index]) > area(parts[largest])) largest = index;
    const [part] = parts.splice(largest, 1);
    if (!part || (part.width < 2 && part.length < 2)) break;
    parts.push(...cut(part, random));
  }
  return parts;
}

function problemOf(side: number, rects: readonly Rect[], turn: Piece['turn']): Problem {
  const kinds = new Map<string, Piece>();
  for (const { width, length } of rects) {
    const key = `${width} x ${length}`;
    const kind = kinds.get(key) ?? { id: key, width: um(width), length: um(length), count: 0, turn, rank: 0 };
    kinds.set(key, { ...kind, count: kind.count + 1 });
  }
  const none = um(0);
  return {
    film: { kind: 'roll', width: um(side), lengthLimit: null, spanMax: null, cutBlank: none, noPrint: [] },
    margins: { left: none, right: none, lead: none, tail: none },
    gap: none,
    cutting: 'free',
    together: { kind: 'any' },
    pieces: [...kinds.values()],
    pinned: [],
  };
}

/** Plans strips that were cut up without waste and prints how much longer than they were the plans are. */
export function benchZeroWaste(seconds: number, seed: number): void {
  const rows = families.flatMap(({ name, side, cut }) =>
    (['fixed', 'quarter'] as const).map((turn) => {
      const gaps = counts.map((count) => {
        const rects = cutUp(side, cut, count, seededRandom(100 * seed + count));
        const { plan } = planFor(problemOf(side, rects, turn), { seconds, seed });
        return 100 * (rollUsed(plan).length / side - 1);
      });
      return [name, turn === 'fixed' ? 'fixed' : 'turning', ...gaps, mean(gaps)].map((cell) =>
        typeof cell === 'number' ? `${cell.toFixed(2)}%` : cell,
      );
    }),
  );
  printTable(
    `Strips cut up without waste, ${seconds} s each: longer than the shortest by`,
    ['family', 'pieces are', ...counts.map(String), 'mean'],
    rows,
  );
}
