import type { MarkBox } from '../..';
import { orient } from '../../orientation';

const BLACK = 0xff000000;
/** A capital's height over the type size, in common sans serif faces. */
const CAP = 0.72;
/** Half-covered pixels are either ink or none: a faint edge would show as white. */
const INKED = 128;

/** The pixels of a mark: black, or its text in black on clear, as high as its box. */
export function markPixels({ text, upright, orientation }: MarkBox): Uint32Array {
  const { width, height } = upright;
  const pixels = new Uint32Array(width * height);
  if (text === null) return pixels.fill(BLACK);
  const drawing = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!drawing) throw new Error('no 2d context');
  drawing.font = `bold ${height / CAP}px sans-serif`;
  drawing.fillText(text, 0, height, width);
  const { data } = drawing.getImageData(0, 0, width, height);
  for (let at = 0; at < pixels.length; at += 1) {
    if ((data[4 * at + 3] as number) >= INKED) pixels[at] = BLACK;
  }
  return orient(pixels, upright, orientation);
}
