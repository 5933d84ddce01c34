import { fail, ok, type Result } from '../units';

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

const attribute = (tag: string, name: string): string | null =>
  new RegExp(`\\s${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`, 'i').exec(tag)?.slice(1).find(Boolean) ?? null;

function lengthOf(text: string | null): { value: number; unit: string } | null {
  const match = /^\s*([\d.]+(?:e[+-]?\d+)?)\s*([a-z]*)\s*$/i.exec(text ?? '');
  const value = Number(match?.[1]);
  return match && value > 0 ? { value, unit: (match[2] ?? '').toLowerCase() } : null;
}

/**
 * Reads the size of an SVG from its root element (SVG 2, 8.2 and 8.6). Only the opening tag is looked at: nothing in
 * the file is run or fetched.
 */
export function readSvgHeader(text: string): Result<SvgHeader, 'not-image' | 'no-size'> {
  const tag = /<svg\b[^>]*>/i.exec(text)?.[0];
  if (tag === undefined) return fail('not-image');
  const box = (attribute(tag, 'viewBox') ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [width, height] = [lengthOf(attribute(tag, 'width')), lengthOf(attribute(tag, 'height'))];
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

/**
 * How many things an SVG wants that it does not hold: scripts, and addresses elsewhere. None is run or fetched when an SVG is
 * drawn as an image (SVG 2, 2.2.3 secure static mode), so what depends on them is missing from the print.
 */
export function outsideNeeds(text: string): number {
  const plain = text.replace(/<!--[\s\S]*?-->/g, '');
  const scripts = plain.match(/<script\b/gi)?.length ?? 0;
  const handlers = plain.match(/<[^>]*\son[a-z]+\s*=/gi)?.length ?? 0;
  const links =
    plain.match(
      /<(?:image|use|feImage|pattern|linearGradient|radialGradient|textPath)\b[^>]*?(?:xlink:)?href\s*=\s*["']\s*(?!#|data:)[^"']/gi,
    )?.length ?? 0;
  const sheets = plain.match(/@import|url\(\s*["']?\s*(?:https?:)?\/\/|<\?xml-stylesheet/gi)?.length ?? 0;
  return scripts + handlers + links + sheets;
}
