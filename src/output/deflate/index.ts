import { adler32 } from './adler';
import { bitWriter } from './bit-writer';
import { createBlock } from './block';
import { createMatcher } from './repeats';

/** A zlib stream (RFC 1950) that is made piece by piece. */
export interface ZlibStream {
  /** Takes more bytes. @returns what is compressed by now, to be used before more is taken */
  push(bytes: Uint8Array): Uint8Array<ArrayBuffer>;
  /** @returns the rest */
  end(): Uint8Array<ArrayBuffer>;
}

/** Deflate with a window of 32,768 bytes, made fast (RFC 1950, 2.2). */
const HEAD = [0x78, 0x01];

/**
 * Compresses rows of pixels that are filtered, which are mostly zeros. Each push is compressed by itself: matches reach back to its
 * beginning, so that some hundred kilobytes at a time lose next to nothing.
 */
export function createZlibStream(): ZlibStream {
  const bits = bitWriter();
  const block = createBlock(bits);
  const match = createMatcher();
  let sum = 1;
  for (const byte of HEAD) bits.put(byte, 8);
  return {
    push(bytes) {
      sum = adler32(bytes, sum);
      match(bytes, block);
      return bits.take();
    },
    end() {
      block.write();
      // An empty last block with the codes that all decoders know.
      const [last, known, nothing] = [1, 1, 0];
      bits.put(last | (known << 1), 3);
      bits.put(nothing, 7);
      bits.align();
      for (let shift = 24; shift >= 0; shift -= 8) bits.put((sum >>> shift) & 0xff, 8);
      return bits.take();
    },
  };
}
