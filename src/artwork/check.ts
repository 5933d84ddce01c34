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
import { type Limits, largestSpeck, strokeLimit } from './limits';
import type { MaskRuns } from './mask-runs';
import { type Outline, outlineOf } from './outline';
import { type SeeThrough, seeThrough } from './see-through';
import { strayFinder } from './strays';
import { inkMask, narrowOpenings, type ThinPlaces, thinStrokes } from './thin';
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
  /** How thick it is at its thickest. */
  readonly thickness: Micrometres;
}

interface Places {
  readonly list: readonly Place[];
  readonly count: number;
  readonly least: Micrometres | null;
}

/** What the pixels of a trimmed artwork tell at a printed size. */
export interface RasterCheck {
  readonly pixels: Size;
  readonly sums: InkSums;
  readonly seeThrough: SeeThrough;
  /** Thinner than a stroke should be, or so thin that the choke leaves no white under them. */
  readonly strokes: Places & { readonly where: MaskRuns };
  /** Dots that small, lying by themselves. */
  readonly specks: Places;
  readonly openings: Places & { readonly where: MaskRuns };
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
/** And in no more pixels than this, so that memory stays within some 100 MB. */
const MOST_LOOKED_AT = 20_000_000;

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

  /** A place as a share of the box; the raster's last pixels may reach beyond it. */
  const placesOf = ({ places, count, least }: ThinPlaces): Places => ({
    list: places.map(({ box, width }) => ({
      x: (box.x * shrink) / pixels.width,
      y: (box.y * shrink) / pixels.height,
      width: (box.width * shrink) / pixels.width,
      height: (box.height * shrink) / pixels.height,
      thickness: um(width),
    })),
    count,
    least: least === null ? null : um(least),
  });

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
      const ink = inkMask(raster);
      const thin = thinStrokes(ink, pitch, stroke);
      onStage(0.5);
      const narrow = narrowOpenings(ink, pitch, limits.opening);
      onStage(0.8);
      const length = outlineLength(contours(raster, 128), pitch);
      onStage(0.9);
      const stray = strays.find();
      const checkerboard = isCheckerboard(edge.lines);
      const isSpeck = ({ apart, box }: ThinPlaces['places'][number]) =>
        apart && Math.max(box.width * pitch.x, box.height * pitch.y) <= largestSpeck(stroke);
      const specks = thin.places.filter(isSpeck);
      const strokes = thin.places.filter((place) => !isSpeck(place));
      const least = (places: ThinPlaces['places']) =>
        places.length === 0 ? null : Math.min(...places.map(({ width }) => width));
      const part = (places: ThinPlaces['places'], count: number): ThinPlaces => ({
        places,
        count,
        least: least(places),
        where: thin.where,
      });
      return {
        pixels,
        sums,
        seeThrough: soft,
        strokes: { ...placesOf(part(strokes, strokes.length)), where: thin.where },
        // What the list leaves out is smaller than what it holds.
        specks: placesOf(part(specks, specks.length + thin.count - thin.places.length)),
        openings: { ...placesOf(narrow), where: narrow.where },
        strays: stray && { list: stray.boxes.map(spotOf), rest: spotOf(stray.rest) },
        fringe: fringe.find(),
        ground: checkerboard ? null : solidGround(edge.lines),
        checkerboard,
        outline: outlineOf(raster, printed),
        outlineLength: um(length),
      };
    },
  };
}
