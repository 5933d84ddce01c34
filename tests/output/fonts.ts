import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fontkit from '@cantoo/fontkit';
import type { FontFiles, Measure } from '../../src/output/cut-map';

const require = createRequire(import.meta.url);

const file = (subset: string, weight: number) =>
  new Uint8Array(
    readFileSync(
      require.resolve(
        `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-${subset}-${weight}-normal.woff`,
      ),
    ),
  );

export const fonts: FontFiles = {
  regular: [file('latin', 400), file('latin-ext', 400)],
  bold: [file('latin', 700), file('latin-ext', 700)],
};

function face(weight: number) {
  const font = fontkit.create(file('latin', weight));
  if (!('layout' in font)) throw new Error('a collection, not a font');
  return font;
}

const faces = { 400: face(400), 700: face(700) };

/** How wide the font sets a text, by its own metrics. */
export const measure: Measure = (text, size, weight) => {
  const font = faces[weight];
  return (font.layout(text).advanceWidth / font.unitsPerEm) * size;
};
