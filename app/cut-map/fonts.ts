import regular from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url';
import bold from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?url';
import extraRegular from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url';
import extraBold from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff?url';
import type { FontFiles, Measure } from '../../src/output/cut-map';

async function fetchFont(url: string): Promise<Uint8Array> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`font ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}

/** The files the PDF embeds: the same font as on screen. */
export async function fontFiles(): Promise<FontFiles> {
  const [latin, extra, boldLatin, boldExtra] = await Promise.all(
    [regular, extraRegular, bold, extraBold].map(fetchFont),
  );
  const both = (a: Uint8Array | undefined, b: Uint8Array | undefined) =>
    [a, b].filter((file) => file !== undefined);
  return { regular: both(latin, extra), bold: both(boldLatin, boldExtra) };
}

/** Text is measured large, so that hinting does not show. */
const AT = 200;
const FAMILY = "'Atkinson Hyperlegible Next', sans-serif";

/** How wide the screen's font sets a text. Needs the font loaded: see {@link fontsReady}. */
export function screenMeasure(): Measure {
  const pen = new OffscreenCanvas(1, 1).getContext('2d');
  if (!pen) throw new Error('no 2d context');
  return (text, size, weight) => {
    pen.font = `${weight} ${AT}px ${FAMILY}`;
    return (pen.measureText(text).width * size) / AT;
  };
}

export const fontsReady = (): Promise<unknown> =>
  Promise.all([400, 700].map((weight) => document.fonts.load(`${weight} 16px ${FAMILY}`, 'Cut map 0 ×…')));
