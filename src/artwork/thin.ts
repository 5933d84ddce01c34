import { outOf } from './bit-mask';
import type { InkMask } from './ink-mask';
import { type MaskRuns, markSheet } from './mask-runs';
import { openedAway, type Residue } from './opening';
import { gaugeOf, type MeasuredShape, thinnessOf } from './thickness';
import type { PixelBox } from './trim';

/** A place that is thinner than was asked for. */
export interface ThinPlace {
  /** In pixels of the raster without its margin, and parts of them. */
  readonly box: PixelBox;
  /** Across its thinnest place, in the unit of the pitch. */
  readonly width: number;
  /** It lies by itself: a dot, or the inside of a letter. */
  readonly apart: boolean;
}

export interface ThinPlaces {
  /** The thinnest first. */
  readonly places: readonly ThinPlace[];
  readonly where: MaskRuns;
}

/**
 * A remainder that hangs on something wider may be a corner or a tip, which everything drawn has: it tapers to nothing, and so
 * fills about half of its length times its width. A stroke, or a slit, fills more than this share of it.
 */
const FILLED = 0.7;
/** And it is longer than the width asked for, so many times. */
const LONG = 1.2;
/** What is so many times as long is a stroke that runs out, not a tip: its sides are less than 15 degrees apart. */
const RUNS_OUT = 4;

/** A thin place with its pixels, in those of the mask, and how deep each lies in the shape. */
interface ThinPart extends ThinPlace, Pick<Residue, 'pixels' | 'depths'> {}

/** Strokes and specks of ink that are thinner than a width, in micrometres, one after the other. */
export const thinParts = (ink: InkMask, width: number): Generator<ThinPart> =>
  partsThinnerThan({ ...ink, mask: ink.ink }, ink, width);

/** Openings in the ink, and gaps, that are narrower than a width. */
const narrowParts = (ink: InkMask, width: number): Generator<ThinPart> =>
  partsThinnerThan(
    { pitch: ink.pitch, finer: ink.finer, mask: outOf(ink.ink), shareAt: (x, y) => 255 - ink.shareAt(x, y) },
    ink,
    width,
  );

export const thinStrokes = (ink: InkMask, width: number): ThinPlaces => placesOf(thinParts(ink, width), ink);

export const narrowOpenings = (ink: InkMask, width: number): ThinPlaces =>
  placesOf(narrowParts(ink, width), ink);

/**
 * What a somewhat larger circle does not fit into is measured: a mask tells a circle's size only within two of its pixels.
 */
function* partsThinnerThan(
  shape: MeasuredShape,
  { finer, margin }: InkMask,
  limit: number,
): Generator<ThinPart> {
  const { pitch } = shape;
  const pixel = Math.sqrt(pitch.x * pitch.y);
  const widest = limit + 2 * pixel;
  const gauge = gaugeOf(limit, widest, pitch);
  for (const residue of openedAway(shape.mask, margin, pitch, widest)) {
    const { pixels, depths, apart } = residue;
    const deepest = depths.reduce((most, depth) => Math.max(most, depth), 0);
    const own = Math.max(pixel / 2, 2 * deepest - pixel / 2);
    const length = Math.hypot(residue.box.width * pitch.x, residue.box.height * pitch.y);
    const filled = (pixels.length * pitch.x * pitch.y) / (own * length);
    if (!apart && length < LONG * widest) continue;
    const thinness = thinnessOf(residue, shape, gauge);
    if (!thinness) continue;
    const { box, width } = thinness;
    const thinLength = Math.hypot(box.width * pitch.x, box.height * pitch.y);
    if (!apart && filled < FILLED && thinLength < RUNS_OUT * limit) continue;
    yield {
      box: {
        x: box.x / finer.x - margin.x / finer.x,
        y: box.y / finer.y - margin.y / finer.y,
        width: box.width / finer.x,
        height: box.height / finer.y,
      },
      width,
      apart,
      pixels,
      depths,
    };
  }
}

function placesOf(parts: Iterable<ThinPart>, { ink, finer, margin }: InkMask): ThinPlaces {
  const { width, height } = ink;
  const marks = markSheet(
    width / finer.x - (2 * margin.x) / finer.x,
    height / finer.y - (2 * margin.y) / finer.y,
  );
  const places: ThinPlace[] = [];
  for (const { pixels, box, apart, width: thickness } of parts) {
    for (const at of pixels) {
      const x = (at % width) / finer.x - margin.x / finer.x;
      const y = Math.floor(at / width) / finer.y - margin.y / finer.y;
      const isThere = x >= box.x - 1 && x <= box.x + box.width && y >= box.y - 1 && y <= box.y + box.height;
      if (isThere) marks.mark(x, y);
    }
    places.push({ box, width: thickness, apart });
  }
  return { places: places.sort((a, b) => a.width - b.width), where: marks.runs() };
}
