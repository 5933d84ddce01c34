import { context } from './read-artwork';

/** Letters whose widths differ from font to font. */
const SAMPLE = 'mmmmmmmmmmlliWQgj@0';
const SIZE = 72;
/** Two generic families, since one may be the very font that is asked for. */
const INSTEAD = ['monospace', 'serif'] as const;

/** Whether a font of a name is on this device: text in it is as wide in no generic family. */
export function hasFont(family: string): boolean {
  const drawing = context(1, 1);
  const widthIn = (families: string): number => {
    drawing.font = `${SIZE}px ${families}`;
    return drawing.measureText(SAMPLE).width;
  };
  const quoted = `"${family.replace(/["\\\\]/g, '')}"`;
  return INSTEAD.some((other) => widthIn(`${quoted}, ${other}`) !== widthIn(other));
}
