import type { DeflateBlock } from './block';
import { FARTHEST, LONGEST_MATCH, SHORTEST_MATCH } from './symbols';
import { endOfZeros } from './zeros';

/** Bytes that are looked up together. */
const KEY = 4;
const HASH_BITS = 15;
/** The golden ratio in 32 bits: D. E. Knuth, "The Art of Computer Programming" 3, 6.4, multiplicative hashing. */
const GOLDEN = 0x9e3779b1;
/** Places with the same hash that are compared; more gain little and cost much. */
const TRIES = 6;
/** In matches up to this long all places are remembered. */
const SHORT = 16;
/** So many zeros are a run. */
const RUN = 8;
const NEVER = -1;

const hashOf = (key: number): number => Math.imul(key, GOLDEN) >>> (32 - HASH_BITS);

/** Zeros, as matches with the zero before. */
function writeZeros(block: DeflateBlock, count: number, isFirst: boolean): void {
  let left = count;
  if (isFirst) {
    block.literal(0);
    left -= 1;
  }
  while (left >= SHORTEST_MATCH) {
    const whole = left - LONGEST_MATCH;
    // No rest is left that is too short for a match.
    const taken = whole > 0 && whole < SHORTEST_MATCH ? left - SHORTEST_MATCH : Math.min(left, LONGEST_MATCH);
    block.match(taken, 1);
    left -= taken;
  }
  for (; left > 0; left -= 1) block.literal(0);
}

/**
 * Parts bytes into literals and matches with what came before: greedy matching (J. Ziv and A. Lempel, "A universal algorithm for
 * sequential data compression", 1977) with chains of places by hash, as RFC 1951 (4) advises, and a short way over zeros, which
 * filtered rows of drawn artwork are made of for the most part.
 */
export function createMatcher(): (bytes: Uint8Array, block: DeflateBlock) => void {
  const latest = new Int32Array(1 << HASH_BITS);
  const earlier = new Int32Array(FARTHEST);

  return (bytes, block) => {
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    latest.fill(NEVER);
    const end = bytes.length;
    let at = 0;
    while (at + KEY <= end) {
      const key = view.getInt32(at);
      if (key === 0) {
        const to = endOfZeros(view, at + KEY);
        if (to - at >= RUN) {
          writeZeros(block, to - at, at === 0 || bytes[at - 1] !== 0);
          at = to;
          continue;
        }
      }
      const hash = hashOf(key);
      let other = latest[hash] as number;
      latest[hash] = at;
      earlier[at & (FARTHEST - 1)] = other;
      let length = KEY - 1;
      let distance = 0;
      const most = Math.min(LONGEST_MATCH, end - at);
      for (let tries = TRIES; tries > 0 && other >= 0 && at - other <= FARTHEST; tries -= 1) {
        if (bytes[other + length] === bytes[at + length] && view.getInt32(other) === key) {
          let same = KEY;
          while (same < most && bytes[other + same] === bytes[at + same]) same += 1;
          if (same > length) {
            length = same;
            distance = at - other;
            if (same === most) break;
          }
        }
        const before = earlier[other & (FARTHEST - 1)] as number;
        // What lies further back was written over.
        if (before >= other) break;
        other = before;
      }
      if (distance === 0) {
        block.literal(bytes[at] as number);
        at += 1;
        continue;
      }
      block.match(length, distance);
      const to = at + length;
      if (length <= SHORT) {
        const last = Math.min(to, end - KEY + 1);
        for (at += 1; at < last; at += 1) {
          const own = hashOf(view.getInt32(at));
          earlier[at & (FARTHEST - 1)] = latest[own] as number;
          latest[own] = at;
        }
      }
      at = to;
    }
    for (; at < end; at += 1) block.literal(bytes[at] as number);
  };
}
