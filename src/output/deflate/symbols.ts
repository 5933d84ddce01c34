/** How lengths or distances are written: a symbol that tells where a range begins, and bits for the place in it. */
export interface Ranges {
  readonly first: Uint16Array;
  readonly extra: Uint8Array;
}

/** Ranges that double in size every `each` symbols, the first two times `each` of them holding one value only. */
function ranges(symbols: number, least: number, each: number): Ranges {
  const extra = Uint8Array.from({ length: symbols }, (_, symbol) =>
    Math.max(0, Math.floor(symbol / each) - 1),
  );
  const first = new Uint16Array(symbols);
  let begin = least;
  extra.forEach((bits, symbol) => {
    first[symbol] = begin;
    begin += 2 ** bits;
  });
  return { first, extra };
}

export const SHORTEST_MATCH = 3;
export const LONGEST_MATCH = 258;
export const FARTHEST = 32_768;

/** Lengths of matches (RFC 1951, 3.2.5); the longest has a symbol of its own. */
export const lengths = ranges(29, SHORTEST_MATCH, 4);
lengths.first[28] = LONGEST_MATCH;
lengths.extra[28] = 0;

/** Distances of matches (RFC 1951, 3.2.5). */
export const distances = ranges(30, 1, 2);

/** The symbol of a length, without the 257 that come before it in the alphabet. */
export const lengthSymbols = new Uint8Array(LONGEST_MATCH + 1);
for (let length = SHORTEST_MATCH, symbol = 0; length <= LONGEST_MATCH; length += 1) {
  while (symbol < 28 && length >= (lengths.first[symbol + 1] as number)) symbol += 1;
  lengthSymbols[length] = symbol;
}

/** Symbols of distances up to 256, and from there on of every 128th: ranges begin at none between. */
const near = new Uint8Array(256);
const far = new Uint8Array(FARTHEST / 128);
for (let distance = 1, symbol = 0; distance <= FARTHEST; distance += 1) {
  while (symbol < 29 && distance >= (distances.first[symbol + 1] as number)) symbol += 1;
  if (distance <= 256) near[distance - 1] = symbol;
  far[(distance - 1) >>> 7] = symbol;
}

/** The symbol of a distance. */
export const distanceSymbol = (distance: number): number =>
  (distance <= 256 ? near[distance - 1] : far[(distance - 1) >>> 7]) as number;
