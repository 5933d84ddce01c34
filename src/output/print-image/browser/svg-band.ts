import { transfer } from 'comlink';
import { readSvgHeader, weighSvg } from '../../../artwork';
import { openSvg } from '../../../artwork/browser/svg-image';
import type { PixelSize } from '..';
import type { ImageSource, SvgBand } from './image-worker/job';

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

/** Draws SVG for a worker, which cannot, a band at a time. */
export function svgBands(sources: readonly ImageSource[]): SvgBand {
  let opened: { readonly key: string; readonly image: Promise<HTMLImageElement> } | null = null;
  return async (id, size, top, rows) => {
    const source = sources.find((other) => other.id === id);
    if (!source) throw new Error('no such artwork');
    const { trim, pixels, file } = source;
    const [width, height] = [
      (pixels.width * size.width) / trim.width,
      (pixels.height * size.height) / trim.height,
    ];
    const key = `${id} ${width} ${height}`;
    if (opened?.key !== key) {
      const whole = { width: Math.round(width), height: Math.round(height) };
      opened = { key, image: file.text().then((text) => openSvg(sized(text, whole))) };
    }
    const image = await opened.image;
    const canvas = new OffscreenCanvas(size.width, rows);
    const drawing = canvas.getContext('2d');
    if (!drawing) throw new Error('no 2d context');
    const [left, up] = [(trim.x * width) / pixels.width, (trim.y * height) / pixels.height];
    drawing.drawImage(image, -left, -up - top, width, height);
    const band = canvas.transferToImageBitmap();
    return transfer(band, [band]);
  };
}
