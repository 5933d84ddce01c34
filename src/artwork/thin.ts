import type { AlphaRaster } from './alpha';
import { type BitMask, bitMask, isIn, outOf } from './bit-mask';
import { discOf, grow, type Pitch, stepsOf } from './disc';
import { type MaskRuns, markSheet } from './mask-runs';
import type { PixelBox } from './trim';

/** A place that is thinner than was asked for. */
interface ThinPlace {
  /** In pixels of the raster without its margin. */
  readonly box: PixelBox;
  /** The widest circle that fits in it, in the unit of the pitch; true within half a pixel. */
  readonly width: number;
  /** It lies by itself: a dot, or the inside of a letter. */
  readonly apart: boolean;
}

export interface ThinPlaces {
  /** The largest first, no more than {@link MOST_PLACES}. */
  readonly places: readonly ThinPlace[];
  /** How many there are in all. */
  readonly count: number;
  /** Width of the thinnest; `null` where there is none. */
  readonly least: number | null;
  readonly where: MaskRuns;
}

const MOST_PLACES = 200;
/**
 * A remainder that hangs on something wider may be a corner or a tip, which everything drawn has: it tapers to nothing, and so
 * fills about half of its length times its width. A stroke, or a slit, fills more than this share of it.
 */
const FILLED = 0.7;
/** And it is longer than the width asked for, so many times. */
const LONG = 1.2;

/** Where ink is, with a margin of ground. */
export interface InkMask {
  readonly margin: number;
  readonly ink: BitMask;
}

/** The highest bits of four bytes. */
const HIGHEST = 0x80808080;
/** Brings them together: each to the bit of its place, from bit 28 on. */
const TOGETHER = 0x10204080;

/** Pixels more than half opaque are ink. */
export function inkMask({ width, height, margin, alpha }: AlphaRaster): InkMask {
  const ink = bitMask(width, height);
  const view = new DataView(alpha.buffer, alpha.byteOffset, alpha.length);
  for (let y = 0; y < height; y += 1) {
    for (let index = 0; index < ink.span; index += 1) {
      const from = y * width + 32 * index;
      const count = Math.min(32, width - 32 * index);
      let [word, bit] = [0, 0];
      for (; bit + 4 <= count; bit += 4) {
        const highest = (view.getInt32(from + bit, true) & HIGHEST) >>> 7;
        word |= (Math.imul(highest, TOGETHER) >>> 28) << bit;
      }
      for (; bit < count; bit += 1) word |= ((alpha[from + bit] as number) >>> 7) << bit;
      ink.words[y * ink.span + index] = word;
    }
  }
  return { margin, ink };
}

/** Strokes and specks of ink that are thinner than a width. */
export const thinStrokes = ({ ink, margin }: InkMask, pitch: Pitch, width: number): ThinPlaces =>
  thinnerThan(ink, outOf(ink), margin, pitch, width);

/** Openings in the ink, and gaps, that are narrower than a width. */
export const narrowOpenings = ({ ink, margin }: InkMask, pitch: Pitch, width: number): ThinPlaces =>
  thinnerThan(outOf(ink), ink, margin, pitch, width);

/** A thin place with its pixels, in those of the mask, and how deep each lies in the shape, in the unit of the pitch. */
interface ThinPart extends ThinPlace {
  readonly pixels: readonly number[];
  readonly depths: Float64Array;
}

/** Strokes and specks of ink that are thinner than a width, one after the other. */
export const thinParts = ({ ink, margin }: InkMask, pitch: Pitch, width: number): Generator<ThinPart> =>
  partsThinnerThan(ink, outOf(ink), margin, pitch, width);

/**
 * What is left of a shape when every circle of a diameter that fits into it is taken away (a morphological opening by a disc,
 * J. Serra, "Image Analysis and Mathematical Morphology", 1982). The middles of such circles are the pixels that have none
 * outside of the shape nearer than the radius.
 */
