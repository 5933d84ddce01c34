import { expose } from 'comlink';
import { fail, ok, type Result } from '../../units';
import { isJpeg, isPng, isWebp, readJpegHeader, readPngHeader, readWebpHeader } from '..';
import {
  type ArtworkProblem,
  hashOf,
  MOST_PIXELS,
  type ReadArtwork,
  thumbnailOf,
  trimOf,
} from './read-artwork';

/** Reads the header by what the file is, not by its name. */
function headerOf(bytes: Uint8Array) {
  if (isPng(bytes)) return { kind: 'png' as const, header: readPngHeader(bytes) };
  if (isJpeg(bytes)) return { kind: 'jpeg' as const, header: readJpegHeader(bytes) };
  if (isWebp(bytes)) return { kind: 'webp' as const, header: readWebpHeader(bytes) };
  return null;
}

const reader = {
  /** Reads a raster image; whether it is too large is told from its header, before it is decoded. */
  async read(file: Blob): Promise<Result<ReadArtwork, ArtworkProblem>> {
    let image: ImageBitmap | null = null;
    try {
      const bytes = await file.arrayBuffer();
      const found = headerOf(new Uint8Array(bytes));
      if (!found) return fail('not-image');
      const { kind, header } = found;
      if (!header.ok) return fail(header.problem === 'not-png' ? 'not-image' : header.problem);
      const { width, height, density } = header.value;
      if (width * height > MOST_PIXELS) return fail('too-large');
      const id = await hashOf(bytes);
      // Straight alpha, and the pixels as they are stored: nothing may be changed by looking at it.
      image = await createImageBitmap(file, { premultiplyAlpha: 'none', imageOrientation: 'none' }).catch(
        () => null,
      );
      if (!image) return fail('broken');
      const looked = { image, width, height };
      const trim = trimOf(looked);
      if (!trim) return fail('blank');
      return ok({
        id,
        kind,
        pixels: { width, height },
        density,
        trim,
        thumbnail: await thumbnailOf(looked, trim),
      });
    } catch {
      return fail('unreadable');
    } finally {
      image?.close();
    }
  },
};

export type ArtworkReader = typeof reader;

expose(reader);
