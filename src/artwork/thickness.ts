import { type BitMask, isIn } from './bit-mask';
import { discOf, type Pitch, type Step, stepsOf } from './disc';
import { HALF } from './ink-mask';
import type { Residue } from './opening';
import type { PixelBox } from './trim';

/** A shape of which the edges are known between pixels. */
export interface MeasuredShape {
  readonly mask: BitMask;
  readonly pitch: Pitch;
  /** Pixels of the mask along one of the raster that it was made from. */
  readonly finer: Pitch;
  /** How much of the shape there is at a point, in pixels of the mask: more than {@link HALF} within it. */
  shareAt(x: number, y: number): number;
}

/** The part of a residue that is thinner than a width. */
interface Thinness {
  /** Across the thinnest place of it. */
  readonly width: number;
  /** Around the middle line of what is thinner, in pixels of the mask. */
  readonly box: PixelBox;
}

/** Depths are kept in so many steps of the widest circle. */
const STEPS = 250;
/** Stands for what is left of the shape. */
const LEFT = 255;
/** On a flank of a stroke the next pixel inwards is deeper by nearly its distance, on the ridge by nothing. */
const FLANK = 0.25;
/** Towards a corner, or a tip, a middle line gets shallower by more than this share of its length. */
const SLOPE = 0.2;

/** What is looked at around a place: steps to other pixels, and how much deeper than the place they have to be to tell. */
interface Around {
  readonly x: Int16Array;
  readonly y: Int16Array;
  readonly rise: Float64Array;
}

/** How thin places are measured that no circle of a size fits into; the same for all of a shape. */
export interface Gauge {
  readonly limit: number;
  /** No circle that fits is larger. */
  readonly widest: number;
  /** Steps to all pixels of such a circle, the nearest first. */
  readonly outwards: readonly Step[];
  /** What is deeper on a flank. */
  readonly flank: Around;
  /** What is deeper along a branch into a corner. */
  readonly branch: Around;
}

/** Every pixel is looked at up to so many away, beyond it every other. */
const CLOSE = 4;

export function gaugeOf(limit: number, widest: number, pitch: Pitch): Gauge {
  const pixel = Math.sqrt(pitch.x * pitch.y);
  const unit = STEPS / widest;
  const around = (reach: number, rise: (distance: number) => number): Around => {
    const steps = stepsOf(discOf(reach, pitch), pitch).filter(
      ({ x, y }) => Math.max(Math.abs(x), Math.abs(y)) <= CLOSE || (x % 2 === 0 && y % 2 === 0),
    );
    return {
      x: Int16Array.from(steps, ({ x }) => x),
      y: Int16Array.from(steps, ({ y }) => y),
      rise: Float64Array.from(steps, ({ distance }) => unit * rise(distance)),
    };
  };
  return {
    limit,
    widest,
    outwards: stepsOf(discOf(widest / 2 + pixel, pitch), pitch),
    flank: around(1.01 * Math.hypot(pitch.x, pitch.y), (distance) => FLANK * distance),
    branch: around(limit, (distance) => SLOPE * distance + pixel / 2),
  };
}

/** The depths of a residue in its box, framed; what is left of the shape around it is deeper than all. */
function depthsIn({ pixels, depths, box }: Residue, mask: BitMask, widest: number, frame: Pitch) {
  const [across, down] = [box.width + 2 * frame.x, box.height + 2 * frame.y];
  const sheet = new Uint8Array(across * down);
  for (let y = frame.y - 1; y <= frame.y + box.height; y += 1) {
    for (let x = frame.x - 1; x <= frame.x + box.width; x += 1) {
      if (isIn(mask, box.x + x - frame.x, box.y + y - frame.y)) sheet[y * across + x] = LEFT;
    }
  }
  const cellOf = (at: number) =>
    (Math.floor(at / mask.width) - box.y + frame.y) * across + (at % mask.width) - box.x + frame.x;
  for (const [index, at] of pixels.entries()) {
    sheet[cellOf(at)] = Math.min(STEPS, Math.round(((depths[index] as number) * STEPS) / widest));
  }
  return { sheet, across, cellOf };
}

