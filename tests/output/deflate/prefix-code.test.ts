import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prefixCode } from '../../../src/output/deflate/prefix-code';

/** Bits that all symbols take in D. A. Huffman's code (1952): each joining of the two least adds their sum. */
function leastBits(frequencies: readonly number[]): number {
  const weights = frequencies.filter((frequency) => frequency > 0);
  let bits = 0;
  while (weights.length > 1) {
    weights.sort((a, b) => b - a);
    const joined = (weights.pop() as number) + (weights.pop() as number);
    bits += joined;
    weights.push(joined);
  }
  return bits;
}

const bitsOf = (lengths: Uint8Array, frequencies: readonly number[]) =>
  frequencies.reduce((sum, frequency, symbol) => sum + frequency * (lengths[symbol] as number), 0);

const kraft = (lengths: Uint8Array) =>
  lengths.reduce((sum, length) => sum + (length === 0 ? 0 : 2 ** -length), 0);

const frequencies = fc.array(fc.oneof(fc.constant(0), fc.nat(5), fc.nat(100_000)), {
  minLength: 2,
  maxLength: 286,
});

describe('a prefix code', () => {
  it('is complete, within its longest length, and gives each symbol that is used a code', () => {
    fc.assert(
      fc.property(frequencies, fc.constantFrom(9, 15), (counts, longest) => {
        const { lengths } = prefixCode(Uint32Array.from(counts), longest);
        expect(kraft(lengths)).toBe(1);
        expect(Math.max(...lengths)).toBeLessThanOrEqual(longest);
        counts.forEach((count, symbol) => {
          if (count > 0) expect(lengths[symbol]).toBeGreaterThan(0);
        });
      }),
    );
  });

  it('takes as few bits as any where no length is cut', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(1000), { minLength: 2, maxLength: 60 }), (counts) => {
        fc.pre(counts.filter((count) => count > 0).length > 1);
        const { lengths } = prefixCode(Uint32Array.from(counts), 60);
        expect(bitsOf(lengths, counts)).toBe(leastBits(counts));
      }),
    );
  });

  it('stays near the least where lengths are cut', () => {
    // Frequencies by Fibonacci make the deepest tree there is.
    const counts = [1, 1];
    while (counts.length < 25) counts.push((counts.at(-1) as number) + (counts.at(-2) as number));
    const { lengths } = prefixCode(Uint32Array.from(counts), 15);
    expect(Math.max(...lengths)).toBe(15);
    expect(kraft(lengths)).toBe(1);
    expect(bitsOf(lengths, counts)).toBeLessThan(1.01 * leastBits(counts));
  });

  it('has no code that begins another, its first bit lowest', () => {
    fc.assert(
      fc.property(frequencies, (counts) => {
        const { lengths, codes } = prefixCode(Uint32Array.from(counts), 15);
        const written = [...lengths]
          .map((length, symbol) =>
            (codes[symbol] as number)
              .toString(2)
              .padStart(length, '0')
              .slice(-length || 16),
          )
          .filter((_, symbol) => lengths[symbol] !== 0)
          .map((code) => [...code].reverse().join(''))
          .sort();
        written.forEach((code, index) => {
          expect(written[index + 1]?.startsWith(code) ?? false).toBe(false);
        });
      }),
    );
  });

  it('gives two symbols a code where fewer are used', () => {
    expect(prefixCode(Uint32Array.of(0, 0, 7), 15).lengths).toEqual(Uint8Array.of(1, 0, 1));
    expect(prefixCode(new Uint32Array(3), 15).lengths).toEqual(Uint8Array.of(1, 1, 0));
  });
});
