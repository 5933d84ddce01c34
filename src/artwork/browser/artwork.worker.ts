import { expose, transfer } from 'comlink';
import type { ArtworkOutline, Mend } from '../../model';
import { fail, type Micrometres, ok, type Result } from '../../units';
import { sha256 } from '../../units/browser/sha256';
import {
  type ArtworkCheck,
  type Contour,
  coverageOf,
  type FileFacts,
  fileFacts,
  type InkChange,
  isJpeg,
  isPng,
  isWebp,
  isWholeJpeg,
  isWholePng,
  isWholeWebp,
  jpegInks,
  type Outline,
  type PixelBox,
  readJpegHeader,
  readPngHeader,
  readSvgHeader,
  readWebpHeader,
  weighSvg,
  withDensity,
} from '..';
import { startCheck } from '../check';
import { addInk, noInk } from '../coverage';
import { wideProfile } from '../facts';
import { hasAllBlocks } from '../jpeg-scan';
import { layoutOutline } from '../layout-outline';
import { mended, showsInSmaller } from '../mend';
import { MOST_PIXELS, WIDEST } from '../most-pixels';
import { isPostScript } from '../other-format';
import { growOutline } from '../outline';
import { layWhite } from '../white';
import { type Clipped, clipFinder, readMatrixProfile } from '../wide-gamut';
import type { CheckRequest, MendedPicture } from './check-request';
import { hasFont } from './has-font';
import { hasAllRows } from './png-rows';
import {
  type ArtworkProblem,
  context,
  decodeImage,
  decodeUnconverted,
  LONGEST_SVG,
  MOST_INKS,
  type ReadArtwork,
  stripsOf,
  thumbnailOf,
  trimOf,
  type WeighedSvg,
} from './read-artwork';

/** Reads the header by what the file is, not by its name. */
function headerOf(bytes: Uint8Array) {
  if (isPng(bytes)) return { kind: 'png' as const, header: readPngHeader(bytes), whole: isWholePng(bytes) };
  if (isJpeg(bytes)) {
    return { kind: 'jpeg' as const, header: readJpegHeader(bytes), whole: isWholeJpeg(bytes) };
  }
  if (isWebp(bytes))
    return { kind: 'webp' as const, header: readWebpHeader(bytes), whole: isWholeWebp(bytes) };
  return null;
}

/** Whether the pixels of a file go on to its end; a browser itself refuses a WebP of which some are missing. */
const hasAllPixels = (
  kind: 'png' | 'jpeg' | 'webp',
  bytes: Uint8Array<ArrayBuffer>,
): boolean | Promise<boolean> =>
  kind === 'png' ? hasAllRows(bytes) : kind === 'webp' || hasAllBlocks(bytes);

/** What of the box that is printed sRGB does not hold, where its file has a profile that tells. */
async function clippedOf(file: Blob, bytes: Uint8Array, box: PixelBox): Promise<Clipped | null> {
  const icc = wideProfile(bytes);
  const profile = icc && readMatrixProfile(icc);
  if (!profile) return null;
  const image = await decodeUnconverted(file);
  try {
    const finder = clipFinder(box, profile);
    const draw = (drawing: OffscreenCanvasRenderingContext2D, top: number) =>
      drawing.drawImage(image, -box.x, -box.y - top);
    for (const { rgba, top, rows } of stripsOf(box, draw)) finder.add(rgba, top, rows);
    return finder.find();
  } finally {
    image.close();
  }
}

/** Checks the box of an image that is printed. */
function check(
  image: ImageBitmap,
  box: PixelBox,
  { pixels, trim, printed, limits, drawn }: CheckRequest,
  facts: FileFacts,
  clipped: Clipped | null,
  onShare: (share: number) => void,
): ArtworkCheck {
  const checking = startCheck(box, printed, limits);
  const draw = (drawing: OffscreenCanvasRenderingContext2D, top: number) =>
    drawing.drawImage(image, -box.x, -box.y - top);
  for (const { rgba, top, rows } of stripsOf(box, draw)) {
    checking.add(rgba, top, rows);
    onShare((0.4 * (top + rows)) / box.height);
  }
  const shown = trim.width / pixels.width;
  const result = checking.finish((share) => onShare(0.4 + 0.6 * share));
  return { ...result, facts, vector: drawn !== null, shown, clipped };
}

