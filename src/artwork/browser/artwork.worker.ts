import { expose } from 'comlink';
import { fail, ok, type Result } from '../../units';
import { type Density, type PixelBox, type PngProblem, readPngHeader, trimBox } from '..';

/** Why a file is no artwork. `blank`: no pixel is strong enough to print. */
export type ArtworkProblem = PngProblem | 'unreadable' | 'too-large' | 'blank';

/** What is read from an image file. */
export interface ReadArtwork {
  /** SHA-256 of the file's bytes, in hexadecimal. */
  readonly id: string;
  readonly pixels: { readonly width: number; readonly height: number };
  readonly density: Density | null;
  readonly trim: PixelBox;
  /** The trimmed box as a small PNG. */
  readonly thumbnail: Blob;
}

/** Pixels a tab can hold beside everything else. */
const MOST_PIXELS = 150_000_000;
/** Rows looked at together: a strip of a large image takes some megabytes. */
const STRIP = 512;
const THUMBNAIL = 640;

const hex = (bytes: ArrayBuffer): string =>
  Array.from(new Uint8Array(bytes), (byte) => byte.toString(16).padStart(2, '0')).join('');

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

function context(width: number, height: number): OffscreenCanvasRenderingContext2D {
  const drawing = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!drawing) throw new Error('no 2d context');
  return drawing;
}

function trimOf(image: ImageBitmap): PixelBox | null {
  const { width, height } = image;
  const drawing = context(width, Math.min(STRIP, height));
  let box: PixelBox | null = null;
  for (let top = 0; top < height; top += STRIP) {
    const rows = Math.min(STRIP, height - top);
    drawing.clearRect(0, 0, width, rows);
    drawing.drawImage(image, 0, -top);
    const found = trimBox(drawing.getImageData(0, 0, width, rows).data, width, rows);
    if (found) box = union(box, { ...found, y: found.y + top });
  }
  return box;
}

function thumbnailOf(image: ImageBitmap, trim: PixelBox): Promise<Blob> {
  const scale = Math.min(1, THUMBNAIL / Math.max(trim.width, trim.height));
  const width = Math.max(1, Math.round(trim.width * scale));
  const height = Math.max(1, Math.round(trim.height * scale));
  const drawing = context(width, height);
  drawing.imageSmoothingQuality = 'high';
  drawing.drawImage(image, trim.x, trim.y, trim.width, trim.height, 0, 0, width, height);
  return drawing.canvas.convertToBlob({ type: 'image/png' });
}

const reader = {
  async read(file: Blob): Promise<Result<ReadArtwork, ArtworkProblem>> {
    let image: ImageBitmap | null = null;
    try {
      const bytes = await file.arrayBuffer();
      const header = readPngHeader(new Uint8Array(bytes));
      if (!header.ok) return header;
      const { width, height, density } = header.value;
      if (width * height > MOST_PIXELS) return fail('too-large');
      const id = hex(await crypto.subtle.digest('SHA-256', bytes));
      // Straight alpha and the file's own colours: nothing may be changed by looking at it.
      image = await createImageBitmap(file, { premultiplyAlpha: 'none' }).catch(() => null);
      if (!image) return fail('broken');
      const trim = trimOf(image);
      if (!trim) return fail('blank');
      return ok({ id, pixels: { width, height }, density, trim, thumbnail: await thumbnailOf(image, trim) });
    } catch {
      return fail('unreadable');
    } finally {
      image?.close();
    }
  },
};

export type ArtworkReader = typeof reader;

expose(reader);
