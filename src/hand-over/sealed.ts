import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import { fail, ok, type Result } from '../units';

/** SHA-256 (FIPS 180-4) of bytes, in hexadecimal. */
export type Hash = (bytes: Uint8Array<ArrayBuffer>) => Promise<string>;

/**
 * Why bytes are no hand-over. `damaged`: a part is missing or changed. `newer`: made by a newer version. `part-missing`: made by an older
 * one, and what reads that could not be fetched.
 */
export type SealProblem = 'not-hand-over' | 'damaged' | 'newer' | 'part-missing';

/**
 * A sealed text: `RwHo`, the format's version, the digest of all that follows, the length of the text in bytes, how many ids it
 * has, the ids as 16 bytes each, and the text deflated (RFC 1951), in which marks stand for the ids. Numbers are big-endian.
 */
const MAGIC = strToU8('RwHo');
const VERSION = 1;
const AT = { version: 4, digest: 5, length: 37, ids: 41, table: 43 } as const;
export const DIGEST_AT = AT.digest;

/** The most a text may take: more is none of ours. */
const MOST = 64_000_000;
const MOST_IDS = 0xffff;

const UUID = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g;
/** Marks in the place of ids: the next one of the table, or one that was there before. JSON holds no bare control characters. */
const NEXT = '\u0001';
const KNOWN = { open: '\u0002', close: '\u0003' } as const;
const MARK = new RegExp(`${NEXT}|${KNOWN.open}([0-9a-z]+)${KNOWN.close}`, 'g');
const HEX = /../g;

const fromHex = (hex: string): Uint8Array =>
  Uint8Array.from(hex.match(HEX) ?? [], (byte) => Number.parseInt(byte, 16));

const toHex = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');

const uuidOf = (bytes: Uint8Array): string =>
  toHex(bytes).replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');

/** Whether bytes begin as a sealed text does. */
export const isSealed = (bytes: Uint8Array): boolean => MAGIC.every((byte, at) => bytes[at] === byte);

/** Seals a JSON text: random ids as 16 bytes each, all else deflated, a digest over all. */
export async function seal(json: string, hash: Hash): Promise<Uint8Array<ArrayBuffer>> {
  const places = new Map<string, number>();
  const text = strToU8(
    json.replace(UUID, (id) => {
      const place = places.get(id);
      if (place !== undefined) return `${KNOWN.open}${place.toString(36)}${KNOWN.close}`;
      if (places.size === MOST_IDS) return id;
      places.set(id, places.size);
      return NEXT;
    }),
  );
  const ids = [...places.keys()];
  const packed = deflateSync(text, { level: 9 });
  const table = AT.table + 16 * ids.length;
  const sealed = new Uint8Array(table + packed.length);
  const view = new DataView(sealed.buffer);
  sealed.set(MAGIC);
  sealed[AT.version] = VERSION;
  view.setUint32(AT.length, text.length);
  view.setUint16(AT.ids, ids.length);
  ids.forEach((id, index) => {
    sealed.set(fromHex(id.replaceAll('-', '')), AT.table + 16 * index);
  });
  sealed.set(packed, table);
  sealed.set(fromHex(await hash(sealed.slice(AT.length))), AT.digest);
  return sealed;
}

/** The text of sealed bytes, verified before anything is made of it. */
export async function unseal(bytes: Uint8Array, hash: Hash): Promise<Result<string, SealProblem>> {
  if (!isSealed(bytes)) return fail('not-hand-over');
  if (bytes.length < AT.table) return fail('damaged');
  if ((bytes[AT.version] ?? 0) > VERSION) return fail('newer');
  const digest = toHex(bytes.slice(AT.digest, AT.length));
  if (bytes[AT.version] !== VERSION || (await hash(new Uint8Array(bytes.slice(AT.length)))) !== digest)
    return fail('damaged');
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const length = view.getUint32(AT.length);
  const table = AT.table + 16 * view.getUint16(AT.ids);
  if (length > MOST || table > bytes.length) return fail('damaged');
  try {
    const text = strFromU8(inflateSync(bytes.slice(table), { out: new Uint8Array(length) }));
    let next = 0;
    return ok(
      text.replace(MARK, (_, place: string | undefined) => {
        const at = AT.table + 16 * (place === undefined ? next++ : Number.parseInt(place, 36));
        return at + 16 <= table ? uuidOf(bytes.slice(at, at + 16)) : '';
      }),
    );
  } catch {
    return fail('damaged');
  }
}
