import { endOfZeros } from './zeros';

/** The largest prime below 65,536. */
const BASE = 65_521;
/** A second sum up to this stays a whole number of 31 bits when bytes are added to it. */
const SAFE = 2 ** 29;
/** And so it does when so many zeros are added at once. */
const RUN = 16_384;

/**
 * The Adler-32 checksum (RFC 1950, 8.2 and 9). A zero adds the first sum to the second and leaves the first as it is, so that a
 * run of zeros is added at once.
 * @param before checksum of what came before
 */
export function adler32(bytes: Uint8Array, before = 1): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let a = before & 0xffff;
  let b = before >>> 16;
  for (let at = 0; at < bytes.length; ) {
    const byte = bytes[at] as number;
    at += 1;
    a += byte;
    b += a;
    if (b > SAFE) {
      a %= BASE;
      b %= BASE;
    }
    if (byte !== 0) continue;
    const to = endOfZeros(view, at);
    for (; at < to; at = Math.min(to, at + RUN)) {
      a %= BASE;
      b = (b + Math.min(RUN, to - at) * a) % BASE;
    }
  }
  return (((b % BASE) << 16) | (a % BASE)) >>> 0;
}
