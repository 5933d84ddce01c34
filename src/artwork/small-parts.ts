import { LEAST_ALPHA, type PixelBox } from './trim';

/** Whether there is something at a pixel, counted row by row. */
type Filled = (at: number) => boolean;

interface Part {
  /** The part that this one turned out to belong to. */
  into: Part | null;
  /** A pixel of it. */
  readonly seed: number;
  x1: number;
  readonly y1: number;
  x2: number;
  y2: number;
  isTold: boolean;
}

interface Run {
  readonly first: number;
  readonly last: number;
  readonly part: Part;
}

function rootOf(part: Part): Part {
  let root = part;
  while (root.into !== null) root = root.into;
  return root;
}

function join(one: Part, other: Part): Part {
  if (one === other) return one;
  const [kept, gone] = one.y1 <= other.y1 ? [one, other] : [other, one];
  gone.into = kept;
  kept.x1 = Math.min(kept.x1, gone.x1);
  kept.x2 = Math.max(kept.x2, gone.x2);
  kept.y2 = Math.max(kept.y2, gone.y2);
  return kept;
}

const boxOf = ({ x1, y1, x2, y2 }: Part): PixelBox => ({
  x: x1,
  y: y1,
  width: x2 - x1 + 1,
  height: y2 - y1 + 1,
});

/**
 * The connected parts of what is filled, one after the other as their last row has gone by: labelling by runs in a
 * single pass (D. G. Bailey and C. T. Johnston, "Single pass connected components analysis", 2007; L. He, Y. Chao and K. Suzuki,
 * "A run-based two-scan labeling algorithm", 2008). Only two rows of runs are held, however large the image. Pixels that touch
 * at corners are connected.
 */
function* labelled(isFilled: Filled, width: number, height: number): Generator<Part> {
  let above: Run[] = [];
  for (let y = 0; y <= height; y += 1) {
    const runs: Run[] = [];
    let next = 0;
    for (let x = 0; y < height && x < width; x += 1) {
      const at = y * width + x;
      if (!isFilled(at)) continue;
      const first = x;
      while (x + 1 < width && isFilled(y * width + x + 1)) x += 1;
      let part: Part = { into: null, seed: at, x1: first, y1: y, x2: x, y2: y, isTold: false };
      while (next < above.length && (above[next] as Run).last < first - 1) next += 1;
      for (let touching = next; touching < above.length; touching += 1) {
        const run = above[touching] as Run;
        if (run.first > x + 1) break;
        part = join(rootOf(run.part), part);
      }
      runs.push({ first, last: x, part });
    }
    for (const { part } of above) {
      const root = rootOf(part);
      // Several of its runs may end here.
      if (root.y2 >= y || root.isTold) continue;
      root.isTold = true;
      yield root;
    }
    above = runs;
  }
}

/** Boxes around the connected parts of what is filled. */
export function* partBoxes(isFilled: Filled, width: number, height: number): Generator<PixelBox> {
  for (const part of labelled(isFilled, width, height)) yield boxOf(part);
}

/** Clears a part from one of its pixels on. */
function clearFrom(rgba: Uint8ClampedArray, width: number, height: number, seed: number): void {
  const waiting = [seed];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    if ((rgba[4 * at + 3] as number) < LEAST_ALPHA) continue;
    rgba.fill(0, 4 * at, 4 * at + 4);
    const [x, y] = [at % width, Math.floor(at / width)];
    for (let down = Math.max(0, y - 1); down <= Math.min(height - 1, y + 1); down += 1) {
      for (let over = Math.max(0, x - 1); over <= Math.min(width - 1, x + 1); over += 1) {
        waiting.push(down * width + over);
      }
    }
  }
}

/**
 * Takes off what prints, however faint, hangs together with nothing else and fits in a box.
 * @param rgba changed in place
 * @param fits whether a part of so many pixels is to go
 * @returns how many were taken off
 */
export function takeOffParts(
  rgba: Uint8ClampedArray,
  width: number,
  height: number,
  fits: (box: PixelBox) => boolean,
): number {
  let count = 0;
  for (const part of labelled((at) => (rgba[4 * at + 3] as number) >= LEAST_ALPHA, width, height)) {
    if (!fits(boxOf(part))) continue;
    clearFrom(rgba, width, height, part.seed);
    count += 1;
  }
  return count;
}
