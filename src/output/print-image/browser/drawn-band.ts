import { transfer } from 'comlink';
import { readSvgHeader, weighSvg } from '../../../artwork';
import { drawPage } from '../../../artwork/browser/pdf-image';
import { openSvg } from '../../../artwork/browser/svg-image';
import type { PixelSize } from '..';
import type { DrawnBand, ImageSource } from './image-worker/job';

const PIXELS_PER_METRE = 96 / 0.0254;
/** Proportions nearer than this are the same. */
const SAME = 1e-3;

/**
 * An SVG that is as large as it is drawn, in whole pixels: browsers round the size of one in millimetres, which would leave
 * its edges half covered.
 */
function sized(text: string, size: PixelSize): string {
  if (!weighSvg(text).ok) throw new Error('more than can be drawn');
  const header = readSvgHeader(text);
  const page = new DOMParser().parseFromString(text, 'image/svg+xml');
  const root = page.documentElement;
  if (!header.ok || root.localName !== 'svg') return text;
  const { metres } = header.value;
  const own = metres
    ? { width: metres.width * PIXELS_PER_METRE, height: metres.height * PIXELS_PER_METRE }
    : header.value;
  if (!root.hasAttribute('viewBox')) root.setAttribute('viewBox', `0 0 ${own.width} ${own.height}`);
  const [, , width = 0, height = 0] = (root.getAttribute('viewBox') ?? '').split(/[\s,]+/).map(Number);
  const isFilled = Math.abs((width * own.height) / (height * own.width) - 1) < SAME;
  // A drawing that fills its own size is stretched with it, where the printed size is typed with other proportions.
  if (isFilled) root.setAttribute('preserveAspectRatio', 'none');
  for (const side of ['width', 'height'] as const) {
    root.setAttribute(side, String(size[side]));
    // A size in a style goes before one in an attribute.
    if (root instanceof SVGElement) root.style.setProperty(side, `${size[side]}px`, 'important');
  }
  return new XMLSerializer().serializeToString(page);
}

/** Draws rows of one artwork at one size. */
type Rows = (top: number, rows: number) => Promise<ImageBitmap>;

function canvasOf(width: number, height: number): OffscreenCanvasRenderingContext2D {
  const drawing = new OffscreenCanvas(width, height).getContext('2d');
  if (!drawing) throw new Error('no 2d context');
  return drawing;
}

/** The whole drawing in pixels, and where its trimmed box begins, as large as that box is wanted. */
function wholeOf({ trim, pixels }: ImageSource, size: PixelSize) {
  const [across, down] = [size.width / trim.width, size.height / trim.height];
  return {
    whole: { width: pixels.width * across, height: pixels.height * down },
    left: trim.x * across,
    up: trim.y * down,
  };
}

function svgRows(source: ImageSource, size: PixelSize): Rows {
  const { whole, left, up } = wholeOf(source, size);
  const { width, height } = whole;
  const opened = source.file
    .text()
    .then((text) => openSvg(sized(text, { width: Math.round(width), height: Math.round(height) })));
  return async (top, rows) => {
    const image = await opened;
    const drawing = canvasOf(size.width, rows);
    drawing.drawImage(image, -left, -up - top, width, height);
    return drawing.canvas.transferToImageBitmap();
  };
}

/** So many pixels of a PDF are drawn together, since its page is read anew each time. */
const MOST_TOGETHER = 32_000_000;

function pdfRows(source: ImageSource, size: PixelSize): Rows {
  const { whole, left, up } = wholeOf(source, size);
  const together = Math.max(1, Math.min(size.height, Math.floor(MOST_TOGETHER / size.width)));
  let drawn: { readonly from: number; readonly image: ImageBitmap } | null = null;
  /** Rows that lie within one stretch of those drawn together. */
  const stretch = async (row: number): Promise<{ from: number; image: ImageBitmap }> => {
    const from = row - (row % together);
    if (drawn?.from === from) return drawn;
    drawn?.image.close();
    const height = Math.min(together, size.height - from);
    const image = await drawPage(source.file, whole, { x: left, y: up + from, width: size.width, height });
    if (!image) throw new Error('a page that cannot be drawn');
    drawn = { from, image };
    return drawn;
  };
  return async (top, rows) => {
    const drawing = canvasOf(size.width, rows);
    for (let row = top; row < top + rows; ) {
      const { from, image } = await stretch(row);
      drawing.drawImage(image, 0, from - top);
      row = from + image.height;
    }
    return drawing.canvas.transferToImageBitmap();
  };
}

/** Draws SVG and PDF for a worker, which cannot, a band at a time. */
export function drawnBands(sources: readonly ImageSource[]): DrawnBand {
  let opened: { readonly key: string; readonly rows: Rows } | null = null;
  return async (id, size, top, rows) => {
    const source = sources.find((other) => other.id === id);
    if (!source) throw new Error('no such artwork');
    const key = `${id} ${size.width} ${size.height}`;
    if (opened?.key !== key) {
      opened = { key, rows: (source.kind === 'pdf' ? pdfRows : svgRows)(source, size) };
    }
    const band = await opened.rows(top, rows);
    return transfer(band, [band]);
  };
}
