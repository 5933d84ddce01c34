import { Cursor } from './cursor';
import { piecesOf } from './markup';
import { rulesWithin, withoutComments } from './styles';

/** What is asked of an element by which rules are chosen. */
interface Element {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
}

/** A part of a selector without a combinator: a name, classes, ids, attributes (Selectors 4, 3.1). */
interface Compound {
  readonly name: string;
  readonly classes: readonly string[];
  readonly ids: readonly string[];
  readonly attributes: readonly { readonly name: string; readonly value: string | null }[];
  /** What it is of the one before it. */
  readonly within: 'parent' | 'ancestor';
}

interface Rule {
  readonly compounds: readonly Compound[];
  /** Ids, then classes and attributes, then names (Selectors 4, 17). */
  readonly weight: number;
  readonly order: number;
  readonly declarations: ReadonlyMap<string, Declared>;
}

interface Declared {
  readonly value: string;
  readonly important: boolean;
}

/** The rules of all style sheets within an SVG, by an id, a class or a name that they choose; under `*` those of any element. */
type StyleSheet = ReadonlyMap<string, readonly Rule[]>;

/** What stands between semicolons, but for those in quotes and brackets. */
function* declarationsWithin(style: string): Generator<string> {
  let [from, quote, depth] = [0, '', 0];
  for (let at = 0; at < style.length; at += 1) {
    const sign = style.charAt(at);
    if (quote !== '') {
      if (sign === quote) quote = '';
    } else if (sign === '"' || sign === "'") quote = sign;
    else if (sign === '(') depth += 1;
    else if (sign === ')') depth -= 1;
    else if (sign === ';' && depth <= 0) {
      yield style.slice(from, at);
      from = at + 1;
    }
  }
  yield style.slice(from);
}

/** The families of the shorthand: what stands behind the size (CSS Fonts 4, 2.7). */
const ofShorthand = (font: string): string =>
  /(?:^|\s)[\d.]+(?:[a-z]+|%)(?:\s*\/\s*\S+)?\s+(.+)$/is.exec(font)?.[1] ?? '';

/** A style's declarations by property; the last of a property holds, unless an earlier one is more important (CSS Cascade 4, 6). */
function declarationsOf(style: string): ReadonlyMap<string, Declared> {
  const found = new Map<string, Declared>();
  for (const declaration of declarationsWithin(style)) {
    const colon = declaration.indexOf(':');
    if (colon < 0) continue;
    const property = declaration.slice(0, colon).trim().toLowerCase();
    const written = declaration.slice(colon + 1).trim();
    const important = /!\s*important\s*$/i.test(written);
    const value = written.replace(/!\s*important\s*$/i, '').trim();
    const set = (name: string, own: string) => {
      if (!found.get(name)?.important || important) found.set(name, { value: own, important });
    };
    set(property, value);
    if (property === 'font') set('font-family', ofShorthand(value));
  }
  return found;
}

