import type { Cursor } from './cursor';
import { piecesOf } from './markup';
import { Refused } from './refusal';
import { type Rules, rulesIn } from './styles';

/** How much all entities together may stand for. */
const MOST_SIGNS = 50_000_000;

/** An SVG within an SVG, written as an address. */
export const HOLDS_SVG = /data:image\/svg/i;

/** Puts in what references of XML stand for (XML 1.0, 4.1 and 4.6). */
function unreferenced(entities: ReadonlyMap<string, string>): (text: string) => string {
  const named = new Map([...entities, ['lt', '<'], ['gt', '>'], ['amp', '&'], ['quot', '"'], ['apos', "'"]]);
  let signs = 0;
  return (text) =>
    text.includes('&')
      ? text.replace(
          /&(?:#(\d+|x[\da-f]+)|([^&;\s]+));/gi,
          (whole, code: string | undefined, name: string) => {
            const value =
              code === undefined
                ? (named.get(name) ?? whole)
                : String.fromCodePoint(Math.min(Number(code.replace(/^x/i, '0x')), 0x10ffff));
            signs += value.length;
            if (signs > MOST_SIGNS) throw new Refused('indirect');
            return value;
          },
        )
      : text;
}

/** What must be known before anything is weighed: the entities, and the rules of style sheets anywhere in the file. */
export function preambleOf(cursor: Cursor): { plain: (text: string) => string; rules: Rules } {
  const entities = new Map<string, string>();
  const sheets: string[] = [];
  let isStyle = false;
  for (const piece of piecesOf(cursor)) {
    if (piece.kind === 'nested-entity') throw new Refused('indirect');
    if (piece.kind === 'instruction' && /^xml-stylesheet[\s\S]*data:/i.test(piece.text))
      throw new Refused('indirect');
    if (piece.kind === 'entity') entities.set(piece.name, piece.value);
    if (piece.kind === 'open') isStyle = piece.name === 'style' && !piece.isEmpty;
    if (piece.kind === 'close') isStyle = false;
    if (piece.kind === 'text' && isStyle) sheets.push(piece.text);
  }
  const plain = unreferenced(entities);
  const css = plain(sheets.join(' '));
  if (/@import[^;]{0,20}data:/i.test(css) || HOLDS_SVG.test(css)) throw new Refused('indirect');
  return { plain, rules: rulesIn(css) };
}