/** A picture no longer than so many pixels. */
function drawnSmaller(canvas: OffscreenCanvas, longest: number): ImageBitmap {
  const { width, height } = canvas;
  return drawnBox(canvas, { x: 0, y: 0, width, height }, longest).canvas.transferToImageBitmap();
}

/** The box as it is printed, no longer than so many pixels. */
function drawnBox(
  image: ImageBitmap | OffscreenCanvas,
  box: PixelBox,
  longest: number,
): OffscreenCanvasRenderingContext2D {
  const scale = Math.min(1, longest / Math.max(box.width, box.height));
  const [width, height] = [box.width, box.height].map((side) => Math.max(1, Math.round(side * scale)));
  const drawing = context(width as number, height as number);
  drawing.imageSmoothingQuality = 'high';
  drawing.drawImage(image, box.x, box.y, box.width, box.height, 0, 0, width as number, height as number);
  return drawing;
}

/** Mends what is drawn, and tells what ink that changes. */
function mendOn(
  drawing: OffscreenCanvasRenderingContext2D,
  mend: Mend,
  box: PixelBox,
  printed: CheckRequest['printed'],
): { readonly drawing: OffscreenCanvasRenderingContext2D; readonly ink: InkChange } {
  const { width, height } = drawing.canvas;
  const pitch = { x: printed.width / box.width, y: printed.height / box.height };
  const { data } = drawing.getImageData(0, 0, width, height);
  const inkOf = (rgba: Uint8ClampedArray) => {
    const sums = noInk();
    addInk(sums, rgba);
    return coverageOf(sums, box, printed);
  };
  const before = inkOf(data);
  const image = mended({ rgba: data, width, height }, mend, box, pitch);
  const out = image.width === width && image.height === height ? drawing : context(image.width, image.height);
  out.putImageData(new ImageData(image.rgba, image.width, image.height), 0, 0);
  return { drawing: out, ink: { before, after: inkOf(image.rgba) } };
}

