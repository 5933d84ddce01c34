import { ranges } from '../../../src/model';

/** Pixels of a mark's longer side: 12 mm on paper at 600 dots an inch. */
const SIDE = 288;

/** A mark as the file that it is, a PNG. */
export const markFile = (mark: string): Blob =>
  new Blob([Uint8Array.from(atob(mark), (sign) => sign.charCodeAt(0))], { type: 'image/png' });

const base64 = async (file: Blob): Promise<string> =>
  btoa(Array.from(new Uint8Array(await file.arrayBuffer()), (byte) => String.fromCharCode(byte)).join(''));

/** A picture as a PNG whose longer side has so many pixels at most. */
function drawn(image: HTMLImageElement, most: number): Promise<Blob | null> {
  // A drawing may have no size of its own.
  const [width, height] = [image.naturalWidth || most, image.naturalHeight || most];
  const scale = Math.min(1, most / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  const drawing = canvas.getContext('2d');
  if (!drawing) return Promise.resolve(null);
  drawing.imageSmoothingQuality = 'high';
  drawing.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((done) => canvas.toBlob(done, 'image/png'));
}

/**
 * A picture made small enough to be kept beside the shop's name.
 * @returns the mark, a PNG in base64; `null` where the file is no picture that the browser shows
 */
export async function readMark(file: Blob): Promise<string | null> {
  const url = URL.createObjectURL(file);
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    // What takes too much, as a photograph may, is made smaller still.
    for (let side = SIDE; side >= SIDE / 8; side /= 2) {
      const small = await drawn(image, side);
      const mark = small && (await base64(small));
      if (mark && mark.length <= ranges.mark.most) return mark;
    }
    return null;
  } catch {
    return null;
  } finally {
    URL.revokeObjectURL(url);
  }
}
