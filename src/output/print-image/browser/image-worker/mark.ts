import type { MarkBox } from '../..';
import { orient } from '../../orientation';

const BLACK = 0xff000000;
/** Half-covered pixels are either ink or none: a faint edge would show as white. */
const INKED = 128;

/** The pixels of a mark: black, or its text in black on clear, as high as its box. */
export function markPixels({ text, upright, orientation }: MarkBox): Uint32Array {
  const { width, height } = upright;
  const pixels = new Uint32Array(width * height);
  if (text === null) return pixels.fill(BLACK);
  const drawing = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!drawing) throw new Error('no 2d context');
  const setIn = (size: number) => {
    drawing.font = `bold ${size}px sans-serif`;
  };
  setIn(height);
  // As tall as the box from its highest stroke to its lowest, in whatever script it is.
  const { actualBoundingBoxAscent: above, actualBoundingBoxDescent: below } = drawing.measureText(text);
  const enlarged = height / (above + below);
  setIn(height * enlarged);
  drawing.fillText(text, 0, above * enlarged, width);
  const { data } = drawing.getImageData(0, 0, width, height);
  for (let at = 0; at < pixels.length; at += 1) {
    if ((data[4 * at + 3] as number) >= INKED) pixels[at] = BLACK;
  }
  return orient(pixels, upright, orientation);
}