const reader = {
  /** Reads a raster image; whether it is too large is told from its header, before it is decoded. */
  async read(file: Blob): Promise<Result<ReadArtwork, ArtworkProblem>> {
    let image: ImageBitmap | null = null;
    try {
      const bytes = await file.arrayBuffer();
      const found = headerOf(new Uint8Array(bytes));
      if (!found) return fail(isPostScript(new Uint8Array(bytes)) ? 'postscript' : 'not-image');
      const { kind, header, whole } = found;
      if (!header.ok) return fail(header.problem === 'not-png' ? 'not-image' : header.problem);
      if (header.value.width * header.value.height > MOST_PIXELS) return fail('too-large');
      const isInks = kind === 'jpeg' && jpegInks(new Uint8Array(bytes)) !== null;
      if (isInks && header.value.width * header.value.height > MOST_INKS) return fail('large-inks');
      if (header.value.width > WIDEST) return fail('too-wide');
      if (!whole || !(await hasAllPixels(kind, new Uint8Array(bytes)))) return fail('broken');
      const id = await sha256(bytes);
      image = await decodeImage(file).catch(() => null);
      if (!image) return fail('broken');
      const { width, height } = image;
      const trim = trimOf({ image, width, height });
      if (!trim) return fail('blank');
      // A format whose own turning the header does not tell has its axes changed by the decoder alone.
      const { density } = header.value;
      const turned = width !== height && width === header.value.height;
      return ok({
        id,
        kind,
        pixels: { width, height },
        density: density && turned ? { x: density.y, y: density.x } : density,
        trim,
        thumbnail: await thumbnailOf({ image, width, height }, trim),
      });
    } catch {
      return fail('unreadable');
    } finally {
      image?.close();
    }
  },

  /** Weighs an SVG, so that none is drawn that would not end. */
  async weigh(file: Blob): Promise<Result<WeighedSvg, ArtworkProblem>> {
    if (file.size > LONGEST_SVG) return fail('too-long');
    try {
      const bytes = await file.arrayBuffer();
      const text = new TextDecoder().decode(bytes);
      const header = readSvgHeader(text);
      if (!header.ok) return header;
      const weight = weighSvg(text);
      return weight.ok ? ok({ id: await sha256(bytes), header: header.value }) : weight;
    } catch {
      return fail('unreadable');
    }
  },

  /** What a file says of itself that changes how it prints; of fonts, those that are not here. */
  async facts(file: Blob): Promise<FileFacts> {
    const facts = fileFacts(new Uint8Array(await file.arrayBuffer()));
    return { ...facts, fonts: facts.fonts.filter((family) => !hasFont(family)) };
  },

  /** Checks a raster image. `changed`: the file decodes to another size than its record says. */
  async check(
    file: Blob,
    request: CheckRequest,
    onShare: (share: number) => void,
  ): Promise<Result<ArtworkCheck, 'unreadable' | 'changed'>> {
    let image: ImageBitmap | null = null;
    try {
      const bytes = new Uint8Array(await file.arrayBuffer());
      const facts = fileFacts(bytes);
      image = await decodeImage(file);
      if (image.width !== request.pixels.width || image.height !== request.pixels.height) {
        return fail('changed');
      }
      const clipped = await clippedOf(file, bytes, request.trim);
      return ok(check(image, request.trim, request, facts, clipped, onShare));
    } catch {
      return fail('unreadable');
    } finally {
      image?.close();
    }
  },

  /** Checks what was drawn of an SVG or a PDF: its box alone. */
  checkDrawn(
    image: ImageBitmap,
    request: CheckRequest,
    facts: FileFacts,
    onShare: (share: number) => void,
  ): ArtworkCheck {
    const { width, height } = image;
    try {
      return check(image, { x: 0, y: 0, width, height }, request, facts, null, onShare);
    } finally {
      image.close();
    }
  },

  /** The box as it is printed, for the screen, mended if it is to be. */
  async picture(
    file: Blob,
    box: PixelBox,
    printed: CheckRequest['printed'],
    longest: number,
    mend: Mend | null,
  ): Promise<MendedPicture | null> {
    const image = await decodeImage(file).catch(() => null);
    if (!image) return null;
    const isSmall = mend === null || showsInSmaller(mend);
    const drawing = drawnBox(image, box, isSmall ? longest : Number.POSITIVE_INFINITY);
    image.close();
    const whole = { x: 0, y: 0, width: drawing.canvas.width, height: drawing.canvas.height };
    const done = mend ? mendOn(drawing, mend, whole, printed) : { drawing, ink: null };
    const { canvas } = done.drawing;
    const picture = isSmall ? canvas.transferToImageBitmap() : drawnSmaller(canvas, longest);
    return transfer({ picture, ink: done.ink }, [picture]);
  },

  /** The whole image, mended, as a PNG of the same physical size. */
  async mend(
    file: Blob,
    box: PixelBox,
    printed: CheckRequest['printed'],
    mend: Mend,
    density: { x: number; y: number } | null,
  ): Promise<Blob | null> {
    const image = await decodeImage(file).catch(() => null);
    if (!image) return null;
    const whole = { x: 0, y: 0, width: image.width, height: image.height };
    const drawing = drawnBox(image, whole, Number.POSITIVE_INFINITY);
    image.close();
    const { canvas } = mendOn(drawing, mend, box, printed).drawing;
    const png = await canvas.convertToBlob({ type: 'image/png' });
    if (!density) return png;
    return new Blob([withDensity(new Uint8Array(await png.arrayBuffer()), density)], { type: 'image/png' });
  },

  /** The white under a picture of a printed box, for the screen. */
  white(image: ImageBitmap, printed: CheckRequest['printed'], choke: Micrometres): ImageBitmap {
    const { width, height } = image;
    const drawing = drawnBox(image, { x: 0, y: 0, width, height }, Number.POSITIVE_INFINITY);
    image.close();
    const pixels = drawing.getImageData(0, 0, width, height);
    const pitch = { x: printed.width / width, y: printed.height / height };
    layWhite({ rgba: pixels.data, width, height }, pitch, choke);
    drawing.putImageData(pixels, 0, 0);
    const picture = drawing.canvas.transferToImageBitmap();
    return transfer(picture, [picture]);
  },

  layoutOutline: (
    outline: Outline,
    { printed, trim }: Pick<CheckRequest, 'printed' | 'trim'>,
  ): ArtworkOutline | null => layoutOutline(outline, printed, trim),

  grow(
    outline: Outline,
    printed: CheckRequest['printed'],
    by: Parameters<typeof growOutline>[2],
  ): readonly Contour[] {
    return growOutline(outline, printed, by);
  },
};

export type ArtworkReader = typeof reader;

expose(reader);
