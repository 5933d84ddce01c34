import {
  BestAreaFit,
  BestLongSideFit,
  BestShortSideFit,
  BottomLeft,
  type Heuristic,
  pack2D,
} from 'binpackingjs/2d';
import type { Problem } from '../../src/packing';

/** A copy grown by the gap, in whole micrometres. */
interface Copy {
  readonly width: number;
  readonly height: number;
  readonly turns: boolean;
}

type Packer = (copies: readonly Copy[], width: number, length: number) => boolean;

// The package's main file is not the module that it says it is.
const MAX_RECTS = 'maxrects-packer/dist/maxrects-packer.mjs';
const { MaxRectsPacker, PACKING_LOGIC } = (await import(MAX_RECTS)) as typeof import('maxrects-packer');

const maxRects =
  (logic: 0 | 1): Packer =>
  (copies, width, length) => {
    const packer = new MaxRectsPacker(width, length, 0, { smart: false, pot: false, square: false, logic });
    for (const { width: w, height: h, turns } of copies) {
      packer.add({ width: w, height: h, x: 0, y: 0, allowRotation: turns } as never);
    }
    return packer.bins.length === 1;
  };

const maximalRectangles =
  (heuristic: Heuristic): Packer =>
  (copies, width, length) => {
    const boxes = copies.map((copy) => ({ ...copy, constrainRotation: !copy.turns }));
    return pack2D({ bins: [{ width, height: length }], boxes, heuristic }).unpackedBoxes.length === 0;
  };

/** The general-purpose packers of npm, each with all its options. A third one packs near-square boxes only, not strips. */
const packers: readonly Packer[] = [
  maxRects(PACKING_LOGIC.MAX_AREA),
  maxRects(PACKING_LOGIC.MAX_EDGE),
  ...[new BestAreaFit(), new BestLongSideFit(), new BestShortSideFit(), new BottomLeft()].map(
    maximalRectangles,
  ),
];

type Key = (copy: Copy) => number;
const sorts: readonly Key[] = [
  (copy) => copy.height,
  (copy) => copy.width,
  (copy) => copy.width * copy.height,
  (copy) => copy.width + copy.height,
  (copy) => Math.max(copy.width, copy.height),
];

/**
 * The shortest strip that any of the packers finds, over sorted orders, by halving the doubt about its length.
 * @returns micrometres, lead and tail included
 */
export function bestOfPackers(problem: Problem, seconds: number): number {
  const { film, margins, gap, pieces } = problem;
  const width = film.width - margins.left - margins.right + gap;
  const copies = pieces.flatMap((piece) =>
    Array.from({ length: piece.count }, () => ({
      width: piece.width + gap,
      height: piece.length + gap,
      turns: piece.turn === 'quarter',
    })),
  );
  const area = copies.reduce((sum, copy) => sum + copy.width * copy.height, 0);
  const least = Math.ceil(area / width);
  let best = 2 * least;
  const until = performance.now() + seconds * 1000;
  for (const packs of packers) {
    for (const key of sorts) {
      const sorted = copies.toSorted((a, b) => key(b) - key(a));
      if (performance.now() > until) break;
      if (!packs(sorted, width, best - 1)) continue;
      let [low, high] = [least - 1, best - 1];
      while (high - low > 100 && performance.now() < until) {
        const middle = Math.floor((low + high) / 2);
        if (packs(sorted, width, middle)) high = middle;
        else low = middle;
      }
      best = high;
    }
  }
  return best - gap + margins.lead + margins.tail;
}
