import fontkit from '@cantoo/fontkit';
import type { PDFDocument, PDFFont } from '@cantoo/pdf-lib';

/** Font files (TrueType or WOFF) of each weight; a character is taken from the first that has it. */
export interface FontFiles {
  readonly regular: readonly Uint8Array[];
  readonly bold: readonly Uint8Array[];
}

/** A font with what it can set. */
export interface Face {
  readonly font: PDFFont;
  readonly has: ReadonlySet<number>;
}

/** The characters that a font file has. */
function characterSet(file: Uint8Array): ReadonlySet<number> {
  const font = fontkit.create(file);
  if (!('characterSet' in font)) throw new Error('a collection, not a font');
  return new Set(font.characterSet);
}

/**
 * Embeds the font files that some characters are taken from, each only with those that are set in it.
 * @throws if a file cannot be read
 */
export async function embedFaces(
  document: PDFDocument,
  files: readonly Uint8Array[],
  characters: ReadonlySet<number>,
): Promise<Face[]> {
  document.registerFontkit(fontkit);
  let missing = [...characters];
  const wanted = files.flatMap((file) => {
    const has = characterSet(file);
    const left = missing.filter((point) => !has.has(point));
    const isWanted = left.length < missing.length;
    missing = left;
    return isWanted ? [{ file, has }] : [];
  });
  return Promise.all(
    wanted.map(async ({ file, has }) => ({ font: await document.embedFont(file, { subset: true }), has })),
  );
}

/** The characters that a text is set with: letters and their marks composed. */
export const codePoints = (text: string): number[] =>
  [...text.normalize('NFC')].map((character) => character.codePointAt(0) ?? 0);

/** Text set in one font. */
interface TextRun {
  readonly font: PDFFont;
  text: string;
}

/** Marks stand over the letter before them only where a font composes the two. */
const MARK = /\p{Mark}/u;

/** A text parted by the font that has its characters; `null` if it has one that none of them can set. */
export function runsOf(text: string, faces: readonly Face[]): readonly TextRun[] | null {
  const runs: TextRun[] = [];
  for (const point of codePoints(text)) {
    const character = String.fromCodePoint(point);
    const face = faces.find(({ has }) => has.has(point));
    if (!face || MARK.test(character)) return null;
    const last = runs.at(-1);
    if (last?.font === face.font) last.text += character;
    else runs.push({ font: face.font, text: character });
  }
  return runs;
}
