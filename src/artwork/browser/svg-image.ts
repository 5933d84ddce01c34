import { fail, ok, type Result } from '../../units';
import { nextTask } from '../../units/browser/next-task';
import type { PixelBox } from '..';
import {
  type ArtworkProblem,
  context,
  type ReadArtwork,
  thumbnailOf,
  trimOf,
  type WeighedSvg,
} from './read-artwork';

/** The longer side of the raster an SVG is looked at in, in pixels. */
const LOOKED_AT = 1600;

interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * An SVG as an image to draw, which workers cannot: nothing in it is run, nothing is fetched for it.
 * @throws if it cannot be drawn
 */
export async function openSvg(svg: Blob | string): Promise<HTMLImageElement> {
  const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    return image;
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** How long an SVG may be drawn, in milliseconds: what takes longer would not end in a print either. */
const LONGEST = 20_000;
/** How many rows are drawn at first, and how long the page may be held up for a band of them, in milliseconds. */
const FIRST_ROWS = 32;
const LEAST_ROWS = 8;
const SHORT_TASK = 50;

class TooSlow extends Error {}

/**
 * Draws an SVG in bands, between which the page is free.
 * @param box where the whole drawing lies in the raster
 * @throws {TooSlow} if it takes too long; the signal's reason, if it is aborted
 */
async function drawInBands(
  image: HTMLImageElement,
  box: PixelBox,
  { width, height }: Size,
  signal?: AbortSignal,
): Promise<OffscreenCanvas> {
  const drawing = context(width, height);
  const started = performance.now();
  for (let [top, rows] = [0, FIRST_ROWS]; top < height; ) {
    signal?.throwIfAborted();
    if (performance.now() - started > LONGEST) throw new TooSlow();
    const before = performance.now();
    drawing.save();
    drawing.beginPath();
    drawing.rect(0, top, width, rows);
    drawing.clip();
    drawing.drawImage(image, box.x, box.y, box.width, box.height);
    drawing.restore();
    // Until a pixel is asked for, drawing may be put off.
    drawing.getImageData(0, top, 1, 1);
    const took = performance.now() - before;
    top += rows;
    rows = took < SHORT_TASK ? 2 * rows : Math.max(LEAST_ROWS, Math.floor(rows / 2));
    await nextTask();
  }
  return drawing.canvas;
}

const whyNot = (error: unknown): 'too-slow' | 'broken' => (error instanceof TooSlow ? 'too-slow' : 'broken');

/** Looks at an SVG that was weighed. */
export async function readSvg(
  file: File,
  { id, header }: WeighedSvg,
): Promise<Result<ReadArtwork, ArtworkProblem>> {
  const { width, height, metres } = header;
  const scale = LOOKED_AT / Math.max(width, height);
  const pixels = {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
  try {
    const drawn = await drawInBands(await openSvg(file), { x: 0, y: 0, ...pixels }, pixels);
    const looked = { image: drawn, ...pixels };
    const trim = trimOf(looked);
    if (!trim) return fail('blank');
    const density = metres && { x: pixels.width / metres.width, y: pixels.height / metres.height };
    return ok({ id, kind: 'svg', pixels, density, trim, thumbnail: await thumbnailOf(looked, trim) });
  } catch (error) {
    return fail(whyNot(error));
  }
}

/**
 * Draws the trimmed box of an SVG that was weighed, at a size.
 * @param pixels the raster that the box was found in
 * @returns `null` if it cannot be drawn
 * @throws the signal's reason, if it is aborted
 */
export async function drawSvg(
  file: Blob,
  pixels: Size,
  trim: PixelBox,
  size: Size,
  signal?: AbortSignal,
): Promise<ImageBitmap | null> {
  const [across, down] = [size.width / trim.width, size.height / trim.height];
  const box = {
    x: -trim.x * across,
    y: -trim.y * down,
    width: pixels.width * across,
    height: pixels.height * down,
  };
  try {
    return (await drawInBands(await openSvg(file), box, size, signal)).transferToImageBitmap();
  } catch {
    signal?.throwIfAborted();
    return null;
  }
}
