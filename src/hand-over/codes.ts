import { crc32 } from '../artwork/crc';
import { fail, ok, type Result } from '../units';
import { fromBase45, toBase45 } from './base45';
import { DIGEST_AT } from './sealed';

/** More codes than these nobody reads one after another: beyond them the file is the way. */
export const MOST_CODES = 12;

/**
 * Bytes of a hand-over in one code. With medium error correction a code then has 97 by 97 modules, which a phone reads from a screen
 * at arm's length (common practice, no source), or where that would be too many codes, 117 by 117: versions 20 and 25 of
 * ISO/IEC 18004, which hold 970 and 1,451 characters.
 */
const PARTS = [620, 940] as const;

const PREFIX = 'RWHO';
const VERSION = '1';
/** What comes before the bytes of a part: whose it is, which of how many, and a check sum of all. */
const AT = { tag: 0, part: 8, parts: 9, sum: 10, bytes: 14 } as const;
const TAG_BYTES = AT.part;
/** The texts of the codes of a sealed hand-over, in order; `null` if they would be too many. */
export function codesOf(sealed: Uint8Array): string[] | null {
  const most = PARTS.find((size) => Math.ceil(sealed.length / size) <= MOST_CODES);
  if (most === undefined) return null;
  const count = Math.ceil(sealed.length / most);
  // All of one size, so that no code is denser than it must be.
  const size = Math.ceil(sealed.length / count);
  return Array.from({ length: count }, (_, part) => {
    const own = sealed.subarray(part * size, (part + 1) * size);
    const bytes = new Uint8Array(AT.bytes + own.length);
    // The tag is the beginning of the digest.
    bytes.set(sealed.subarray(DIGEST_AT, DIGEST_AT + TAG_BYTES), AT.tag);
    bytes[AT.part] = part;
    bytes[AT.parts] = count;
    bytes.set(own, AT.bytes);
    new DataView(bytes.buffer).setUint32(AT.sum, crc32(bytes));
    return `${PREFIX}${VERSION}:${toBase45(bytes)}`;
  });
}

/** One code that was read. */
interface Part {
  readonly tag: string;
  readonly part: number;
  readonly parts: number;
  readonly bytes: Uint8Array;
}

/** Why the text of a code is none of a hand-over. */
export type CodeProblem = 'not-code' | 'damaged' | 'newer';

function readCode(text: string): Result<Part, CodeProblem> {
  if (!text.startsWith(PREFIX) || text.charAt(PREFIX.length + 1) !== ':') return fail('not-code');
  if (text.charAt(PREFIX.length) !== VERSION) return fail('newer');
  const bytes = fromBase45(text.slice(PREFIX.length + 2));
  if (!bytes || bytes.length <= AT.bytes) return fail('damaged');
  const view = new DataView(bytes.buffer);
  const sum = view.getUint32(AT.sum);
  view.setUint32(AT.sum, 0);
  const [part = 0, parts = 0] = bytes.subarray(AT.part, AT.sum);
  if (crc32(bytes) !== sum || part >= parts || parts > MOST_CODES) return fail('damaged');
  return ok({ tag: bytes.subarray(0, TAG_BYTES).join(), part, parts, bytes: bytes.slice(AT.bytes) });
}

/** What has been read so far of one hand-over's codes, in whatever order. */
export interface Collected {
  readonly tag: string;
  /** By their number; `null` where one is missing. */
  readonly parts: readonly (Uint8Array | null)[];
}

/** The numbers of the codes that are missing, from 0. */
export const missing = ({ parts }: Collected): number[] =>
  parts.flatMap((part, number) => (part === null ? [number] : []));

/** All bytes, once nothing is missing; `null` before. */
export function wholeOf({ parts }: Collected): Uint8Array | null {
  const all = parts.filter((part) => part !== null);
  if (all.length < parts.length) return null;
  const whole = new Uint8Array(all.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of all) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/**
 * Puts a code to those that were read before. One that is there already changes nothing; nor does one of another hand-over, or
 * one that is damaged: each says why.
 * @param collected what was read before; `null` at first
 */
export function collect(collected: Collected | null, text: string): Result<Collected, CodeProblem | 'other'> {
  const read = readCode(text);
  if (!read.ok) return read;
  const { tag, part, parts, bytes } = read.value;
  const before = collected ?? { tag, parts: Array.from({ length: parts }, () => null) };
  if (before.tag !== tag) return fail('other');
  if (before.parts.length !== parts) return fail('damaged');
  if (before.parts[part]) return ok(before);
  return ok({ tag, parts: before.parts.map((own, number) => (number === part ? bytes : own)) });
}
