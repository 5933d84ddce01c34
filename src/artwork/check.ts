import { type Micrometres, um } from '../units';
import { alphaBuilder } from './alpha';
import { isCheckerboard } from './checkerboard';
import type { Rgb } from './colour';
import { contours, outlineLength } from './contour';
import { addInk, type InkSums, noInk } from './coverage';
import type { Pitch } from './disc';
import { edgeTaker } from './edge';
import { type Fringe, fringeFinder } from './fringe';
import { solidGround } from './ground';
import { HALF, inkMask } from './ink-mask';
import { type Limits, largestSpeck, strokeLimit } from './limits';
import type { MaskRuns } from './mask-runs';
import { type Outline, outlineOf } from './outline';
import { printing } from './printing';
import { type Screen, screenOf } from './screen';
import { type SeeThrough, seeThrough } from './see-through';
import { partBoxes } from './small-parts';
import { strayFinder } from './strays';
import { narrowOpenings, type ThinPlace, thinStrokes } from './thin';
import type { PixelBox } from './trim';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where something lies in an artwork, in shares of its trimmed box. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A place of a shape. */
interface Place extends Spot {
  /** How thick it is at its thinnest. */
  readonly thickness: Micrometres;
}

interface Places {
  /** The thinnest first, no more than {@link MOST_PLACES}. */
  readonly list: readonly Place[];
  /** Of all, the least first. */
  readonly widths: readonly Micrometres[];
}

/** A screen that stands for a tone, and those of its dots, or holes, that are too small. */
interface ScreenCheck extends Places {
  /** From dot to dot. */
  readonly spacing: Micrometres;
  readonly dots: number;
}

/** What the pixels of a trimmed artwork tell at a printed size. */
export interface RasterCheck {
  readonly pixels: Size;
  readonly sums: InkSums;
  readonly seeThrough: SeeThrough;
  /** Thinner than a stroke should be, or so thin that the choke leaves too little white under them. */
  readonly strokes: Places & { readonly where: MaskRuns };
  /** Dots that small, lying by themselves. */
  readonly specks: Places;
  readonly openings: Places & { readonly where: MaskRuns };
  readonly screens: { readonly dots: ScreenCheck | null; readonly holes: ScreenCheck | null };
  /** What lies far from all else, and the box of the rest; `null` where there is none. */
  readonly strays: { readonly list: readonly Spot[]; readonly rest: Spot } | null;
  readonly fringe: Fringe | null;
  readonly ground: Rgb | null;
  /** Squares that stand for transparency are part of the image. */
  readonly checkerboard: boolean;
  readonly outline: Outline;
  /** Of all edges, those of holes included. */
  readonly outlineLength: Micrometres;
}

/** Shapes are looked at no finer than this, in micrometres a pixel: 400 ppi. */
const FINEST = 63.5;
/** And in no more pixels than this, so that memory stays within some 150 MB. */
const MOST_LOOKED_AT = 20_000_000;
const MOST_PLACES = 200;

/**
 * Checks a trimmed artwork that comes in strips of pixels, from top to bottom.
 * @param pixels of the trimmed box
 * @param printed the size it is printed in
 */
