const DIGITS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
const BASE = DIGITS.length;

/** Bytes in the characters that a QR code stores in eleven bits a pair (RFC 9285). */
export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 2) {
    const isPair = at + 1 < bytes.length;
    let value = isPair ? 256 * (bytes[at] ?? 0) + (bytes[at + 1] ?? 0) : (bytes[at] ?? 0);
    for (let digit = 0; digit < (isPair ? 3 : 2); digit += 1) {
      text += DIGITS.charAt(value % BASE);
      value = Math.floor(value / BASE);
    }
  }
  return text;
}

/** The bytes of a text; `null` if it is none that {@link toBase45} writes. */
export function fromBase45(text: string): Uint8Array | null {
  if (text.length % 3 === 1) return null;
  const bytes: number[] = [];
  for (let at = 0; at < text.length; at += 3) {
    const digits = [...text.slice(at, at + 3)].map((digit) => DIGITS.indexOf(digit));
    if (digits.includes(-1)) return null;
    const value = digits.reduceRight((sum, digit) => sum * BASE + digit, 0);
    if (digits.length === 3) {
      if (value > 0xffff) return null;
      bytes.push(value >> 8, value & 0xff);
    } else {
      if (value > 0xff) return null;
      bytes.push(value);
    }
  }
  return Uint8Array.from(bytes);
}
