import { degrees, grayscale, type PDFDocument, type PDFImage, type PDFPage } from '@cantoo/pdf-lib';
import {
  codePoints,
  drawnAsText,
  embedFaces,
  type Face,
  type FontFiles,
  type PdfFacts,
  runsOf,
  type TextPicture,
  trueSizeDocument,
} from '../pdf';
import {
  type LineMark,
  type Mark,
  type Page,
  PT,
  type RingMark,
  type TextMark,
  type Tone,
  type Weight,
} from './marks';

/** What texts are set in: font files, and for what none of them has a picture of the text. */
interface Lettering {
  readonly fonts: FontFiles;
  readonly drawText: (mark: TextMark) => Promise<TextPicture>;
}

interface MapFacts extends PdfFacts {
  /** A BCP 47 tag. */
  readonly language: string;
}

/** Blackness of a tone, by the PDF's scale from 0, black, to 1. */
const GREY: Record<Tone, number> = { ink: 0, quiet: 0.4, faint: 0.65 };

type Faces = Record<Weight, readonly Face[]>;

/** Points from millimetres. */
const pt = (mm: number) => mm / PT;

/** All that is set in a weight, as runs are made of it. */
const charactersOf = (pages: readonly Page[], weight: Weight): ReadonlySet<number> =>
  new Set(
    pages
      .flatMap(({ marks }) => marks)
      .flatMap((mark) => (mark.kind === 'text' && mark.weight === weight ? codePoints(mark.text) : [])),
  );

/** A picture of a text, and where in it the text starts. */
interface Drawn extends Omit<TextPicture, 'png'> {
  readonly image: PDFImage;
}

/** What marks are drawn with. */
interface Means {
  readonly faces: Faces;
  /** Pictures of texts that no font can set, by what they look like. */
  readonly texts: ReadonlyMap<string, Drawn>;
  readonly thumbnails: ReadonlyMap<string, PDFImage>;
}

/** Texts of one look are one picture. */
const lookOf = ({ text, size, weight, tone }: TextMark) => [weight, tone, size, text].join(' ');

async function drawnTexts(
  document: PDFDocument,
  pages: readonly Page[],
  faces: Faces,
  drawText: Lettering['drawText'],
): Promise<ReadonlyMap<string, Drawn>> {
  const drawn = new Map<string, Drawn>();
  for (const mark of pages.flatMap(({ marks }) => marks)) {
    if (mark.kind !== 'text' || drawn.has(lookOf(mark)) || runsOf(mark.text, faces[mark.weight])) continue;
    const { png, ...place } = await drawText(mark);
    drawn.set(lookOf(mark), { ...place, image: await document.embedPng(png) });
  }
  return drawn;
}

/** How much of a text lies before the point that it is anchored at. */
const BEFORE: Record<TextMark['anchor'], number> = { start: 0, middle: 0.5, end: 1 };

/** Draws on a page in millimetres from its top left corner. */
function drawText(page: PDFPage, mark: TextMark, { faces, texts }: Means): void {
  const picture = texts.get(lookOf(mark));
  if (picture) drawnAsText(page, mark.text, () => drawPicture(page, mark, picture));
  else setText(page, mark, runsOf(mark.text, faces[mark.weight]) ?? []);
}

function drawPicture(page: PDFPage, mark: TextMark, { image, ...at }: Drawn): void {
  const { x, y, upright, anchor } = mark;
  const along = at.left - BEFORE[anchor] * at.advance;
  const below = at.height - at.ascent;
  page.drawImage(image, {
    x: pt(upright ? x + below : x + along),
    y: page.getHeight() - pt(upright ? y - along : y + below),
    width: pt(at.width),
    height: pt(at.height),
    rotate: degrees(upright ? 90 : 0),
  });
}

function setText(page: PDFPage, mark: TextMark, runs: NonNullable<ReturnType<typeof runsOf>>): void {
  const size = pt(mark.size);
  const widths = runs.map(({ font, text }) => font.widthOfTextAtSize(text, size));
  let along = -BEFORE[mark.anchor] * widths.reduce((sum, width) => sum + width, 0);
  const [x, y] = [pt(mark.x), page.getHeight() - pt(mark.y)];
  for (const [index, { font, text }] of runs.entries()) {
    page.drawText(text, {
      x: mark.upright ? x : x + along,
      y: mark.upright ? y + along : y,
      size,
      font,
      color: grayscale(GREY[mark.tone]),
      rotate: degrees(mark.upright ? 90 : 0),
    });
    along += widths[index] ?? 0;
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

/** A path, whose own y runs downwards as the page's marks do. */
function drawRing(page: PDFPage, { points, thick, tone }: RingMark): void {
  const path = points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${pt(x)} ${pt(y)}`).join('');
  page.drawSvgPath(`${path}Z`, {
    x: 0,
    y: page.getHeight(),
    borderWidth: pt(thick),
    borderColor: grayscale(GREY[tone]),
  });
}

function draw(page: PDFPage, mark: Mark, means: Means): void {
  if (mark.kind === 'picture') {
    const image = means.thumbnails.get(mark.artwork);
    const { x, y, width, height } = mark;
    const at = { x: pt(x), y: page.getHeight() - pt(y + height), width: pt(width), height: pt(height) };
    if (image) page.drawImage(image, at);
  } else if (mark.kind === 'text') drawText(page, mark, means);
  else if (mark.kind === 'line') drawLine(page, mark);
  else if (mark.kind === 'ring') drawRing(page, mark);
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
 * scale it. Fonts are embedded, each only with the characters it sets; a text that they cannot set is a picture
 * that says which text it is.
 * @param thumbnails PNG files of the artwork that pages show, by its id
 * @throws if a font file cannot be read
 */
export async function cutMapPdf(
  pages: readonly Page[],
  { fonts, drawText: pictureOf }: Lettering,
  facts: MapFacts,
  thumbnails: ReadonlyMap<string, Uint8Array> = new Map(),
): Promise<Uint8Array> {
  const document = await trueSizeDocument(facts);
  document.setLanguage(facts.language);
  const faces: Faces = {
    400: await embedFaces(document, fonts.regular, charactersOf(pages, 400)),
    700: await embedFaces(document, fonts.bold, charactersOf(pages, 700)),
  };
  const pictures = new Map<string, PDFImage>();
  for (const [artwork, png] of thumbnails) pictures.set(artwork, await document.embedPng(png));
  const texts = await drawnTexts(document, pages, faces, pictureOf);
  const means = { faces, texts, thumbnails: pictures };
  for (const { width, height, marks } of pages) {
    const page = document.addPage([pt(width), pt(height)]);
    page.setTrimBox(0, 0, pt(width), pt(height));
    for (const mark of marks) draw(page, mark, means);
  }
  return document.save();
}
