import type { PixelBox } from '../../artwork';
import type { LaidCopy, LaidRun } from '../../layout';
import type { Id } from '../../model';
import { turnOf } from '../../outlines';
import { degreesOf, fromInches, type Micrometres, quartersIn, um } from '../../units';
import type { Frame, Part } from './frames';
import { type FilmMark, type MarkChoice, marksOf } from './marks';
import { laidSize, type Orientation, type PixelSize } from './orientation';
import type { Slant } from './slant';

/** Pixels an inch that an image may have. */
export const PPI = { least: 150, start: 300, most: 720 } as const;

/** A page of PDF is no longer than 14,400 points (ISO 32000-1, annex C). */
export const LONGEST_PAGE = fromInches(200);
/** Its pixels are held in memory, compressed, until all of them are there. */
const MOST_PDF_PIXELS = 60_000_000;

/** Whether an image is small enough for a page of PDF. */
export const fitsPdf = ({ width, height, film }: PrintImage): boolean =>
  width * height <= MOST_PDF_PIXELS && Math.max(film.width, film.length) <= LONGEST_PAGE;

/** Addresses in a TIFF have 32 bits; deflate makes what it cannot press longer by less than a thousandth. */
const MOST_TIFF_BYTES = 0.998 * 2 ** 32;

/** Whether an image with its white is small enough for a TIFF, however little it is compressed. */
export const fitsTiff = ({ width, height }: PrintImage): boolean => 5 * width * height <= MOST_TIFF_BYTES;

/** A copy's pixels: no other copy or mark prints any of them, though the boxes of copies laid out by outlines overlap. */
export interface CopyBox extends PixelBox {
  readonly copy: Id<'copy'>;
  readonly artwork: Id<'artwork'> | null;
  /** The artwork's size in these pixels, as it stands upright. */
  readonly upright: PixelSize;
  /** How it lies in its box, if that is between quarter turns; the orientation is then the box's. */
  readonly slant: Slant | null;
  readonly orientation: Orientation;
}

/** A mark's pixels; `text` is written in them, and without any they are black. */
export interface MarkBox extends PixelBox {
  readonly text: string | null;
  readonly upright: PixelSize;
  readonly orientation: Orientation;
}

/** One image that is to be written: its rows from the end of the film that comes out first. */
export interface PrintImage extends PixelSize {
  readonly part: Part;
  readonly ppi: number;
  readonly film: { readonly width: Micrometres; readonly length: Micrometres };
  readonly copies: readonly CopyBox[];
  readonly marks: readonly MarkBox[];
  /** Copies whose number was asked for and has no room in their gap. */
  readonly unnumbered: number;
}

export interface ImageChoice {
  readonly ppi: number;
  /** From side to side. The printer's own software usually does it. */
  readonly mirrored: boolean;
  /** The end of an image that the printer prints first, by its test strip. */
  readonly firstEnd: 'lead' | 'tail';
  /** What it is made shorter by along the film, so that the printer, which feeds that much long, prints at true length; 1 leaves it. */
  readonly feed: number;
  readonly marks: MarkChoice;
}

/** Closer than this, in pixels, two boxes that are rounded up could share a pixel. */
const ROOM = 0.5;

/** Whether all sizes may be rounded to the nearest pixel, and no box can reach into another or out of the image. */
const hasRoom = ({ film }: LaidRun, { to, copies }: Frame, scale: number): boolean =>
  film.gap * scale >= ROOM &&
  copies.every(
    ({ x, y, width, length }) => Math.min(film.width - x - width, to - y - length) * scale >= ROOM,
  );

/**
 * The image of a frame. Its size, and that of each copy, is its length times pixels an inch, rounded to the nearest
 * pixel, so that it is true within half a pixel and all copies of a transfer are alike; each copy begins at the pixel
 * nearest to its place. A pixel thus belongs to one copy at most wherever half a pixel or more lies between two;
 * where less does, all sizes are rounded down.
 *
 * The end of the film that comes out first is where the run begins: for a printer that prints the tail of an image
 * first, the image is turned half round.
 */
