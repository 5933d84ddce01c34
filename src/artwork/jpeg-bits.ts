/** Thrown where the data of a scan ends before its blocks do, or is none. */
export class Damaged extends Error {}

/** A table of Huffman codes (ISO/IEC 10918-1, annex F.2.2.3): by the length of a code, the least and the most of that length. */
export interface Codes {
  readonly least: Int32Array;
  readonly most: Int32Array;
  readonly first: Int32Array;
  readonly values: Uint8Array;
}

export function codesOf(counts: Uint8Array, values: Uint8Array): Codes {
  const [least, most, first] = [new Int32Array(17), new Int32Array(17).fill(-1), new Int32Array(17)];
  let [code, at] = [0, 0];
  for (let length = 1; length <= 16; length += 1) {
    const count = counts[length - 1] as number;
    least[length] = code;
    first[length] = at;
    if (count > 0) most[length] = code + count - 1;
    code = (code + count) << 1;
    at += count;
  }
  return { least, most, first, values };
}

/** Bits of a scan's data, without the bytes that are stuffed behind 0xFF. */
export function bitsOf(data: Uint8Array) {
  let [at, byte, left] = [0, 0, 0];
  const bit = (): number => {
    if (left === 0) {
      if (at >= data.length) throw new Damaged();
      byte = data[at] as number;
      at += byte === 0xff ? 2 : 1;
      left = 8;
    }
    left -= 1;
    return (byte >> left) & 1;
  };
  return {
    bit,
    take(count: number): number {
      let value = 0;
      for (let index = 0; index < count; index += 1) value = (value << 1) | bit();
      return value;
    },
    code({ least, most, first, values }: Codes): number {
      let code = 0;
      for (let length = 1; length <= 16; length += 1) {
        code = (code << 1) | bit();
        if (code <= (most[length] as number)) {
          return values[(first[length] as number) + code - (least[length] as number)] as number;
        }
      }
      throw new Damaged();
    },
  };
}

export type Bits = ReturnType<typeof bitsOf>;
