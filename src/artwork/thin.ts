import type { AlphaRaster } from './alpha';
import { distanceField, type Pitch } from './distance';
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

/** A raster of ink, 1, and ground, 0, with a margin of ground. */
export interface InkMask {
  readonly width: number;
  readonly height: number;
  readonly margin: number;
  readonly mask: Uint8Array;
}

/** Pixels more than half opaque are ink. */
export function inkMask({ width, height, margin, alpha }: AlphaRaster): InkMask {
  const mask = new Uint8Array(alpha.length);
  for (let at = 0; at < alpha.length; at += 1) mask[at] = (alpha[at] as number) >>> 7;
  return { width, height, margin, mask };
}

/** Strokes and specks of ink that are thinner than a width. */
export const thinStrokes = (ink: InkMask, pitch: Pitch, width: number): ThinPlaces =>
  thinnerThan(ink, 1, pitch, width);

/** Openings in the ink, and gaps, that are narrower than a width. */
export const narrowOpenings = (ink: InkMask, pitch: Pitch, width: number): ThinPlaces =>
  thinnerThan(ink, 0, pitch, width);

/** Steps to all pixels within a radius, the farthest first: most pixels that are looked at lie at the rim of something wide. */
function stepsWithin(radius: number, pitch: Pitch, width: number): Int32Array {
  const [across, down] = [Math.floor(radius / pitch.x), Math.floor(radius / pitch.y)];
  const steps: { step: number; distance: number }[] = [];
  for (let dy = -down; dy <= down; dy += 1) {
    for (let dx = -across; dx <= across; dx += 1) {
      const distance = Math.hypot(dx * pitch.x, dy * pitch.y);
      if (distance < radius) steps.push({ step: dy * width + dx, distance });
    }
  }
  return Int32Array.from(steps.sort((a, b) => b.distance - a.distance).map(({ step }) => step));
}

/**
 * What is left of a shape when every circle of a diameter that fits into it is taken away (a morphological opening by a disc,
 * J. Serra, "Image Analysis and Mathematical Morphology", 1982). The middles of such circles are where the distance transform
 * reaches the radius.
 * @param kind which value of the mask is the shape
 */
function thinnerThan(
  { mask, width, height, margin }: InkMask,
  kind: 0 | 1,
  pitch: Pitch,
  diameter: number,
): ThinPlaces {
  const pixel = Math.sqrt(pitch.x * pitch.y);
  // From centre to centre: half a pixel lies between a centre and an edge; an even width has its middle between two centres.
  const radius = diameter / 2 + pixel / 4;
  const toOutside = distanceField(mask, width, height, kind === 1 ? 0 : 1, pitch, radius);
  const middles = new Uint8Array(mask.length);
  for (let y = 0; y < height; y += 1) toOutside.markFar(y, middles);
  const circle = stepsWithin(radius + pixel / 2, pitch, width);
  const marked = new Uint8Array(mask.length);
  const left: number[] = [];
  for (let y = margin; y < height - margin; y += 1) {
    for (let at = y * width + margin, end = (y + 1) * width - margin; at < end; at += 1) {
      if (mask[at] !== kind || middles[at] === 1) continue;
      let covered = false;
      for (let index = 0; index < circle.length && !covered; index += 1) {
        covered = middles[at + (circle[index] as number)] === 1;
      }
      if (covered) continue;
      marked[at] = 1;
      left.push(at);
    }
  }

  const marks = markSheet(width - 2 * margin, height - 2 * margin);
  const places: (ThinPlace & { readonly area: number })[] = [];
  for (const { pixels, touches } of parts(left, marked, mask, kind, width)) {
    const apart = !touches;
    let [x1, y1, x2, y2, widest] = [width, height, 0, 0, 0];
    for (const at of pixels) {
      const [x, y] = [at % width, Math.floor(at / width)];
      if (x < x1) x1 = x;
      if (x > x2) x2 = x;
      if (y < y1) y1 = y;
      if (y > y2) y2 = y;
      const depth = toOutside.at(x, y);
      if (depth > widest && depth !== Number.POSITIVE_INFINITY) widest = depth;
    }
    const own = Math.max(pixel / 2, 2 * widest - pixel / 2);
    const length = Math.hypot((x2 - x1 + 1) * pitch.x, (y2 - y1 + 1) * pitch.y);
    const filled = (pixels.length * pitch.x * pitch.y) / (own * length);
    if (!apart && (filled < FILLED || length < LONG * diameter)) continue;
    for (const at of pixels) marks.mark((at % width) - margin, Math.floor(at / width) - margin);
    places.push({
      box: { x: x1 - margin, y: y1 - margin, width: x2 - x1 + 1, height: y2 - y1 + 1 },
      width: own,
      apart,
      area: pixels.length,
    });
  }
  places.sort((a, b) => b.area - a.area);
  return {
    places: places.slice(0, MOST_PLACES).map(({ area: _, ...place }) => place),
    count: places.length,
    least: places.reduce<number | null>((least, place) => Math.min(least ?? place.width, place.width), null),
    where: marks.runs(),
  };
}

/** The connected parts of marked pixels, and whether each touches more of its kind that is not marked. */
function* parts(
  starts: readonly number[],
  marked: Uint8Array,
  mask: Uint8Array,
  kind: 0 | 1,
  width: number,
): Generator<{ pixels: readonly number[]; touches: boolean }> {
  const around = [-width - 1, -width, -width + 1, -1, 1, width - 1, width, width + 1];
  const taken = 2;
  for (const start of starts) {
    if (marked[start] !== 1) continue;
    const pixels = [start];
    let touches = false;
    marked[start] = taken;
    for (let next = 0; next < pixels.length; next += 1) {
      const at = pixels[next] as number;
      for (const step of around) {
        const other = at + step;
        if (marked[other] === 1) {
          marked[other] = taken;
          pixels.push(other);
        } else if (marked[other] === 0 && mask[other] === kind) touches = true;
      }
    }
    yield { pixels, touches };
  }
}
