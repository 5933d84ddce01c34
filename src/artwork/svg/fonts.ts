import { Cursor } from './cursor';
import { piecesOf } from './markup';

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

/** The families of a style's declarations; of the shorthand, what stands behind the size (CSS Fonts 4, 2.7). */
function inStyle(style: string): string[] {
  const found: string[] = [];
  for (const [, property = '', value = ''] of style.matchAll(
    /(?:^|[;{\s])(font(?:-family)?)\s*:\s*([^;}]+)/gi,
  )) {
    const list =
      property.toLowerCase() === 'font'
        ? (/(?:^|\s)[\d.]+(?:[a-z]+|%)(?:\s*\/\s*\S+)?\s+(.+)$/is.exec(value)?.[1] ?? '')
        : value;
    const first = firstOf(list);
    if (first !== null) found.push(first);
  }
  return found;
}

/** The families that a style sheet brings along within itself. */
const brought = (css: string): string[] =>
  [...css.matchAll(/@font-face\s*\{([^}]*)\}/gi)].flatMap(([, face = '']) =>
    /url\(\s*["']?data:/i.test(face) ? inStyle(face) : [],
  );

/**
 * The fonts that an SVG asks for by name and does not hold; none where it has no text. Any that is asked for anywhere counts,
 * whichever text it is for.
 */
export function fontsNeeded(text: string): string[] {
  const asked = new Set<string>();
  const held = new Set<string>();
  let hasText = false;
  let within = '';
  for (const piece of piecesOf(new Cursor(text))) {
    if (piece.kind === 'open') {
      within = piece.name;
      for (const [name, value] of piece.attributes) {
        const first = name === 'font-family' ? firstOf(value) : null;
        if (first !== null) asked.add(first);
        if (name === 'style') for (const family of inStyle(value)) asked.add(family);
      }
    }
    if (piece.kind !== 'text') continue;
    if (DRAWS_TEXT.test(within) && piece.text.trim() !== '') hasText = true;
    if (within !== 'style') continue;
    for (const family of brought(piece.text)) held.add(family);
    for (const family of inStyle(piece.text.replace(/@font-face\s*\{[^}]*\}/gi, ''))) asked.add(family);
  }
  return hasText ? [...asked].filter((family) => !held.has(family)) : [];
}
