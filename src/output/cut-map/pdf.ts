import fontkit from '@cantoo/fontkit';
import {
  degrees,
  grayscale,
  type PDFDocument,
  type PDFFont,
  type PDFImage,
  type PDFPage,
} from '@cantoo/pdf-lib';
import { type PdfFacts, trueSizeDocument } from '../pdf/document';
import { type LineMark, type Mark, type Page, PT, type TextMark, type Tone, type Weight } from './marks';

/** Font files (TrueType or WOFF) of each weight; a character is taken from the first that has it. */
export interface FontFiles {
  readonly regular: readonly Uint8Array[];
  readonly bold: readonly Uint8Array[];
}

interface MapFacts extends PdfFacts {
  /** A BCP 47 tag. */
  readonly language: string;
}

/** Blackness of a tone, by the PDF's scale from 0, black, to 1. */
const GREY: Record<Tone, number> = { ink: 0, quiet: 0.4, faint: 0.65 };

/** A font with what it can set. */
interface Face {
  readonly font: PDFFont;
  readonly has: ReadonlySet<number>;
}

type Faces = Record<Weight, readonly Face[]>;

/** Points from millimetres. */
const pt = (mm: number) => mm / PT;

async function embed(document: PDFDocument, files: readonly Uint8Array[]): Promise<Face[]> {
  return Promise.all(
    files.map(async (file) => {
      const font = await document.embedFont(file, { subset: true });
      return { font, has: new Set(font.getCharacterSet()) };
    }),
  );
}

/** Text set in one font. */
interface TextRun {
  readonly font: PDFFont;
  text: string;
}

/** Splits a text by the font that has its characters; what none of them has becomes a question mark. */
function runsOf(text: string, faces: readonly Face[]): TextRun[] {
  const runs: TextRun[] = [];
  for (const character of text.normalize('NFC')) {
    const face = faces.find(({ has }) => has.has(character.codePointAt(0) ?? 0));
    const font = (face ?? faces[0])?.font;
    if (!font) continue;
    const last = runs.at(-1);
    const drawn = face ? character : '?';
    if (last?.font === font) last.text += drawn;
    else runs.push({ font, text: drawn });
  }
  return runs;
}

/** Draws on a page in millimetres from its top left corner. */
function drawText(page: PDFPage, mark: TextMark, faces: Faces): void {
  const size = pt(mark.size);
  const runs = runsOf(mark.text, faces[mark.weight]).map((run) => ({
    ...run,
    width: run.font.widthOfTextAtSize(run.text, size),
  }));
  const whole = runs.reduce((sum, { width }) => sum + width, 0);
  let along = { start: 0, middle: -whole / 2, end: -whole }[mark.anchor];
  const [x, y] = [pt(mark.x), page.getHeight() - pt(mark.y)];
  for (const { font, text, width } of runs) {
    page.drawText(text, {
      x: mark.upright ? x : x + along,
      y: mark.upright ? y + along : y,
      size,
      font,
      color: grayscale(GREY[mark.tone]),
      rotate: degrees(mark.upright ? 90 : 0),
    });
    along += width;
  }
}

function drawLine(page: PDFPage, { x1, y1, x2, y2, thick, dash, tone }: LineMark): void {
  const height = page.getHeight();
  page.drawLine({
    start: { x: pt(x1), y: height - pt(y1) },
    end: { x: pt(x2), y: height - pt(y2) },
    thickness: pt(thick),
    color: grayscale(GREY[tone]),
    ...(dash ? { dashArray: dash.map(pt) } : {}),
  });
}

function draw(page: PDFPage, mark: Mark, faces: Faces, pictures: ReadonlyMap<string, PDFImage>): void {
  if (mark.kind === 'picture') {
    const image = pictures.get(mark.artwork);
    const { x, y, width, height } = mark;
    const at = { x: pt(x), y: page.getHeight() - pt(y + height), width: pt(width), height: pt(height) };
    if (image) page.drawImage(image, at);
  } else if (mark.kind === 'text') drawText(page, mark, faces);
  else if (mark.kind === 'line') drawLine(page, mark);
  else
    page.drawRectangle({
      x: pt(mark.x),
      y: page.getHeight() - pt(mark.y + mark.height),
      width: pt(mark.width),
      height: pt(mark.height),
      borderWidth: pt(mark.thick),
      borderColor: grayscale(GREY[mark.tone]),
    });
}

/**
 * The pages as a PDF (ISO 32000-1) whose boxes are the paper's exact size and which asks viewers not to
 * scale it. Fonts are embedded, each only with the characters it sets.
 * @param thumbnails PNG files of the artwork that pages show, by its id
 * @throws if a font file cannot be read
 */
export async function cutMapPdf(
  pages: readonly Page[],
  fonts: FontFiles,
  facts: MapFacts,
  thumbnails: ReadonlyMap<string, Uint8Array> = new Map(),
): Promise<Uint8Array> {
  const document = await trueSizeDocument(facts);
  document.registerFontkit(fontkit);
  document.setLanguage(facts.language);
  const faces: Faces = { 400: await embed(document, fonts.regular), 700: await embed(document, fonts.bold) };
  const pictures = new Map<string, PDFImage>();
  for (const [artwork, png] of thumbnails) pictures.set(artwork, await document.embedPng(png));
  for (const { width, height, marks } of pages) {
    const page = document.addPage([pt(width), pt(height)]);
    page.setTrimBox(0, 0, pt(width), pt(height));
    for (const mark of marks) draw(page, mark, faces, pictures);
  }
  return document.save();
}
