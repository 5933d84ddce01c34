import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fontkit from '@cantoo/fontkit';
import { PNG } from 'pngjs';
import type { Measure, TextMark } from '../../src/output/cut-map';
import type { FontFiles, TextPicture } from '../../src/output/pdf';

const require = createRequire(import.meta.url);

const file = (font: string, subset: string, weight: number) =>
  new Uint8Array(
    readFileSync(require.resolve(`@fontsource/${font}/files/${font}-${subset}-${weight}-normal.woff`)),
  );

const files = (weight: number) => [
  ...['latin', 'latin-ext'].map((subset) => file('atkinson-hyperlegible-next', subset, weight)),
  ...['greek', 'greek-ext', 'cyrillic', 'cyrillic-ext'].map((subset) =>
    file('source-sans-3', subset, weight),
  ),
];

export const fonts: FontFiles = { regular: files(400), bold: files(700) };

function face(bytes: Uint8Array) {
  const font = fontkit.create(bytes);
  if (!('layout' in font)) throw new Error('a collection, not a font');
  return font;
}

const faces = { 400: fonts.regular.map(face), 700: fonts.bold.map(face) };

/** How wide a character is set, in ems; what no font has is as wide as one. */
function advanceOf(character: string, weight: TextMark['weight']): number {
  const font = faces[weight].find((each) => each.hasGlyphForCodePoint(character.codePointAt(0) ?? 0));
  return font ? font.layout(character).advanceWidth / font.unitsPerEm : 1;
}

/** Fonts are asked for each character once. */
const advances = { 400: new Map<string, number>(), 700: new Map<string, number>() };

/** How wide the fonts set a text, by their own metrics. */
export const measure: Measure = (text, size, weight) =>
  [...text.normalize('NFC')].reduce((sum, character) => {
    const known = advances[weight].get(character) ?? advanceOf(character, weight);
    advances[weight].set(character, known);
    return sum + known * size;
  }, 0);

/** A grey picture as large as a text would be. */
export const drawText = ({
  text,
  size,
  weight,
}: Pick<TextMark, 'text' | 'size' | 'weight'>): Promise<TextPicture> => {
  const advance = measure(text, size, weight);
  const png = new PNG({ width: Math.ceil(advance * 20), height: Math.ceil(size * 24) });
  png.data.fill(128);
  return Promise.resolve({
    png: new Uint8Array(PNG.sync.write(png)),
    advance,
    left: -0.1 * size,
    ascent: size,
    width: advance + 0.2 * size,
    height: 1.2 * size,
  });
};