function* partsThinnerThan(
  shape: BitMask,
  outside: BitMask,
  margin: number,
  pitch: Pitch,
  diameter: number,
): Generator<ThinPart> {
  const { width, height } = shape;
  const pixel = Math.sqrt(pitch.x * pitch.y);
  // From centre to centre: half a pixel lies between a centre and an edge; an even width has its middle between two centres.
  const radius = diameter / 2 + pixel / 4;
  const disc = discOf(radius, pitch);
  const middles = outOf(grow(outside, disc));
  const covered = grow(middles, discOf(radius + pixel / 2, pitch));
  const left = bitMask(width, height);
  for (let at = 0; at < left.words.length; at += 1) {
    left.words[at] = (shape.words[at] as number) & ~(covered.words[at] as number);
  }
  clearMargin(left, margin);
  const steps = stepsOf(disc, pitch);
  /** From a pixel that is left to the nearest outside: it is no middle, and so has one within the disc. */
  const depthAt = (x: number, y: number): number =>
    steps.find((step) => isIn(outside, x + step.x, y + step.y))?.distance ?? 0;

  for (const { pixels, touches } of parts(left, shape)) {
    const apart = !touches;
    let [x1, y1, x2, y2, widest] = [width, height, 0, 0, 0];
    const depths = new Float64Array(pixels.length);
    for (const [index, at] of pixels.entries()) {
      const [x, y] = [at % width, Math.floor(at / width)];
      if (x < x1) x1 = x;
      if (x > x2) x2 = x;
      if (y < y1) y1 = y;
      if (y > y2) y2 = y;
      depths[index] = depthAt(x, y);
      widest = Math.max(widest, depths[index] as number);
    }
    const own = Math.max(pixel / 2, 2 * widest - pixel / 2);
    const length = Math.hypot((x2 - x1 + 1) * pitch.x, (y2 - y1 + 1) * pitch.y);
    const filled = (pixels.length * pitch.x * pitch.y) / (own * length);
    if (!apart && (filled < FILLED || length < LONG * diameter)) continue;
    const box = { x: x1 - margin, y: y1 - margin, width: x2 - x1 + 1, height: y2 - y1 + 1 };
    yield { box, width: own, apart, pixels, depths };
  }
}

function thinnerThan(
  shape: BitMask,
  outside: BitMask,
  margin: number,
  pitch: Pitch,
  diameter: number,
): ThinPlaces {
  const { width, height } = shape;
  const marks = markSheet(width - 2 * margin, height - 2 * margin);
  const places: (ThinPlace & { readonly area: number })[] = [];
  for (const part of partsThinnerThan(shape, outside, margin, pitch, diameter)) {
    const { pixels, box, apart } = part;
    for (const at of pixels) marks.mark((at % width) - margin, Math.floor(at / width) - margin);
    places.push({ box, width: part.width, apart, area: pixels.length });
  }
  places.sort((a, b) => b.area - a.area);
  return {
    places: places.slice(0, MOST_PLACES).map(({ area: _, ...place }) => place),
    count: places.length,
    least: places.reduce<number | null>((least, place) => Math.min(least ?? place.width, place.width), null),
    where: marks.runs(),
  };
}

/** Takes everything out within a margin. */
function clearMargin({ width, height, span, words }: BitMask, margin: number): void {
  words.fill(0, 0, margin * span);
  words.fill(0, (height - margin) * span);
  for (let y = margin; y < height - margin; y += 1) {
    for (let index = 0; index < span; index += 1) {
      const [from, to] = [margin - 32 * index, width - margin - 32 * index];
      if (from > 0) (words[y * span + index] as number) &= from >= 32 ? 0 : -1 << from;
      if (to < 32) (words[y * span + index] as number) &= to <= 0 ? 0 : -1 >>> (32 - to);
    }
  }
}

/** The connected parts of what is left of a shape, and whether each touches more of the shape. */
function* parts(left: BitMask, shape: BitMask): Generator<{ pixels: readonly number[]; touches: boolean }> {
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
      let touches = false;
      for (let next = 0; next < pixels.length; next += 1) {
        const [x, y] = [(pixels[next] as number) % width, Math.floor((pixels[next] as number) / width)];
        for (let down = y - 1; down <= y + 1; down += 1) {
          for (let across = x - 1; across <= x + 1; across += 1) {
            if (takeFrom(across, down)) pixels.push(down * width + across);
            else if (!touches) touches = isIn(shape, across, down) && !isIn(left, across, down);
          }
        }
      }
      yield { pixels, touches };
    }
  }
}
