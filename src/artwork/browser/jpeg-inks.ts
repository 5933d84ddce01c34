/// <reference path="./pdfjs-images.d.ts" />
import assumedProfile from 'pdfjs-dist/iccs/CGATS001Compat-v2-micro.icc?url';
import { type InksToLab, inksToRgba, readInks } from '../inks';
import type { JpegInks } from '../jpeg';

/** How an image is turned to be looked at, by its Exif orientation (Exif 2.32, 4.6.4), as a canvas is. */
const TURNS: Readonly<Record<number, (width: number, height: number) => DOMMatrix2DInit>> = {
  2: (w) => ({ a: -1, d: 1, e: w }),
  3: (w, h) => ({ a: -1, d: -1, e: w, f: h }),
  4: (_, h) => ({ a: 1, d: -1, f: h }),
  5: () => ({ a: 0, b: 1, c: 1, d: 0 }),
  6: (_, h) => ({ a: 0, b: 1, c: -1, d: 0, e: h }),
  7: (w, h) => ({ a: 0, b: -1, c: -1, d: 0, e: h, f: w }),
  8: (w) => ({ a: 0, b: -1, c: 1, d: 0, f: w }),
};

async function assumed(): Promise<InksToLab> {
  const answer = await fetch(assumedProfile);
  const look = answer.ok ? readInks(new Uint8Array(await answer.arrayBuffer())) : null;
  if (!look) throw new Error('no profile of inks');
  return look;
}

/**
 * Decodes a JPEG of four inks, which browsers show in colours of their own, by its profile or the one that is assumed.
 * @throws if it cannot be decoded
 */
export async function decodeInks(
  bytes: Uint8Array,
  { inverted, orientation, icc }: JpegInks,
): Promise<ImageBitmap> {
  const { JpegImage } = await import('pdfjs-dist/legacy/image_decoders/pdf.image_decoders.mjs');
  const image = new JpegImage();
  image.parse(bytes);
  const { width, height } = image;
  const inks = image.getData({ width, height, isSourcePDF: true });
  if (inverted) for (let at = 0; at < inks.length; at += 1) inks[at] = 255 - (inks[at] as number);
  const look = (icc && readInks(icc)) ?? (await assumed());
  const pixels = new ImageData(inksToRgba(inks, look), width, height);
  const turn = TURNS[orientation]?.(width, height);
  const straight = { premultiplyAlpha: 'none' } as const;
  if (!turn) return createImageBitmap(pixels, straight);
  const isOnSide = orientation >= 5;
  const drawing = new OffscreenCanvas(isOnSide ? height : width, isOnSide ? width : height).getContext('2d');
  if (!drawing) throw new Error('no 2d context');
  drawing.setTransform(turn);
  drawing.drawImage(await createImageBitmap(pixels, straight), 0, 0);
  return drawing.canvas.transferToImageBitmap();
}
