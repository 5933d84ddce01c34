import { fromBase64 } from './base64';
import { isJpeg, readJpegHeader } from './jpeg';
import { isPng, readPngHeader } from './png';
import { styledPieces } from './svg';
import { isWebp, readWebpHeader } from './webp';

/** How much longer one unit along each axis is drawn. */
interface Scale {
  readonly x: number;
  readonly y: number;
}

/** What a list of transforms does to lengths (CSS Transforms 1, 13); turning leaves them, and skews are taken for none. */
function scaleOf(transform: string, within: Scale): Scale {
  let { x, y } = within;
  for (const [, name = '', list = ''] of transform.matchAll(/([a-z]+)\s*\(([^)]*)\)/gi)) {
    const [a = 1, b = a, c = 0, d = 1] = list
      .split(/[\s,]+/)
      .filter((part) => part !== '')
      .map(Number);
    if (name === 'scale') [x, y] = [x * Math.abs(a), y * Math.abs(b)];
    if (name === 'matrix') [x, y] = [x * Math.hypot(a, b), y * Math.hypot(c, d)];
  }
  return { x, y };
}

/** The size in pixels of an image that is written as an address; `null` for one that is elsewhere, or is no such image. */
function pixelsOf(address: string): { width: number; height: number } | null {
  const [, data] = /^\s*data:image\/[^,]*;base64,([\s\S]*)$/i.exec(address) ?? [];
  if (data === undefined) return null;
  const bytes = fromBase64(data);
  const header = isPng(bytes)
    ? readPngHeader(bytes)
    : isJpeg(bytes)
      ? readJpegHeader(bytes)
      : isWebp(bytes)
        ? readWebpHeader(bytes)
        : null;
  return header?.ok ? header.value : null;
}

/** Pixels of an image on a unit of the drawing; `null` where it cannot be told. */
function densityOf(declared: ReadonlyMap<string, string>, { x, y }: Scale): number | null {
  const pixels = pixelsOf(declared.get('href') ?? '');
  if (!pixels) return null;
  const side = (name: 'width' | 'height') => {
    const text = declared.get(name);
    return text === undefined || /^\s*auto/.test(text) ? pixels[name] : Number(text.replace(/px\s*$/, ''));
  };
  const [across, down] = [pixels.width / (side('width') * x), pixels.height / (side('height') * y)];
  if (!(across > 0 && down > 0 && Number.isFinite(across * down))) return null;
  // By what is fitted into its box, or fills it (SVG 2, 8.7).
  const aspect = declared.get('preserveAspectRatio') ?? '';
  return /none|slice/.test(aspect) ? Math.min(across, down) : Math.max(across, down);
}

/**
 * How coarse the coarsest image is that an SVG holds: its pixels on a unit of the drawing. What is drawn by `use` is taken as
 * large as it stands in the file.
 */
export function coarsestImage(text: string): number | null {
  let coarsest: number | null = null;
  const scales: Scale[] = [];
  for (const piece of styledPieces(text)) {
    if (piece.kind === 'close') scales.pop();
    if (piece.kind !== 'open') continue;
    const around = scales.at(-1) ?? { x: 1, y: 1 };
    const written = piece.declared.get('transform') ?? '';
    const scale = written === '' ? around : scaleOf(written, around);
    scales.push(scale);
    const density = piece.name === 'image' ? densityOf(piece.declared, scale) : null;
    if (density !== null) coarsest = Math.min(coarsest ?? density, density);
  }
  return coarsest;
}
