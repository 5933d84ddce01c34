import { fail, ok, type Result } from '../../units';
import { Cursor } from './cursor';
import { piecesOf } from './markup';

/** How large an SVG says it is: in units of its own drawing, and in metres where it gives a length. */
export interface SvgHeader {
  readonly width: number;
  readonly height: number;
  readonly metres: { readonly width: number; readonly height: number } | null;
  /** So many of the units that its parts are drawn in go on one of its width. */
  readonly units: number;
}

const METRE_OF_PX = 0.0254 / 96;

/** Lengths of CSS in metres (CSS Values and Units, 6.2): 1 in = 96 px = 72 pt = 6 pc = 2.54 cm. */
const METRES: Readonly<Record<string, number>> = {
  mm: 0.001,
  cm: 0.01,
  q: 0.000_25,
  in: 0.0254,
  pt: 0.0254 / 72,
  pc: 0.0254 / 6,
  px: METRE_OF_PX,
  // A number alone is of px (SVG 2, 8.9).
  '': METRE_OF_PX,
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

/** A property of the root: what its style says before what its attribute does (SVG 2, 8.9 and 6.6). */
function sideOf(attributes: ReadonlyMap<string, string>, name: 'width' | 'height'): string | undefined {
  const declared = (attributes.get('style') ?? '')
    .split(';')
    .map((declaration) => declaration.split(':'))
    .filter(([property]) => property?.trim().toLowerCase() === name)
    .at(-1)?.[1];
  return declared?.replace(/!important/i, '') ?? attributes.get(name);
}

interface Side {
  readonly value: number;
  readonly unit: string;
}

/** A side that is not given follows from the other and the proportions of the drawing (CSS Images 3, 5.3). */
function sidesOf(
  width: Side | null,
  height: Side | null,
  box: { readonly width: number; readonly height: number } | null,
): { width: Side; height: Side } | null {
  if (width && height) return { width, height };
  if (!box) return null;
  if (width) return { width, height: { ...width, value: (width.value * box.height) / box.width } };
  return height && { width: { ...height, value: (height.value * box.width) / box.height }, height };
}

/**
 * Reads the size of an SVG from its root element (SVG 2, 8.2, 8.6 and 8.9). Only the opening tag is looked at: nothing in
 * the file is run or fetched.
 */
export function readSvgHeader(text: string): Result<SvgHeader, 'not-image' | 'no-size'> {
  const attributes = rootOf(text);
  if (!attributes) return fail('not-image');
  const numbers = (attributes.get('viewbox') ?? '')
    .slice(0, LONGEST)
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [boxWidth = 0, boxHeight = 0] = numbers.length === 4 ? numbers.slice(2) : [];
  const box = boxWidth > 0 && boxHeight > 0 ? { width: boxWidth, height: boxHeight } : null;
  const sides = sidesOf(lengthOf(sideOf(attributes, 'width')), lengthOf(sideOf(attributes, 'height')), box);
  const [across, down] = [METRES[sides?.width.unit ?? ' '], METRES[sides?.height.unit ?? ' ']];
  if (sides && across !== undefined && down !== undefined) {
    const metres = { width: sides.width.value * across, height: sides.height.value * down };
    // Drawn in px, as browsers do, with its box fitted into that (SVG 2, 8.6).
    const [width, height] = [metres.width / METRE_OF_PX, metres.height / METRE_OF_PX];
    const units = box ? Math.max(box.width / width, box.height / height) : 1;
    return ok({ width, height, metres, units });
  }
  const drawn = box ?? (sides && { width: sides.width.value, height: sides.height.value });
  return drawn ? ok({ ...drawn, metres: null, units: 1 }) : fail('no-size');
}
