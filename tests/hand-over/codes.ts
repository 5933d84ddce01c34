import { encodeQR } from 'qr';
import { codesOf } from '../../src/hand-over';

/** The densest codes that are shown: 97 by 97 modules, and 117 where those would be more than twelve. */
const SEALED = { usual: 7440, dense: 11_280 } as const;
export type Density = keyof typeof SEALED;

/** The text of one of twelve codes, of bytes that look random. */
export function codeOf(density: Density): string {
  const bytes = Uint8Array.from(
    { length: SEALED[density] },
    (_, at) => Math.imul(at + 1, 2_654_435_761) >>> 24,
  );
  const [text] = codesOf(bytes) ?? [];
  if (text === undefined) throw new Error('too many codes');
  return text;
}

/** A code as the app draws it, with its quiet zone. */
export const modulesOf = (text: string): boolean[][] =>
  encodeQR(text, 'raw', { ecc: 'medium', encoding: 'alphanumeric', border: 4 });
