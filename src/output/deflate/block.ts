import type { BitWriter } from './bit-writer';
import { type PrefixCode, prefixCode } from './prefix-code';
import { distanceSymbol, distances, lengthSymbols, lengths } from './symbols';

/** Literals and matches that share their codes. */
export interface DeflateBlock {
  literal(byte: number): void;
  /** The same `length` bytes as `distance` bytes before. */
  match(length: number, distance: number): void;
  /** Writes what is in it with codes made for it (RFC 1951, 3.2.7) and empties it. */
  write(): void;
}

/** Literals and matches that are written together: fewer cost more codes, more fit them less. */
const ROOM = 16_384;
const LITERALS = 256;
const END = 256;
const LONGEST_CODE = 15;
/** Of the codes in which the lengths of others are written. */
const LONGEST_LENGTH_CODE = 7;
/** Lengths of these are written in this order (RFC 1951, 3.2.7). */
const LENGTH_ORDER = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];
/** Symbols for repeated lengths: the one before, few zeros, many zeros; how often at least and at most, and bits to tell. */
const AGAIN = { symbol: 16, least: 3, most: 6, bits: 2 };
const ZEROS = { symbol: 17, least: 3, most: 10, bits: 3 };
const MANY_ZEROS = { symbol: 18, least: 11, most: 138, bits: 7 };

interface LengthSymbol {
  readonly symbol: number;
  readonly extra: number;
  readonly bits: number;
}

/** Lengths of codes with their repetitions put shortly. */
function packLengths(all: Uint8Array): LengthSymbol[] {
  const packed: LengthSymbol[] = [];
  for (let at = 0; at < all.length; ) {
    const length = all[at] as number;
    let run = 1;
    while (at + run < all.length && all[at + run] === length) run += 1;
    at += run;
    const repeat = ({ symbol, least, most, bits }: typeof AGAIN): void => {
      while (run >= least) {
        const count = Math.min(run, most);
        packed.push({ symbol, extra: count - least, bits });
        run -= count;
      }
    };
    const once = (): void => {
      packed.push({ symbol: length, extra: 0, bits: 0 });
      run -= 1;
    };
    if (length === 0) {
      repeat(MANY_ZEROS);
      repeat(ZEROS);
    } else {
      once();
      repeat(AGAIN);
    }
    while (run > 0) once();
  }
  return packed;
}

/** How many of the lengths are to be written: all up to the last that is not zero. */
const needed = (lengthAt: (index: number) => number | undefined, all: number, least: number): number => {
  let count = all;
  while (count > least && lengthAt(count - 1) === 0) count -= 1;
  return count;
};

/** The head of a block that brings its own codes. */
function writeCodes(bits: BitWriter, symbols: PrefixCode, steps: PrefixCode): void {
  const symbolCount = needed((index) => symbols.lengths[index], symbols.lengths.length, END + 1);
  const stepCount = needed((index) => steps.lengths[index], steps.lengths.length, 1);
  const all = new Uint8Array(symbolCount + stepCount);
  all.set(symbols.lengths.subarray(0, symbolCount));
  all.set(steps.lengths.subarray(0, stepCount), symbolCount);
  const packed = packLengths(all);
  const frequencies = new Uint32Array(LENGTH_ORDER.length);
  for (const { symbol } of packed) frequencies[symbol] = (frequencies[symbol] as number) + 1;
  const code = prefixCode(frequencies, LONGEST_LENGTH_CODE);
  const codeCount = needed((index) => code.lengths[LENGTH_ORDER[index] as number], LENGTH_ORDER.length, 4);
  const [more, own] = [0, 2];
  bits.put(more | (own << 1), 3);
  bits.put(symbolCount - (END + 1), 5);
  bits.put(stepCount - 1, 5);
  bits.put(codeCount - 4, 4);
  for (const symbol of LENGTH_ORDER.slice(0, codeCount)) bits.put(code.lengths[symbol] as number, 3);
  for (const { symbol, extra, bits: count } of packed) {
    bits.put(code.codes[symbol] as number, code.lengths[symbol] as number);
    bits.put(extra, count);
  }
}

/** Gathers literals and matches, and writes them whenever there are enough. */
export function createBlock(bits: BitWriter): DeflateBlock {
  // A literal as it is, a match as its distance before nine bits of length.
  const items = new Uint32Array(ROOM);
  let count = 0;
  const symbolsUsed = new Uint32Array(LITERALS + 1 + lengths.first.length);
  const stepsUsed = new Uint32Array(distances.first.length);

  const write = (): void => {
    if (count === 0) return;
    symbolsUsed[END] = 1;
    const symbols = prefixCode(symbolsUsed, LONGEST_CODE);
    const steps = prefixCode(stepsUsed, LONGEST_CODE);
    writeCodes(bits, symbols, steps);
    for (let index = 0; index < count; index += 1) {
      const item = items[index] as number;
      const distance = item >>> 9;
      if (distance === 0) {
        bits.put(symbols.codes[item] as number, symbols.lengths[item] as number);
        continue;
      }
      const length = item & 511;
      const long = lengthSymbols[length] as number;
      const symbol = END + 1 + long;
      bits.put(symbols.codes[symbol] as number, symbols.lengths[symbol] as number);
      bits.put(length - (lengths.first[long] as number), lengths.extra[long] as number);
      const far = distanceSymbol(distance);
      bits.put(steps.codes[far] as number, steps.lengths[far] as number);
      bits.put(distance - (distances.first[far] as number), distances.extra[far] as number);
    }
    bits.put(symbols.codes[END] as number, symbols.lengths[END] as number);
    symbolsUsed.fill(0);
    stepsUsed.fill(0);
    count = 0;
  };

  return {
    literal(byte) {
      if (count === ROOM) write();
      items[count] = byte;
      count += 1;
      (symbolsUsed[byte] as number) += 1;
    },
    match(length, distance) {
      if (count === ROOM) write();
      items[count] = (distance << 9) | length;
      count += 1;
      (symbolsUsed[END + 1 + (lengthSymbols[length] as number)] as number) += 1;
      (stepsUsed[distanceSymbol(distance)] as number) += 1;
    },
    write,
  };
}
