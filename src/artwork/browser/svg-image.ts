import { fail, ok, type Result } from '../../units';
import { sha256 } from '../../units/browser/sha256';
import { type PixelBox, readSvgHeader } from '..';
import { type ArtworkProblem, context, type ReadArtwork, thumbnailOf, trimOf } from './read-artwork';

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

export async function readSvg(file: File): Promise<Result<ReadArtwork, ArtworkProblem>> {
  const text = await file.text().catch(() => null);
  if (text === null) return fail('unreadable');
  const header = readSvgHeader(text);
  if (!header.ok) return header;
  const { width, height, metres } = header.value;
  const scale = LOOKED_AT / Math.max(width, height);
  const pixels = {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
  const read = async (): Promise<Result<ReadArtwork, ArtworkProblem>> => {
    const looked = { image: await openSvg(file), ...pixels };
    const trim = trimOf(looked);
    if (!trim) return fail('blank');
    const density = metres && { x: pixels.width / metres.width, y: pixels.height / metres.height };
    const id = await sha256(await file.arrayBuffer());
    return ok({ id, kind: 'svg', pixels, density, trim, thumbnail: await thumbnailOf(looked, trim) });
  };
  return read().catch(() => fail('broken'));
}

/**
 * Draws the trimmed box of an SVG at a size.
 * @param pixels the raster that the box was found in
 * @returns `null` if it cannot be drawn
 */
export const drawSvg = (file: Blob, pixels: Size, trim: PixelBox, size: Size): Promise<ImageBitmap | null> =>
  openSvg(file)
    .then((image) => {
      const drawing = context(size.width, size.height);
      const [across, down] = [size.width / trim.width, size.height / trim.height];
      drawing.drawImage(image, -trim.x * across, -trim.y * down, pixels.width * across, pixels.height * down);
      return drawing.canvas.transferToImageBitmap();
    })
    .catch(() => null);