export function startCheck(
  pixels: Size,
  printed: { readonly width: Micrometres; readonly height: Micrometres },
  limits: Limits,
): {
  add(rgba: Uint8ClampedArray, top: number, rows: number): void;
  /** @param onStage told the share that is done */
  finish(onStage: (share: number) => void): RasterCheck;
} {
  const fine: Pitch = { x: printed.width / pixels.width, y: printed.height / pixels.height };
  const shrink = Math.max(
    1,
    Math.floor(FINEST / Math.min(fine.x, fine.y)),
    Math.ceil(Math.sqrt((pixels.width * pixels.height) / MOST_LOOKED_AT)),
  );
  const pitch: Pitch = { x: fine.x * shrink, y: fine.y * shrink };
  const stroke = strokeLimit(limits);
  const reach = Math.max(stroke, limits.opening) / 2;
  const margin = Math.ceil(reach / Math.min(pitch.x, pitch.y)) + 3;
  const { raster, add } = alphaBuilder(pixels.width, pixels.height, shrink, margin);
  const sums = noInk();
  const strays = strayFinder(pixels, fine, largestSpeck(stroke));
  const fringe = fringeFinder(pixels.width);
  const edge = edgeTaker(pixels);

  const spotOf = (box: PixelBox): Spot => ({
    x: box.x / pixels.width,
    y: box.y / pixels.height,
    width: box.width / pixels.width,
    height: box.height / pixels.height,
  });

  /** Places as shares of the box; the raster's last pixels may reach beyond it. */
  const placesOf = (places: readonly ThinPlace[]): Places => ({
    list: places.slice(0, MOST_PLACES).map(({ box, width }) => ({
      x: (box.x * shrink) / pixels.width,
      y: (box.y * shrink) / pixels.height,
      width: (box.width * shrink) / pixels.width,
      height: (box.height * shrink) / pixels.height,
      thickness: um(width),
    })),
    widths: places.map(({ width }) => um(width)),
  });
  /** The dots, or holes, of a screen that are among places, and the places that are none of its. */
  const partedBy = (screen: Screen | null, places: readonly ThinPlace[]) => {
    if (!screen) return { own: null, others: places };
    const isOf = ({ apart, box }: ThinPlace) => apart && screen.has(box);
    const own: ScreenCheck = {
      ...placesOf(places.filter(isOf)),
      spacing: screen.spacing,
      dots: screen.dots.length,
    };
    return { own, others: places.filter((place) => !isOf(place)) };
  };

  return {
    add(rgba, top, rows) {
      addInk(sums, rgba);
      add(rgba, top, rows);
      strays.add(rgba, top, rows);
      fringe.add(rgba, rows);
      edge.add(rgba, top, rows);
    },
    finish(onStage) {
      const soft = seeThrough(raster);
      onStage(0.2);
      const shares = printing(raster);
      const ink = inkMask(shares, pitch);
      const thin = thinStrokes(ink, stroke);
      onStage(0.5);
      const narrow = narrowOpenings(ink, limits.opening);
      onStage(0.8);
      const { width: across, height: down, margin: frame } = raster;
      const partsOf = (isFilled: (at: number) => boolean) =>
        boxesWithin(partBoxes(isFilled, across, down), frame);
      const hasThin = thin.places.length + narrow.places.length > 0;
      const dots = hasThin
        ? screenOf(
            partsOf((at) => (shares.alpha[at] as number) > HALF),
            pitch,
          )
        : null;
      const holes = hasThin
        ? screenOf(
            partsOf((at) => (shares.alpha[at] as number) <= HALF),
            pitch,
          )
        : null;
      const length = outlineLength(contours(raster, 128), pitch);
      onStage(0.9);
      const stray = strays.find();
      const checkerboard = isCheckerboard(edge.lines);
      // What lies between the dots of a screen, or its holes, is no opening and no stroke.
      const { own: smallDots, others: inked } = partedBy(
        dots,
        thin.places.filter(({ box }) => !holes?.spreadsIn(box)),
      );
      const { own: smallHoles, others: open } = partedBy(
        holes,
        narrow.places.filter(({ box }) => !dots?.spreadsIn(box)),
      );
      const isSpeck = ({ apart, box }: ThinPlace) =>
        apart && Math.max(box.width * pitch.x, box.height * pitch.y) <= largestSpeck(stroke);
      const isStray = ({ box }: ThinPlace) =>
        stray !== null && !holds(stray.rest, { x: box.x * shrink, y: box.y * shrink });
      return {
        pixels,
        sums,
        seeThrough: soft,
        strokes: { ...placesOf(inked.filter((place) => !isSpeck(place))), where: thin.where },
        specks: placesOf(inked.filter((place) => isSpeck(place) && !isStray(place))),
        openings: { ...placesOf(open), where: narrow.where },
        screens: { dots: smallDots, holes: smallHoles },
        strays: stray && { list: stray.boxes.map(spotOf), rest: spotOf(stray.rest) },
        fringe: fringe.find(),
        ground: checkerboard ? null : solidGround(edge.lines),
        checkerboard,
        outline: outlineOf(shares, printed),
        outlineLength: um(length),
      };
    },
  };
}

/** Boxes in pixels of a raster, without its margin; the ground around all is none of them. */
function* boxesWithin(boxes: Iterable<PixelBox>, margin: number): Generator<PixelBox> {
  for (const box of boxes) if (box.x > 0) yield { ...box, x: box.x - margin, y: box.y - margin };
}

/** Whether a box holds a point, or has it at its edge. */
const holds = (box: PixelBox, { x, y }: { x: number; y: number }): boolean =>
  x >= box.x - 1 && x <= box.x + box.width + 1 && y >= box.y - 1 && y <= box.y + box.height + 1;
