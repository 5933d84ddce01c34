/** Figures of four components for each block of 8 by 8, left to right. */
export type Blocks = readonly (readonly [number, number, number, number])[];

const segment = (marker: number, data: readonly number[]): number[] => [
  0xff,
  marker,
  (data.length + 2) >> 8,
  (data.length + 2) & 0xff,
  ...data,
];
const ascii = (text: string) => [...text].map((sign) => sign.charCodeAt(0));

/**
 * A JPEG of four components in blocks of one colour, all as they are stored (ISO/IEC 10918-1, annex B and F.1.2): a first figure of each
 * block is eight times its colour, and all others are nought.
 * @param transform of its APP14 segment (ISO/IEC 10918-6, 6.5.3): 0 for inks, 2 for luma, chroma and black; `null`: it has none
 */
export function inkJpeg(blocks: Blocks, transform: 0 | 2 | null, icc: Uint8Array | null = null): Uint8Array {
  const bits: number[] = [];
  const put = (value: number, count: number) => {
    for (let at = count - 1; at >= 0; at -= 1) bits.push((value >> at) & 1);
  };
  const before = [0, 0, 0, 0];
  for (const block of blocks) {
    for (const [component, value] of block.entries()) {
      // Steps of 8, so that a first figure is the colour itself.
      const step = value - 128 - (before[component] as number);
      before[component] = value - 128;
      const size = step === 0 ? 0 : Math.floor(Math.log2(Math.abs(step))) + 1;
      put(size, 4);
      if (size > 0) put(step > 0 ? step : step + 2 ** size - 1, size);
      put(0, 1);
    }
  }
  while (bits.length % 8 !== 0) bits.push(1);
  const data: number[] = [];
  for (let at = 0; at < bits.length; at += 8) {
    const byte = Number.parseInt(bits.slice(at, at + 8).join(''), 2);
    data.push(byte, ...(byte === 0xff ? [0] : []));
  }
  const width = 8 * blocks.length;
  const ids = [1, 2, 3, 4];
  return Uint8Array.from([
    ...[0xff, 0xd8],
    ...(transform === null ? [] : segment(0xee, [...ascii('Adobe'), 0, 100, 0, 0, 0, 0, transform])),
    ...(icc ? segment(0xe2, [...ascii('ICC_PROFILE\0'), 1, 1, ...icc]) : []),
    ...segment(0xdb, [0, ...new Array<number>(64).fill(8)]),
    ...segment(0xc0, [8, 0, 8, width >> 8, width & 0xff, 4, ...ids.flatMap((id) => [id, 0x11, 0])]),
    // Twelve codes of four bits for first figures; one of one bit, for a block's end, for the others.
    ...segment(0xc4, [
      0,
      0,
      0,
      0,
      12,
      ...new Array<number>(12).fill(0),
      ...Array.from({ length: 12 }, (_, at) => at),
    ]),
    ...segment(0xc4, [0x10, 1, ...new Array<number>(15).fill(0), 0]),
    ...segment(0xda, [4, ...ids.flatMap((id) => [id, 0]), 0, 63, 0]),
    ...data,
    ...[0xff, 0xd9],
  ]);
}