export function imageOf(run: LaidRun, frame: Frame, choice: ImageChoice): PrintImage {
  const { ppi, mirrored, firstEnd, feed } = choice;
  const scale = ppi / fromInches(1);
  const length = um(frame.to - frame.from);
  const nearest = (value: number) => Math.round(value * scale);
  const alongOf = (value: number) => value / feed;
  const sizeOf = hasRoom(run, frame, Math.min(scale, scale / feed))
    ? nearest
    : (value: number) => Math.floor(value * scale);
  const [across, along] = [Math.max(1, nearest(run.film.width)), Math.max(1, nearest(alongOf(length)))];
  const half = firstEnd === 'tail';

  /** Where a box of the film lies in the image. */
  const boxOf = (
    { x, y }: { x: number; y: number },
    upright: PixelSize,
    quarters: Orientation['quarters'] = 0,
  ) => {
    const orientation = { quarters, half, mirrored };
    const { width, height } = laidSize(upright, orientation);
    const [left, top] = [nearest(x), nearest(alongOf(y - frame.from))];
    return {
      x: half !== mirrored ? across - left - width : left,
      y: half ? along - top - height : top,
      width,
      height,
      orientation,
    };
  };
  const pixelsOf = (value: number) => Math.max(1, sizeOf(value));
  const copyBox = (copy: LaidCopy): CopyBox => {
    const named = { copy: copy.id, artwork: copy.transfer.artwork };
    const quarters = quartersIn(copy.angle);
    if (quarters === null) {
      const upright = { width: pixelsOf(copy.transfer.width), height: pixelsOf(copy.transfer.height) };
      // Its ink ends within its box; the last pixels it has a share in are its own too, where the image has them.
      const box = {
        width: Math.max(1, Math.min(Math.ceil(copy.width * scale), across - nearest(copy.x))),
        height: Math.max(
          1,
          Math.min(Math.ceil(alongOf(copy.length) * scale), along - nearest(alongOf(copy.y - frame.from))),
        ),
      };
      return { ...named, upright, slant: slantOf(copy, upright, box), ...boxOf(copy, box) };
    }
    const [width, height] = [pixelsOf(copy.width), pixelsOf(alongOf(copy.length))];
    const upright = laidSize({ width, height }, { quarters });
    return { ...named, upright, slant: null, ...boxOf(copy, upright, quarters) };
  };
  /** How a picture lies in its box, as long as the printer takes it to be along the film. */
  const slantOf = (copy: LaidCopy, upright: PixelSize, box: PixelSize): Slant => {
    const { cos, sin } = turnOf(degreesOf(copy.angle));
    const perAcross = (copy.transfer.width * scale) / upright.width;
    const perDown = (copy.transfer.height * scale) / upright.height;
    return {
      box,
      origin: { x: copy.origin.x * scale, y: alongOf(copy.origin.y) * scale },
      across: { x: cos * perAcross, y: alongOf(sin * perAcross) },
      down: { x: -sin * perDown, y: alongOf(cos * perDown) },
    };
  };
  /** Rounded up, so that no mark is smaller than it should be, and kept within the image. */
  const markBox = ({ text, x, y, width, length: tall }: FilmMark): MarkBox => {
    const upright = { width: Math.ceil(width * scale), height: Math.ceil(alongOf(tall) * scale) };
    const inside = (place: number, end: number, pixels: number, perPixel: number) =>
      Math.min(place, (end - pixels) * perPixel);
    const at = {
      x: inside(x, across, upright.width, 1 / scale),
      y: frame.from + inside(y - frame.from, along, upright.height, feed / scale),
    };
    return { text, upright, ...boxOf(at, upright) };
  };
  const { marks, unnumbered } = marksOf(run, frame, choice.marks);
  const fromTop = (a: PixelBox, b: PixelBox) => a.y - b.y || a.x - b.x;
  return {
    part: frame.part,
    ppi,
    width: across,
    height: along,
    film: { width: run.film.width, length: um(alongOf(length)) },
    copies: frame.copies.map(copyBox).sort(fromTop),
    marks: marks.map(markBox).sort(fromTop),
    unnumbered,
  };
}
