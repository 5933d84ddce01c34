import { Cursor } from './cursor';

/** What a declaration draws by: other parts of the file by their ids, and functions that filter by themselves. */
export interface Drawn {
  readonly ids: readonly string[];
  readonly functions: number;
}

/** By property; the last declaration of a property holds. */
export type Declarations = ReadonlyMap<string, Drawn>;

/** Properties that hold for what lies within an element too (SVG 2, 13 and 11.6). */
const INHERITED = new Set(['fill', 'stroke', 'marker', 'marker-start', 'marker-mid', 'marker-end']);
/** Those that hold for the element as a whole. */
const OF_ONE = new Set(['filter', 'backdrop-filter', 'mask', 'mask-image', 'clip-path']);
/** What any custom property that names a part is held under: where its value ends up is not told by reading on. */
export const INDIRECT = '--';

export const isInherited = (property: string): boolean => INHERITED.has(property);

const unescaped = (text: string): string =>
  text.includes('\\')
    ? text.replace(
        /\\(?:([\da-f]{1,6})\s?|([\s\S]))/gi,
        (_, hex: string | undefined, sign: string | undefined) =>
          hex === undefined
            ? (sign ?? '')
            : String.fromCodePoint(Math.min(Number.parseInt(hex, 16), 0x10ffff)),
      )
    : text;

/** The functions of a filter in CSS (Filter Effects Module 1, 6); each is a step as an element of a filter is. */
const countFunctions = (value: string): number => value.split('(').length - value.split(/url\(/i).length;

/** What the value of a property draws by; `null` for one that draws by nothing else. */
export function drawnBy(property: string, value: string): Drawn | null {
  const isCustom = property.startsWith('--');
  if (!INHERITED.has(property) && !OF_ONE.has(property) && !isCustom) return null;
  const cursor = new Cursor(value);
  const ids: string[] = [];
  while (cursor.past('url(') !== null) {
    const address = (cursor.past(')') ?? '').replace(/["'\s]/g, '');
    if (address.startsWith('#')) ids.push(address.slice(1));
  }
  const isFilter = property === 'filter' || property === 'backdrop-filter';
  const functions = isFilter ? countFunctions(value) : 0;
  // A plain paint is told as well, since it ends what was inherited.
  return ids.length > 0 || functions > 0 || INHERITED.has(property) ? { ids, functions } : null;
}

/** The declarations of a style that may draw by something else. */
export function declarationsIn(style: string): Declarations {
  const found = new Map<string, Drawn>();
  for (const declaration of unescaped(style).split(';')) {
    const colon = declaration.indexOf(':');
    if (colon < 0) continue;
    const property = declaration.slice(0, colon).trim().toLowerCase();
    const drawn = drawnBy(property, declaration.slice(colon + 1));
    if (drawn) found.set(property.startsWith('--') ? INDIRECT : property, drawn);
  }
  return found;
}

/** What elements of a name, `.class` or `#id` are drawn by; under `*` what holds for all. */
export type Rules = ReadonlyMap<string, Map<string, Drawn>>;

/** The last part of a selector, which is what it chooses; `*` where it chooses by more than names. */
function namesOf(selector: string): string[] {
  if (/[:[]/.test(selector)) return ['*'];
  const last =
    selector
      .trim()
      .split(/[\s>+~]/)
      .at(-1) ?? '';
  const marked = last.match(/[.#][^.#]+/g);
  return marked ?? [last === '' ? '*' : last];
}

export function withoutComments(css: string): string {
  const cursor = new Cursor(css);
  const parts: string[] = [];
  while (!cursor.isAtEnd) {
    const from = cursor.at;
    const before = cursor.past('/*');
    parts.push(before ?? css.slice(from));
    if (before !== null) cursor.past('*/');
  }
  return parts.join(' ');
}

/** Each rule of a style sheet without comments: what chooses, and what stands between its braces. */
export function* rulesWithin(css: string): Generator<readonly [selector: string, body: string]> {
  const cursor = new Cursor(css);
  while (!cursor.isAtEnd) {
    let selector = cursor.until('{}');
    cursor.at += 1;
    let body = cursor.until('{}');
    // Within `@media` and the like the rule begins with the second brace.
    while (cursor.text.charAt(cursor.at) === '{') {
      cursor.at += 1;
      selector = body;
      body = cursor.until('{}');
    }
    yield [selector, body];
  }
}

/** The rules of a style sheet that draw by something else, wider than they are rather than narrower. */
export function rulesIn(css: string): Rules {
  const rules = new Map<string, Map<string, Drawn>>();
  for (const [selector, body] of rulesWithin(unescaped(withoutComments(css)))) {
    const declarations = declarationsIn(body);
    if (declarations.size === 0) continue;
    for (const name of selector.split(',').flatMap(namesOf)) {
      const held = rules.get(name) ?? new Map<string, Drawn>();
      for (const [property, drawn] of declarations) held.set(property, drawn);
      rules.set(name, held);
    }
  }
  return rules;
}
