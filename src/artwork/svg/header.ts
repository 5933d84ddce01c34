import { fail, ok, type Result } from '../../units';
import { Cursor } from './cursor';
import { piecesOf } from './markup';

/** How large an SVG says it is: in units of its own drawing, and in metres where it gives a unit of length. */
export interface SvgHeader {
  readonly width: number;
  readonly height: number;
  readonly metres: { readonly width: number; readonly height: number } | null;
}

/** Lengths of CSS in metres (CSS Values and Units, 6.2): 1 in = 96 px = 72 pt = 6 pc = 2.54 cm. */
const METRES: Readonly<Record<string, number>> = {
  mm: 0.001,
  cm: 0.01,
  q: 0.000_25,
  in: 0.0254,
  pt: 0.0254 / 72,
  pc: 0.0254 / 6,
  px: 0.0254 / 96,
};

/** A longer text is no length, and takes long to tell so. */
const LONGEST = 100;

function lengthOf(text = ''): { value: number; unit: string } | null {
  const match = /^([\d.]+(?:e[+-]?\d+)?)\s*([a-z]*)$/i.exec(text.slice(0, LONGEST).trim());
  const value = Number(match?.[1]);
  return match && value > 0 ? { value, unit: (match[2] ?? '').toLowerCase() } : null;
}

/** The attributes of the first `svg`, by their names in lower case. */
function rootOf(text: string): ReadonlyMap<string, string> | null {
  for (const piece of piecesOf(new Cursor(text))) {
    if (piece.kind !== 'open' || piece.name.toLowerCase() !== 'svg') continue;
    return new Map(piece.attributes.map(([name, value]) => [name.toLowerCase(), value]));
  }
  return null;
}

/**
 * Reads the size of an SVG from its root element (SVG 2, 8.2 and 8.6). Only the opening tag is looked at: nothing in
 * the file is run or fetched.
 */
export function readSvgHeader(text: string): Result<SvgHeader, 'not-image' | 'no-size'> {
  const attributes = rootOf(text);
  if (!attributes) return fail('not-image');
  const box = (attributes.get('viewbox') ?? '')
    .slice(0, LONGEST)
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [width, height] = [lengthOf(attributes.get('width')), lengthOf(attributes.get('height'))];
  const [boxWidth = 0, boxHeight = 0] = box.length === 4 ? box.slice(2) : [];
  const drawn =
    boxWidth > 0 && boxHeight > 0
      ? { width: boxWidth, height: boxHeight }
      : width && height && { width: width.value, height: height.value };
  if (!drawn) return fail('no-size');
  const [across, down] = [METRES[width?.unit ?? ''], METRES[height?.unit ?? '']];
  if (!width || !height || across === undefined || down === undefined) return ok({ ...drawn, metres: null });
  return ok({ ...drawn, metres: { width: width.value * across, height: height.value * down } });
}
