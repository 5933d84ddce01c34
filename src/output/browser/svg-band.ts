import { transfer } from 'comlink';
import type { ImageSource, SvgBand } from './print-job';

/** The image an SVG is drawn from: nothing in it is run, nothing is fetched for it. */
async function open(file: Blob): Promise<HTMLImageElement> {
  const url = URL.createObjectURL(new Blob([file], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    return image;
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** Draws SVG for a worker, which cannot, a band at a time. */
export function svgBands(sources: readonly ImageSource[]): SvgBand {
  const images = new Map<string, Promise<HTMLImageElement>>();
  return async (id, size, top, rows) => {
    const source = sources.find((other) => other.id === id);
    if (!source) throw new Error('no such artwork');
    const opening = images.get(id) ?? open(source.file);
    images.set(id, opening);
    const image = await opening;
    const { trim, pixels } = source;
    const [across, down] = [size.width / trim.width, size.height / trim.height];
    const canvas = new OffscreenCanvas(size.width, rows);
    const drawing = canvas.getContext('2d');
    if (!drawing) throw new Error('no 2d context');
    drawing.drawImage(
      image,
      -trim.x * across,
      -trim.y * down - top,
      pixels.width * across,
      pixels.height * down,
    );
    const band = canvas.transferToImageBitmap();
    return transfer(band, [band]);
  };
}
