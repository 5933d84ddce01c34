const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const digits = new Map([...DIGITS].map((digit, value) => [digit, value]));

/** The bytes of a text in base 64 (RFC 4648, section 4); blanks and what is no digit are passed over. */
export function fromBase64(text: string): Uint8Array {
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let [bits, held, at] = [0, 0, 0];
  for (const digit of text) {
    const value = digits.get(digit);
    if (value === undefined) continue;
    bits = ((bits << 6) | value) & 0xffff;
    held += 6;
    if (held < 8) continue;
    held -= 8;
    bytes[at] = (bits >> held) & 0xff;
    at += 1;
  }
  return bytes.subarray(0, at);
}
