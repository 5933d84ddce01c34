import regular from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url';
import bold from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?url';
import extraRegular from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url';
import extraBold from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff?url';
import cyrillic from '@fontsource/source-sans-3/files/source-sans-3-cyrillic-400-normal.woff?url';
import cyrillicBold from '@fontsource/source-sans-3/files/source-sans-3-cyrillic-700-normal.woff?url';
import cyrillicExtra from '@fontsource/source-sans-3/files/source-sans-3-cyrillic-ext-400-normal.woff?url';
import cyrillicExtraBold from '@fontsource/source-sans-3/files/source-sans-3-cyrillic-ext-700-normal.woff?url';
import greek from '@fontsource/source-sans-3/files/source-sans-3-greek-400-normal.woff?url';
import greekBold from '@fontsource/source-sans-3/files/source-sans-3-greek-700-normal.woff?url';
import greekExtra from '@fontsource/source-sans-3/files/source-sans-3-greek-ext-400-normal.woff?url';
import greekExtraBold from '@fontsource/source-sans-3/files/source-sans-3-greek-ext-700-normal.woff?url';
import type { Measure } from '../../src/output/cut-map';
import type { FontFiles } from '../../src/output/pdf';

/** Scripts that the screen's font lacks, each by the characters of its files, as the package lists them. */
const SCRIPTS = [
  { range: 'U+0370-03FF', files: { 400: greek, 700: greekBold } },
  { range: 'U+1F00-1FFF', files: { 400: greekExtra, 700: greekExtraBold } },
  { range: 'U+0400-045F, U+0490-0491, U+04B0-04B1, U+2116', files: { 400: cyrillic, 700: cyrillicBold } },
  {
    range: 'U+0460-048F, U+0492-04AF, U+04B2-052F, U+1C80-1C8A, U+20B4, U+2DE0-2DFF, U+A640-A69F',
    files: { 400: cyrillicExtra, 700: cyrillicExtraBold },
  },
] as const;

async function fetchFont(url: string): Promise<Uint8Array> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`font ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}

/** The files the PDF embeds: the same fonts as on screen. */
export async function fontFiles(): Promise<FontFiles> {
  const [plain, heavy] = await Promise.all([
    Promise.all([regular, extraRegular, ...SCRIPTS.map(({ files }) => files[400])].map(fetchFont)),
    Promise.all([bold, extraBold, ...SCRIPTS.map(({ files }) => files[700])].map(fetchFont)),
  ]);
  return { regular: plain, bold: heavy };
}

/** Text is measured large, so that hinting does not show. */
const AT = 200;
/** The font of the scripts that the screen's lacks: a face is fetched when a text has letters of it. */
const SECOND = 'Source Sans 3';
/** What the map is set in: see also `cut-map.css`. */
export const FAMILY = `'Atkinson Hyperlegible Next', '${SECOND}', sans-serif`;

export function penOn(canvas: OffscreenCanvas): OffscreenCanvasRenderingContext2D {
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error('no 2d context');
  // Letters are set one after the other, as in the PDF.
  pen.fontKerning = 'none';
  return pen;
}

/** How wide the screen's fonts set a text. Needs them loaded: see {@link fontsReady}. */
export function screenMeasure(): Measure {
  const pen = penOn(new OffscreenCanvas(1, 1));
  return (text, size, weight) => {
    pen.font = `${weight} ${AT}px ${FAMILY}`;
    return (pen.measureText(text).width * size) / AT;
  };
}

/** The faces that a browser may fetch for scripts that the screen's font lacks. */
const faces = SCRIPTS.flatMap(({ range, files }) =>
  ([400, 700] as const).map(
    (weight) =>
      new FontFace(SECOND, `url(${new URL(files[weight], location.href).href})`, {
        weight: String(weight),
        unicodeRange: range,
      }),
  ),
);

/** Loads the faces that a text is set in, of both weights. */
export async function fontsReady(text: string): Promise<void> {
  for (const face of faces) document.fonts.add(face);
  const sample = `Cut map 0 ×…${text}`;
  await Promise.all([400, 700].map((weight) => document.fonts.load(`${weight} 16px ${FAMILY}`, sample)));
}
