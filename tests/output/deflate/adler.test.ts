import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adler32 } from '../../../src/output/deflate/adler';

/** As RFC 1950, 8.2, puts it, byte by byte. */
function plain(bytes: Uint8Array): number {
  let [a, b] = [1, 0];
  for (const byte of bytes) {
    a = (a + byte) % 65_521;
    b = (b + a) % 65_521;
  }
  return b * 65_536 + a;
}

describe('Adler-32', () => {
  it('is 0x11e60398 of "Wikipedia" (a check value from memory), and 1 of nothing', () => {
    expect(adler32(new TextEncoder().encode('Wikipedia'))).toBe(0x11e60398);
    expect(adler32(new Uint8Array())).toBe(1);
  });

  it('is that of RFC 1950 whatever runs of zeros there are, in one piece or in two', () => {
    const bytes = fc
      .array(fc.tuple(fc.nat(60_000), fc.uint8Array({ maxLength: 40 })), { maxLength: 6 })
      .map(
        (parts) =>
          new Uint8Array(Buffer.concat(parts.flatMap(([zeros, some]) => [Buffer.alloc(zeros), some]))),
      );
    fc.assert(
      fc.property(bytes, fc.nat(100_000), (all, cut) => {
        expect(adler32(all)).toBe(plain(all));
        expect(adler32(all.subarray(cut), adler32(all.subarray(0, cut)))).toBe(plain(all));
      }),
    );
  });

  it('keeps its sums where all bytes are as large as can be', () => {
    const bytes = new Uint8Array(3_000_000).fill(255);
    expect(adler32(bytes)).toBe(plain(bytes));
    bytes.fill(0, 1_000_000, 2_000_000);
    expect(adler32(bytes)).toBe(plain(bytes));
  });
});
