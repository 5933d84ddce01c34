import type { Cursor } from './cursor';

/** A name and a value, the name without its prefix. */
type Attribute = readonly [name: string, value: string];

/** What stands in a file of markup (XML 1.0, fifth edition, 2.4 to 2.8, 3.1 and 4.2), one piece after the other. */
export type Piece =
  | {
      readonly kind: 'open';
      /** Without its prefix. */
      readonly name: string;
      readonly attributes: readonly Attribute[];
      readonly isEmpty: boolean;
    }
  | { readonly kind: 'close' }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'instruction'; readonly text: string }
  | { readonly kind: 'entity'; readonly name: string; readonly value: string }
  /** An entity that is made of others, of markup, or for the declarations themselves. */
  | { readonly kind: 'nested-entity' };

const BLANKS = ' \t\r\n\f';
const ENDS_NAME = `${BLANKS}=/<>`;

const localName = (name: string): string => name.slice(name.indexOf(':') + 1);

/** The attributes of a tag up to its end; `null` where the file ends, or another tag begins, before that. */
function attributesAt(cursor: Cursor): { attributes: Attribute[]; isEmpty: boolean } | null {
  const attributes: Attribute[] = [];
  for (let isEmpty = false; !cursor.isAtEnd; ) {
    cursor.over(BLANKS);
    const sign = cursor.text.charAt(cursor.at);
    if (sign === '<' || sign === '') return null;
    if (sign === '>' || sign === '/' || sign === '=') {
      cursor.at += 1;
      if (sign === '>') return { attributes, isEmpty };
      isEmpty = sign === '/';
      continue;
    }
    isEmpty = false;
    const name = localName(cursor.until(ENDS_NAME));
    cursor.over(BLANKS);
    if (cursor.text.charAt(cursor.at) !== '=') continue;
    cursor.at += 1;
    cursor.over(BLANKS);
    const quote = cursor.text.charAt(cursor.at);
    if (quote !== '"' && quote !== "'") attributes.push([name, cursor.until(`${BLANKS}<>`)]);
    else {
      cursor.at += 1;
      const value = cursor.past(quote);
      if (value === null) return null;
      attributes.push([name, value]);
    }
  }
  return null;
}

/** The entities that a document type declares within itself. */
function* declared(cursor: Cursor): Generator<Piece> {
  for (let isInside = false; !cursor.isAtEnd; ) {
    cursor.until('[]>"\'<%');
    const sign = cursor.text.charAt(cursor.at);
    if (cursor.startsWith('<!--')) cursor.past('-->');
    else if (cursor.startsWith('<!ENTITY')) yield entityAt(cursor);
    else {
      cursor.at += 1;
      if (sign === '"' || sign === "'") cursor.past(sign);
      if (sign === '[') isInside = true;
      if (sign === ']') isInside = false;
      if (sign === '%' && isInside) yield { kind: 'nested-entity' };
      if (sign === '>' && !isInside) return;
    }
  }
}

function entityAt(cursor: Cursor): Piece {
  cursor.at += '<!ENTITY'.length;
  cursor.over(BLANKS);
  const name = cursor.until(`${BLANKS}"'>`);
  cursor.until('"\'>');
  const quote = cursor.text.charAt(cursor.at);
  cursor.at += 1;
  const value = quote === '"' || quote === "'" ? (cursor.past(quote) ?? '') : '';
  return name === '%' || /[<&]/.test(value) ? { kind: 'nested-entity' } : { kind: 'entity', name, value };
}

/**
 * The pieces of a file of markup, whatever its bytes are: what is not well-formed is passed over.
 * @param cursor counts what was looked at
 */
export function* piecesOf(cursor: Cursor): Generator<Piece> {
  while (!cursor.isAtEnd) {
    const text = cursor.until('<');
    if (text !== '') yield { kind: 'text', text };
    if (cursor.isAtEnd) return;
    if (cursor.startsWith('<!--')) cursor.past('-->');
    else if (cursor.startsWith('<![CDATA[')) {
      cursor.at += '<![CDATA['.length;
      yield { kind: 'text', text: cursor.past(']]>') ?? '' };
    } else if (cursor.startsWith('<?')) {
      cursor.at += 2;
      yield { kind: 'instruction', text: cursor.past('?>') ?? '' };
    } else if (cursor.startsWith('<!')) {
      cursor.at += 2;
      yield* declared(cursor);
    } else if (cursor.startsWith('</')) {
      cursor.past('>');
      yield { kind: 'close' };
    } else {
      cursor.at += 1;
      const name = localName(cursor.until(ENDS_NAME));
      const tag = attributesAt(cursor);
      if (tag && name !== '') yield { kind: 'open', name, ...tag };
    }
  }
}