/** Where a shape ends on the way from a point to a side, in the unit of the pitch. */
function edgeFrom(
  { pitch, shareAt }: MeasuredShape,
  x: number,
  y: number,
  way: Pitch,
  furthest: number,
): number {
  const pixel = Math.sqrt(pitch.x * pitch.y) / 2;
  let before = shareAt(x, y);
  for (let gone = pixel; gone < furthest; gone += pixel) {
    const share = shareAt(x + (way.x * gone) / pitch.x, y + (way.y * gone) / pitch.y);
    if (share <= HALF) return gone - pixel + (pixel * (before - HALF)) / (before - share || 1);
    before = share;
  }
  return furthest;
}

/**
 * Measures where along its middle line a residue is thinner than a width. The middle line is the ridge of the distance from the
 * outside (H. Blum, "A transformation for extracting new descriptors of shape", 1967) but for its branches into corners and tips;
 * across it the edges are met between pixels.
 * @returns `null` where it is nowhere thinner
 */
export function thinnessOf(residue: Residue, shape: MeasuredShape, gauge: Gauge): Thinness | null {
  const { mask, pitch, finer } = shape;
  const { box } = residue;
  const { limit, widest, outwards, flank, branch } = gauge;
  const pixel = Math.sqrt(pitch.x * pitch.y);
  const frame = { x: Math.ceil(limit / pitch.x) + 1, y: Math.ceil(limit / pitch.y) + 1 };
  const { sheet, across, cellOf } = depthsIn(residue, mask, widest, frame);

  /** Whether any of what lies around is deeper by what tells; `left`: what is left of the shape counts. */
  const isDeeper = (cell: number, { x, y, rise }: Around, left: boolean): boolean => {
    const own = sheet[cell] as number;
    for (let index = 0; index < rise.length; index += 1) {
      const depth = sheet[cell + (y[index] as number) * across + (x[index] as number)] as number;
      if (depth > own + (rise[index] as number) && (left || depth < LEFT)) return true;
    }
    return false;
  };

  /** Along the middle line, by cells. */
  const widths = new Map<number, number>();
  for (const [index, at] of residue.pixels.entries()) {
    const cell = cellOf(at);
    if (isDeeper(cell, flank, true) || isDeeper(cell, branch, false)) continue;
    const [x, y] = [at % mask.width, Math.floor(at / mask.width)];
    const depth = residue.depths[index] as number;
    let thinnest = widest;
    for (const step of outwards) {
      if (step.distance < depth - 1e-6) continue;
      if (step.distance > depth + pixel / 4) break;
      if (isIn(mask, x + step.x, y + step.y)) continue;
      const way = { x: (step.x * pitch.x) / step.distance, y: (step.y * pitch.y) / step.distance };
      const back = { x: -way.x, y: -way.y };
      thinnest = Math.min(thinnest, edgeFrom(shape, x, y, way, widest) + edgeFrom(shape, x, y, back, widest));
    }
    widths.set(cell, thinnest);
  }
  /** Hard pixels in steps touch at corners alone: a place is as wide as it is within a pixel of the raster. */
  const widthAt = (cell: number): number => {
    let most = 0;
    for (let y = -finer.y; y <= finer.y; y += 1) {
      for (let x = -finer.x; x <= finer.x; x += 1) {
        most = Math.max(most, widths.get(cell + y * across + x) ?? 0);
      }
    }
    return most;
  };
  let width = limit;
  let [x1, y1, x2, y2] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, -1, -1];
  for (const cell of widths.keys()) {
    const own = widthAt(cell);
    if (own >= limit) continue;
    width = Math.min(width, own);
    const [x, y] = [(cell % across) + box.x - frame.x, Math.floor(cell / across) + box.y - frame.y];
    x1 = Math.min(x1, x - own / 2 / pitch.x);
    x2 = Math.max(x2, x + own / 2 / pitch.x);
    y1 = Math.min(y1, y - own / 2 / pitch.y);
    y2 = Math.max(y2, y + own / 2 / pitch.y);
  }
  return x2 < 0 ? null : { width, box: { x: x1 + 0.5, y: y1 + 0.5, width: x2 - x1, height: y2 - y1 } };
}
