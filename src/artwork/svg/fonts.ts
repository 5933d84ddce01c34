import { styledPieces, styleTextOf } from './cascade';

/** Families that every browser has something for (CSS Fonts 4, 2.1.3), and keywords that name none. */
const GENERIC =
  /^(serif|sans-serif|monospace|cursive|fantasy|system-ui|math|emoji|fangsong|ui-[a-z-]+|inherit|initial|unset|revert|revert-layer)$/i;
const DRAWS_TEXT = /^(text|tspan|textPath)$/;

const unquoted = (name: string): string =>
  name
    .trim()
    .replace(/^(["'])(.*)\1$/s, '$2')
    .trim();

/** The family that is wanted first, of a list of them; `null` for a generic one. */
function firstOf(list: string): string | null {
  const first = unquoted((list.split(',')[0] ?? '').replace(/!important/i, ''));
  return first === '' || GENERIC.test(first) || /^var\(/i.test(first) ? null : first;
}

/** The families that style sheets bring along within themselves. */
const brought = (css: string): string[] =>
  [...css.matchAll(/@font-face\s*\{([^}]*)\}/gi)].flatMap(([, face = '']) => {
    const family = /font-family\s*:\s*([^;}]+)/i.exec(face)?.[1];
    const first = family === undefined || !/url\(\s*["']?data:/i.test(face) ? null : firstOf(family);
    return first === null ? [] : [first];
  });

/** The fonts that the text of an SVG is drawn in and that it does not hold, told by attributes, styles or style sheets. */
export function fontsNeeded(text: string): string[] {
  const held = new Set(brought(styleTextOf(text)));
  const asked = new Set<string>();
  const open: { readonly name: string; readonly family: string }[] = [];
  for (const piece of styledPieces(text)) {
    if (piece.kind === 'close') open.pop();
    if (piece.kind === 'open') {
      const { declared, name } = piece;
      const own = declared.get('font-family');
      const above = open.at(-1)?.family ?? '';
      open.push({ name, family: own === undefined || /^\s*(inherit|unset)\s*$/i.test(own) ? above : own });
    }
    const within = open.at(-1);
    if (piece.kind !== 'text' || !within || !DRAWS_TEXT.test(within.name) || piece.text.trim() === '')
      continue;
    const first = firstOf(within.family);
    if (first !== null && !held.has(first)) asked.add(first);
  }
  return [...asked];
}
