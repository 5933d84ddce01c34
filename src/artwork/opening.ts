import { type BitMask, bitMask, isIn, outOf } from './bit-mask';
import { discOf, grow, type Pitch, stepsOf } from './disc';
import type { PixelBox } from './trim';

/** A connected part of what an opening takes away of a shape. */
export interface Residue {
  /** In pixels of the mask, counted row by row. */
  readonly pixels: readonly number[];
  /** From each to the nearest pixel outside, in the unit of the pitch. */
  readonly depths: Float64Array;
  /** It touches nothing that is left of the shape: a dot, or the inside of a letter. */
  readonly apart: boolean;
  readonly box: PixelBox;
}

/**
 * What is left of a shape when every circle of a diameter that fits into it is taken away (a morphological opening by a disc,
 * J. Serra, "Image Analysis and Mathematical Morphology", 1982). The middles of such circles are the pixels that have none
 * outside of the shape nearer than the radius.
 * @param margin at each side, in pixels, in which nothing is looked for
 */
export function* openedAway(
  shape: BitMask,
  margin: Pitch,
  pitch: Pitch,
  diameter: number,
): Generator<Residue> {
  const { width, height } = shape;
  const outside = outOf(shape);
  const pixel = Math.sqrt(pitch.x * pitch.y);
  // From centre to centre: half a pixel lies between a centre and an edge; an even width has its middle between two centres.
  const radius = diameter / 2 + pixel / 4;
  const disc = discOf(radius, pitch);
  const covered = grow(outOf(grow(outside, disc)), discOf(radius + pixel / 2, pitch));
  const left = bitMask(width, height);
  for (let at = 0; at < left.words.length; at += 1) {
    left.words[at] = (shape.words[at] as number) & ~(covered.words[at] as number);
  }
  clearMargin(left, margin);
  const steps = stepsOf(disc, pitch);
  const distances = Float64Array.from(steps, ({ distance }) => distance);
  const longest = Math.hypot(pitch.x, pitch.y);

  for (const { pixels, cameFrom, apart } of parts(left, shape)) {
    let [x1, y1, x2, y2] = [width, height, 0, 0];
    const depths = new Float64Array(pixels.length);
    for (const [index, at] of pixels.entries()) {
      const [x, y] = [at % width, Math.floor(at / width)];
      if (x < x1) x1 = x;
      if (x > x2) x2 = x;
      if (y < y1) y1 = y;
      if (y > y2) y2 = y;
      // No nearer than its neighbour but for the way to it.
      const known = index === 0 ? 0 : (depths[cameFrom[index] as number] as number) - longest;
      let next = firstFrom(distances, known);
      let step = steps[next];
      while (step && !isIn(outside, x + step.x, y + step.y)) {
        next += 1;
        step = steps[next];
      }
      depths[index] = step?.distance ?? 0;
    }
    yield { pixels, depths, apart, box: { x: x1, y: y1, width: x2 - x1 + 1, height: y2 - y1 + 1 } };
  }
}

/** The first of ascending figures that is not below one, a hair's breadth left for rounding. */
function firstFrom(ascending: Float64Array, least: number): number {
  let [low, high] = [0, ascending.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ascending[middle] as number) < least - 1e-6) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Takes everything out within a margin. */
function clearMargin({ width, height, span, words }: BitMask, margin: Pitch): void {
  words.fill(0, 0, margin.y * span);
  words.fill(0, (height - margin.y) * span);
  for (let y = margin.y; y < height - margin.y; y += 1) {
    for (let index = 0; index < span; index += 1) {
      const [from, to] = [margin.x - 32 * index, width - margin.x - 32 * index];
      if (from > 0) (words[y * span + index] as number) &= from >= 32 ? 0 : -1 << from;
      if (to < 32) (words[y * span + index] as number) &= to <= 0 ? 0 : -1 >>> (32 - to);
    }
  }
}

/** The connected parts of what is left of a shape, for each pixel which of them it was come to from, and whether any touches more of the shape. */
function* parts(
  left: BitMask,
  shape: BitMask,
): Generator<{ pixels: readonly number[]; cameFrom: readonly number[]; apart: boolean }> {
  const { width, span } = left;
  const waiting = left.words.slice();
  const takeFrom = (x: number, y: number): boolean => {
    const at = y * span + (x >> 5);
    const bit = 1 << (x & 31);
    if (((waiting[at] as number) & bit) === 0) return false;
    (waiting[at] as number) ^= bit;
    return true;
  };
  for (let at = 0; at < waiting.length; at += 1) {
    while (waiting[at] !== 0) {
      const own = waiting[at] as number;
      const [first, row] = [32 * (at % span) + 31 - Math.clz32(own & -own), Math.floor(at / span)];
      takeFrom(first, row);
      const pixels = [row * width + first];
      const cameFrom = [0];
      let apart = true;
      for (let next = 0; next < pixels.length; next += 1) {
        const [x, y] = [(pixels[next] as number) % width, Math.floor((pixels[next] as number) / width)];
        for (let down = y - 1; down <= y + 1; down += 1) {
          for (let across = x - 1; across <= x + 1; across += 1) {
            if (takeFrom(across, down)) {
              pixels.push(down * width + across);
              cameFrom.push(next);
            } else if (apart) apart = !isIn(shape, across, down) || isIn(left, across, down);
          }
        }
      }
      yield { pixels, cameFrom, apart };
    }
  }
}