const PART = /([.#]?)((?:[\w-]|[^\0-\x7f])+)|\[\s*([\w-]+)\s*(?:=\s*["']?([^\]"']*)["']?\s*)?\]|\*/g;

/** A selector, from its first part to the one that it chooses; `null` of one that depends on more than what is written in a file. */
function selectorOf(text: string): { compounds: Compound[]; weight: number } | null {
  const spaced = text
    .trim()
    .replace(/\s*>\s*/g, '>')
    .replace(/:root\b/g, 'svg');
  if (spaced === '' || /[+~:@]/.test(spaced)) return null;
  let weight = 0;
  const compounds = spaced.split(/(?=[\s>])/).map((part): Compound => {
    const [names, classes, ids]: [string[], string[], string[]] = [[], [], []];
    const attributes: { name: string; value: string | null }[] = [];
    for (const [, mark, word = '', attribute, value] of part.matchAll(PART)) {
      if (attribute !== undefined) attributes.push({ name: attribute, value: value ?? null });
      else if (word !== '') (mark === '.' ? classes : mark === '#' ? ids : names).push(word);
    }
    weight += 1e6 * ids.length + 1e3 * (classes.length + attributes.length) + names.length;
    const within = part.startsWith('>') ? 'parent' : 'ancestor';
    return { name: names[0] ?? '*', classes, ids, attributes, within };
  });
  return { compounds, weight };
}

/** Reads the style sheets that an SVG holds. Rules within `@media` and the like count, since most are for screens. */
function styleSheetOf(css: string): StyleSheet {
  const rules = new Map<string, Rule[]>();
  let order = 0;
  for (const [selector, body] of rulesWithin(withoutComments(css).replace(/<!--|-->/g, ' '))) {
    const declarations = declarationsOf(body);
    for (const each of selector.slice(selector.lastIndexOf(';') + 1).split(',')) {
      const read = declarations.size > 0 && !/^\s*@/.test(selector) ? selectorOf(each) : null;
      if (!read) continue;
      const key = keyOf(read.compounds.at(-1));
      const held = rules.get(key) ?? [];
      held.push({ ...read, order, declarations });
      rules.set(key, held);
      order += 1;
    }
  }
  return rules;
}

function keyOf(compound: Compound | undefined): string {
  const [id] = compound?.ids ?? [];
  const [group] = compound?.classes ?? [];
  return id !== undefined ? `#${id}` : group !== undefined ? `.${group}` : (compound?.name ?? '*');
}

const classesOf = ({ attributes }: Element): string[] => (attributes.get('class') ?? '').split(/\s+/);

function fits({ name, classes, ids, attributes }: Compound, element: Element): boolean {
  const own = element.attributes;
  const has = classesOf(element);
  return (
    (name === '*' || name === element.name) &&
    classes.every((each) => has.includes(each)) &&
    ids.every((each) => own.get('id') === each) &&
    attributes.every(({ name: attribute, value }) =>
      value === null ? own.has(attribute) : own.get(attribute) === value,
    )
  );
}

/** Where a compound is met, given where those before it are; `null` where it is the first. */
function metBy(compound: Compound, path: readonly Element[], before: readonly boolean[] | null): boolean[] {
  let isAbove = false;
  return path.map((element, at) => {
    const isWithin = before === null || (compound.within === 'parent' ? before[at - 1] === true : isAbove);
    if (before?.[at]) isAbove = true;
    return isWithin && fits(compound, element);
  });
}

/** Whether a rule chooses the last element of a path from the root. */
function chooses({ compounds }: Rule, path: readonly Element[]): boolean {
  const [target, last] = [path.at(-1), compounds.at(-1)];
  if (!target || !last || !fits(last, target)) return false;
  // Where along the path all compounds so far are met, the latest of them there.
  let met: readonly boolean[] | null = null;
  for (const compound of compounds) met = metBy(compound, path, met);
  return met?.at(-1) === true;
}

/**
 * What is declared of one element, the strongest of each property: attributes, then rules by their weight and order, then the
 * element's own style; what is important goes before all of these (CSS Cascade 4, 6; SVG 2, 6.6).
 * @param path the elements from the root to it
 */
function declaredOf(sheet: StyleSheet, path: readonly Element[]): ReadonlyMap<string, string> {
  const element = path.at(-1);
  if (!element) return new Map();
  const found = new Map<string, Declared>();
  const take = (declarations: ReadonlyMap<string, Declared>) => {
    for (const [property, declared] of declarations) {
      if (!found.get(property)?.important || declared.important) found.set(property, declared);
    }
  };
  for (const [name, value] of element.attributes) found.set(name, { value, important: false });
  const keys = ['*', element.name, `#${element.attributes.get('id') ?? ''}`];
  const named = new Set([...keys, ...classesOf(element).map((each) => `.${each}`)]);
  const chosen = [...named].flatMap((key) => sheet.get(key) ?? []).filter((rule) => chooses(rule, path));
  for (const { declarations } of chosen.toSorted((a, b) => a.weight - b.weight || a.order - b.order)) {
    take(declarations);
  }
  take(declarationsOf(element.attributes.get('style') ?? ''));
  return new Map([...found].map(([property, { value }]) => [property, value]));
}

/** The text of all style sheets in an SVG. */
export function styleTextOf(text: string): string {
  const sheets: string[] = [];
  let isStyle = false;
  for (const piece of piecesOf(new Cursor(text))) {
    if (piece.kind === 'open') isStyle = piece.name === 'style' && !piece.isEmpty;
    if (piece.kind === 'close') isStyle = false;
    if (piece.kind === 'text' && isStyle) sheets.push(piece.text);
  }
  return sheets.join('\n');
}

/** What stands in an SVG, in its order, with what is declared of each element. */
export type StyledPiece =
  | { readonly kind: 'open'; readonly name: string; readonly declared: ReadonlyMap<string, string> }
  | { readonly kind: 'close' }
  | { readonly kind: 'text'; readonly text: string };

/** The pieces of an SVG, its styles brought to the elements that they are of; an empty element is closed at once. */
export function* styledPieces(text: string): Generator<StyledPiece> {
  const sheet = styleSheetOf(styleTextOf(text));
  const path: Element[] = [];
  for (const piece of piecesOf(new Cursor(text))) {
    if (piece.kind === 'close' && path.length > 0) {
      path.pop();
      yield { kind: 'close' };
    }
    if (piece.kind === 'text') yield piece;
    if (piece.kind !== 'open') continue;
    path.push({ name: piece.name, attributes: new Map(piece.attributes) });
    yield { kind: 'open', name: piece.name, declared: declaredOf(sheet, path) };
    if (!piece.isEmpty) continue;
    path.pop();
    yield { kind: 'close' };
  }
}
