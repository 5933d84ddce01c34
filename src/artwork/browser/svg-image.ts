import { fail, ok, type Result } from '../../units';
import { readSvgHeader } from '..';
import { type ArtworkProblem, hashOf, type ReadArtwork, thumbnailOf, trimOf } from './read-artwork';

/** The longer side of the raster an SVG is looked at in, in pixels. */
const LOOKED_AT = 1600;

/** Workers cannot draw SVG, so it is done here, as an image: nothing in it is run, nothing is fetched for it. */
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
  const url = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const looked = { image, ...pixels };
    const trim = trimOf(looked);
    if (!trim) return fail('blank');
    const density = metres && { x: pixels.width / metres.width, y: pixels.height / metres.height };
    const id = await hashOf(await file.arrayBuffer());
    return ok({ id, kind: 'svg', pixels, density, trim, thumbnail: await thumbnailOf(looked, trim) });
  } catch {
    return fail('broken');
  } finally {
    URL.revokeObjectURL(url);
  }
}
