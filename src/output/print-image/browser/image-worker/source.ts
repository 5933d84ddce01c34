import { decodeImage } from '../../../../artwork/browser/read-artwork';
import { createResampler, type PixelSize } from '../..';
import type { DrawnBand, ImageSource } from './job';

/** Rows that are read from a canvas together. */
const BAND = 256;

/**
 * A canvas that hands out pixels as they were drawn. One of half floats keeps straight alpha exactly; where a browser has
 * none, colours of see-through pixels are off by as much as eight bits premultiplied lose, and opaque ones exact.
 */
function readingContext(width: number, height: number): OffscreenCanvasRenderingContext2D {
  const exact = { willReadFrequently: true, colorType: 'float16' };
  const drawing = new OffscreenCanvas(width, height).getContext('2d', exact);
  if (!drawing) throw new Error('no 2d context');
  return drawing;
}

/** The image as everything shows it; as it is stored, where an older version read it so and it was not read again since. */
async function decode({ file, pixels }: ImageSource): Promise<ImageBitmap> {
  const turned = await decodeImage(file);
  if (turned.width === pixels.width && turned.height === pixels.height) return turned;
  turned.close();
  return createImageBitmap(file, { premultiplyAlpha: 'none', imageOrientation: 'none' });
}

/** Hands the rows of what `draw` puts on a canvas to `take`, from the top. */
async function eachRow(
  { width, height }: PixelSize,
  draw: (drawing: OffscreenCanvasRenderingContext2D, top: number, rows: number) => Promise<void> | void,
  take: (row: Uint8ClampedArray) => void,
): Promise<void> {
  const drawing = readingContext(width, Math.min(BAND, height));
  for (let top = 0; top < height; top += BAND) {
    const rows = Math.min(BAND, height - top);
    drawing.clearRect(0, 0, width, rows);
    await draw(drawing, top, rows);
    const { data } = drawing.getImageData(0, 0, width, rows);
    for (let row = 0; row < rows; row += 1) take(data.subarray(4 * width * row, 4 * width * (row + 1)));
  }
}

/**
 * The trimmed box of an artwork at each of some sizes. It is decoded once, and no size is made from another.
 * @throws if it cannot be decoded
 */
export async function picturesOf(
  source: ImageSource,
  sizes: readonly PixelSize[],
  drawnBand: DrawnBand,
): Promise<Uint32Array<ArrayBuffer>[]> {
  const { trim } = source;
  if (source.kind === 'svg' || source.kind === 'pdf') {
    const pictures: Uint32Array<ArrayBuffer>[] = [];
    for (const size of sizes) {
      const { push, finish } = createResampler(size, size);
      const draw = async (drawing: OffscreenCanvasRenderingContext2D, top: number, rows: number) => {
        const band = await drawnBand(source.id, size, top, rows);
        drawing.drawImage(band, 0, 0);
        band.close();
      };
      await eachRow(size, draw, push);
      pictures.push(finish());
    }
    return pictures;
  }
  const image = await decode(source);
  try {
    const resamplers = sizes.map((size) => createResampler(trim, size));
    await eachRow(
      trim,
      (drawing, top) => drawing.drawImage(image, -trim.x, -trim.y - top),
      (row) => {
        for (const { push } of resamplers) push(row);
      },
    );
    return resamplers.map(({ finish }) => finish());
  } finally {
    image.close();
  }
}
