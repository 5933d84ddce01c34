import { deflateSync, inflateSync } from 'node:zlib';
import fc from 'fast-check';
import { unzlibSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { createZlibStream } from '../../../src/output/deflate';
import { filterRows } from '../../../src/output/print-image';
import { emblem } from '../print-image/drawings';

/** The stream of bytes that come in pieces. */
function deflated(pieces: readonly Uint8Array[]): Buffer {
  const stream = createZlibStream();
  const parts = pieces.map((piece) => stream.push(piece).slice());
  return Buffer.concat([...parts, stream.end()]);
}

const joined = (pieces: readonly Uint8Array[]) => new Uint8Array(Buffer.concat(pieces));

/** Two decoders of others must give back what went in. */
function expectBack(pieces: readonly Uint8Array[]): void {
  const [bytes, whole] = [deflated(pieces), joined(pieces)];
  expect(Buffer.compare(inflateSync(bytes), whole)).toBe(0);
  expect(Buffer.compare(unzlibSync(bytes), whole)).toBe(0);
}

const noise = (length: number, seed = 1): Uint8Array => {
  let state = seed;
  return Uint8Array.from({ length }, () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return state >>> 24;
  });
};

/** Stretches of zeros, of one byte, of noise, and of what was there before, so far back. */
const stretches = fc.array(
  fc.oneof(
    fc.record({ kind: fc.constant('zeros' as const), length: fc.integer({ min: 0, max: 3000 }) }),
    fc.record({
      kind: fc.constant('same' as const),
      byte: fc.nat(255),
      length: fc.integer({ min: 0, max: 600 }),
    }),
    fc.record({ kind: fc.constant('any' as const), bytes: fc.uint8Array({ maxLength: 80 }) }),
    fc.record({
      kind: fc.constant('again' as const),
      back: fc.integer({ min: 1, max: 40_000 }),
      length: fc.integer({ min: 0, max: 600 }),
    }),
  ),
  { maxLength: 30 },
);

type Stretch = typeof stretches extends fc.Arbitrary<infer Value> ? Value : never;

function laid(parts: Stretch): Uint8Array {
  const bytes: number[] = [];
  for (const part of parts) {
    if (part.kind === 'any') bytes.push(...part.bytes);
    else {
      for (let count = 0; count < part.length; count += 1) {
        if (part.kind === 'again') bytes.push(bytes[bytes.length - part.back] ?? 7);
        else bytes.push(part.kind === 'same' ? part.byte : 0);
      }
    }
  }
  return Uint8Array.from(bytes);
}

describe('a zlib stream (RFC 1950, RFC 1951)', () => {
  it('gives back what was put into it, in decoders of others', () => {
    fc.assert(
      fc.property(fc.array(stretches.map(laid), { maxLength: 4 }), (pieces) => expectBack(pieces)),
      { numRuns: 300 },
    );
  });

  it.each<[string, Uint8Array[]]>([
    ['nothing', []],
    ['pieces of nothing', [new Uint8Array(), new Uint8Array()]],
    ['one byte', [Uint8Array.of(9)]],
    ['three zeros', [new Uint8Array(3)]],
    ['noise', [noise(100_000), noise(7, 3)]],
    ['more zeros than any length or window', [new Uint8Array(3_000_001)]],
    ['a run of another byte', [new Uint8Array(200_000).fill(255)]],
    ['the same noise as far back as a distance reaches', [joined([noise(32_768), noise(32_768)])]],
    ['the same noise one byte further back', [joined([noise(32_769), noise(32_769)])]],
    ['more blocks than one', [joined(Array.from({ length: 20 }, (_, seed) => noise(9000, seed)))]],
    ['bytes at an odd address', [noise(1003).subarray(3), new Uint8Array(1001).subarray(1)]],
  ])('takes %s', (_, pieces) => {
    expectBack(pieces);
  });

  it('takes lengths of zeros at which a rest too short for a match would be left', () => {
    for (let length = 1; length < 800; length += 1) {
      expectBack([joined([Uint8Array.of(5), new Uint8Array(length), Uint8Array.of(6)])]);
    }
  });

  it('puts a long run of zeros into next to nothing, and noise into no more than a hundredth above itself', () => {
    expect(deflated([new Uint8Array(10_000_000)]).length).toBeLessThan(12_000);
    expect(deflated([noise(200_000)]).length).toBeLessThan(202_000);
  });

  it('takes no more than 1.3 times what zlib makes of filtered rows at its usual level', () => {
    const { width, data } = emblem(900, 900, 3);
    const rows = filterRows(new Uint32Array(data.buffer), new Uint32Array(width), width);
    expect(deflated([rows]).length).toBeLessThan(1.3 * deflateSync(rows).length);
  });
});
