import type { Artwork } from '../../model';
import {
  type Density,
  isJpeg,
  jpegInks,
  type PixelBox,
  type SvgHeader,
  trimBox,
  type WeightProblem,
} from '..';
import { decodeInks } from './jpeg-inks';

/**
 * Why a file is no artwork. `blank`: no pixel is strong enough to print. `large-inks`: more pixels in four inks than can be converted. `too-wide`: more pixels across than a canvas has.
 * `many-parts`: a PNG of more chunks than an image needs. `too-long`: an SVG of more bytes than are read. `too-slow`: one that
 * is not drawn in time. `locked`: a PDF that wants a password. `no-page`: one without the page that is asked for. `not-whole`: one
 * of which something cannot be drawn. `layered`: a file of layers. `postscript`: a program that draws.
 */
export type ArtworkProblem =
  | 'not-image'
  | 'broken'
  | 'no-size'
  | 'large-inks'
  | 'unreadable'
  | 'too-large'
  | 'too-wide'
  | 'many-parts'
  | 'too-long'
  | 'locked'
  | 'no-page'
  | 'not-whole'
  | 'layered'
  | 'postscript'
  | 'too-slow'
  | WeightProblem
  | 'blank';

/** The page of a PDF that is the artwork, from 1, and how many it has. */
export interface PdfPages {
  readonly number: number;
  readonly of: number;
}

/** What is read from an image file. */
export interface ReadArtwork {
  /** SHA-256 of the file's bytes, in hexadecimal. */
  readonly id: string;
  readonly kind: Artwork['kind'];
  /** Of a drawing, the raster it was looked at in. */
  readonly pixels: { readonly width: number; readonly height: number };
  readonly density: Density | null;
  readonly trim: PixelBox;
  /** The trimmed box as a small PNG. */
  readonly thumbnail: Blob;
  /** Of a PDF. */
  readonly page?: PdfPages;
}

/** What is known of an SVG before it is drawn. */
export interface WeighedSvg {
  /** SHA-256 of the file's bytes, in hexadecimal. */
  readonly id: string;
  readonly header: SvgHeader;
}

/** The longest SVG that is read, in bytes. */
export const LONGEST_SVG = 50_000_000;
/** Pixels whose inks can be decoded beside everything else: some 12 bytes each. */
export const MOST_INKS = 40_000_000;
/** Rows looked at together: a strip of a large image takes some megabytes. */
const STRIP = 512;
const THUMBNAIL = 640;

const union = (a: PixelBox | null, b: PixelBox): PixelBox => {
  if (!a) return b;
  const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
  return {
    x,
    y,
    width: Math.max(a.x + a.width, b.x + b.width) - x,
    height: Math.max(a.y + a.height, b.y + b.height) - y,
  };
};

/** Something drawable with the size it is looked at in. */
export interface Looked {
  readonly image: CanvasImageSource;
  readonly width: number;
  readonly height: number;
}

export function context(width: number, height: number): OffscreenCanvasRenderingContext2D {
  const drawing = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!drawing) throw new Error('no 2d context');
  return drawing;
}

/**
 * Decodes a raster image as it is meant to be looked at: turned as its Exif says, with straight alpha. Everything that shows,
 * measures or prints artwork decodes it by this.
 */
export async function decodeImage(file: Blob): Promise<ImageBitmap> {
  if (isJpeg(new Uint8Array(await file.slice(0, 2).arrayBuffer()))) {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const inks = jpegInks(bytes);
    if (inks) return decodeInks(bytes, inks);
  }
  return createImageBitmap(file, { premultiplyAlpha: 'none', imageOrientation: 'from-image' });
}

/** The same with its colours as the file has them, whatever space they are in. */
export const decodeUnconverted = (file: Blob): Promise<ImageBitmap> =>
  createImageBitmap(file, {
    premultiplyAlpha: 'none',
    imageOrientation: 'from-image',
    colorSpaceConversion: 'none',
  });

/** The pixels of what `draw` puts on a canvas, strip by strip from the top. */
export function* stripsOf(
  { width, height }: { readonly width: number; readonly height: number },
  draw: (drawing: OffscreenCanvasRenderingContext2D, top: number) => void,
): Generator<{ rgba: Uint8ClampedArray; top: number; rows: number }> {
  const drawing = context(width, Math.min(STRIP, height));
  for (let top = 0; top < height; top += STRIP) {
    const rows = Math.min(STRIP, height - top);
    drawing.clearRect(0, 0, width, rows);
    draw(drawing, top);
    yield { rgba: drawing.getImageData(0, 0, width, rows).data, top, rows };
  }
}

/** The box of pixels with an alpha of at least 8 in 255; `null` if the image is blank. */
export function trimOf(looked: Looked): PixelBox | null {
  const { image, width, height } = looked;
  let box: PixelBox | null = null;
  for (const { rgba, top, rows } of stripsOf(looked, (drawing, from) =>
    drawing.drawImage(image, 0, -from, width, height),
  )) {
    const found = trimBox(rgba, width, rows);
    if (found) box = union(box, { ...found, y: found.y + top });
  }
  return box;
}

export function thumbnailOf({ image, width, height }: Looked, trim: PixelBox): Promise<Blob> {
  const scale = Math.min(1, THUMBNAIL / Math.max(trim.width, trim.height));
  const across = Math.max(1, Math.round(trim.width * scale));
  const down = Math.max(1, Math.round(trim.height * scale));
  const drawing = context(across, down);
  drawing.imageSmoothingQuality = 'high';
  drawing.drawImage(image, -trim.x * scale, -trim.y * scale, width * scale, height * scale);
  return drawing.canvas.convertToBlob({ type: 'image/png' });
}
