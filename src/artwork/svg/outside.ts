import { Cursor } from './cursor';
import { type Piece, piecesOf } from './markup';

const FETCHES = /^(image|use|feImage|pattern|linearGradient|radialGradient|textPath)$/i;

/** Addresses elsewhere in a style. */
const inStyle = (text: string): number =>
  text.replace(/["'\s]/g, '').match(/@import|url\((?:https?:)?\/\//gi)?.length ?? 0;

const isElsewhere = (address: string): boolean => address !== '' && !/^(#|data:)/i.test(address);

function inTag({ name, attributes }: Extract<Piece, { kind: 'open' }>): number {
  const script = /^script$/i.test(name) ? 1 : 0;
  const handler = attributes.some(([own]) => /^on[a-z]+$/i.test(own)) ? 1 : 0;
  const link =
    FETCHES.test(name) && attributes.some(([own, value]) => own === 'href' && isElsewhere(value.trim()))
      ? 1
      : 0;
  return attributes.reduce((sum, [, value]) => sum + inStyle(value), script + handler + link);
}

/**
 * How many things an SVG wants that it does not hold: scripts, and addresses elsewhere. None is run or fetched when an SVG is
 * drawn as an image (SVG 2, 2.2.3 secure static mode), so what depends on them is missing from the print.
 */
export function outsideNeeds(text: string): number {
  let needs = 0;
  for (const piece of piecesOf(new Cursor(text))) {
    if (piece.kind === 'open') needs += inTag(piece);
    if (piece.kind === 'text') needs += inStyle(piece.text);
    if (piece.kind === 'instruction' && /^xml-stylesheet/i.test(piece.text)) needs += 1;
  }
  return needs;
}
