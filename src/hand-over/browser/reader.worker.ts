import { expose } from 'comlink';
import { readFrame, readPicture } from '../decode';

/** The longer side that a picture is looked at in, in pixels: a phone's own photographs are larger than helps. */
const SIZES = [1600, 800, 3200];

/** A picture's pixels in a size of its own; white where it is see-through. */
function pixelsOf(bitmap: ImageBitmap, longest: number): ImageData | null {
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const [width, height] = [Math.ceil(bitmap.width * scale), Math.ceil(bitmap.height * scale)];
  const context = new OffscreenCanvas(width, height).getContext('2d');
  if (!context) return null;
  context.fillStyle = 'white';
  context.fillRect(0, 0, width, height);
  context.drawImage(bitmap, 0, 0, width, height);
  return context.getImageData(0, 0, width, height);
}

const reader = {
  /** The text of the code in a frame of a film; `null` if none is found. */
  frame: (image: ImageData): string | null => readFrame(image),

  /** The text of the code in a picture file; `null` if none is found, or it is no picture. */
  async picture(file: Blob): Promise<string | null> {
    const bitmap = await createImageBitmap(file).catch(() => null);
    if (!bitmap) return null;
    for (const size of SIZES) {
      const image = pixelsOf(bitmap, size);
      const text = image && readPicture(image);
      if (text) return text;
    }
    return null;
  },
};

export type Reader = typeof reader;

expose(reader);
