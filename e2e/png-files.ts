import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { PNG } from 'pngjs';
import { trimBox } from '../src/artwork';
import { chunkBytes } from '../tests/artwork/files';

export interface ImageFile {
  readonly name: string;
  readonly bytes: Buffer;
}

const uint32 = (value: number) => [value >>> 24, (value >> 16) & 0xff, (value >> 8) & 0xff, value & 0xff];

/** The files of the public PNG test suite (W. van Schaik) that a registry package carries. */
export function suiteFiles(): ImageFile[] {
  const folder = join(
    dirname(createRequire(import.meta.url).resolve('node-png/package.json')),
    'examples/test/img',
  );
  return readdirSync(folder)
    .filter((name) => name.endsWith('.png'))
    .map((name) => ({ name, bytes: readFileSync(join(folder, name)) }));
}

/** A PNG from its rows as they are stored, each with filter 0 (W3C PNG, third edition, clause 7 and 11.2). */
function storedPng(
  {
    width,
    height,
    depth,
    type,
    interlaced = false,
  }: { width: number; height: number; depth: number; type: number; interlaced?: boolean },
  rows: readonly (readonly number[])[],
  chunks: readonly { type: string; data: readonly number[] }[] = [],
): Buffer {
  const header = [...uint32(width), ...uint32(height), depth, type, 0, 0, interlaced ? 1 : 0];
  const pixels = deflateSync(Uint8Array.from(rows.flatMap((row) => [0, ...row])));
  return Buffer.from([
    ...[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
    ...chunkBytes({ type: 'IHDR', data: header }),
    ...chunks.flatMap(chunkBytes),
    ...chunkBytes({ type: 'IDAT', data: [...pixels] }),
    ...chunkBytes({ type: 'IEND', data: [] }),
  ]);
}

const SIDE = 24;
const colourAt = (x: number, y: number): number[] => [10 * x, 10 * y, 128, x + y < 6 ? 0 : 255];
const rowsOf = (xs: readonly number[], ys: readonly number[], pixel: (x: number, y: number) => number[]) =>
  ys.map((y) => xs.flatMap((x) => pixel(x, y)));
const range = (from: number, step: number) =>
  Array.from({ length: Math.max(0, Math.ceil((SIDE - from) / step)) }, (_, index) => from + index * step);

/** Adam7 (W3C PNG, third edition, 8.2): where each pass begins, and its steps. */
const PASSES = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

/** Kinds of PNG that the suite's files here do not have. */
export function otherKinds(): ImageFile[] {
  const size = { width: SIDE, height: SIDE };
  const all = range(0, 1);
  const grey = (x: number, y: number) => [5 * (x + y), x < 3 ? 0 : 255];
  return [
    {
      name: 'plain16.png',
      bytes: storedPng(
        { ...size, depth: 16, type: 6 },
        rowsOf(all, all, (x, y) => colourAt(x, y).flatMap((c) => [c, c])),
      ),
    },
    { name: 'greyalpha.png', bytes: storedPng({ ...size, depth: 8, type: 4 }, rowsOf(all, all, grey)) },
    {
      name: 'greyalpha16.png',
      bytes: storedPng(
        { ...size, depth: 16, type: 4 },
        rowsOf(all, all, (x, y) => grey(x, y).flatMap((c) => [c, c])),
      ),
    },
    {
      name: 'interlaced.png',
      bytes: storedPng(
        { ...size, depth: 8, type: 6, interlaced: true },
        PASSES.flatMap(([x, y, across, down]) => rowsOf(range(x, across), range(y, down), colourAt)),
      ),
    },
    {
      name: 'palette.png',
      bytes: storedPng(
        { ...size, depth: 8, type: 3 },
        rowsOf(all, all, (x, y) => [(x + y) % 4]),
        [
          { type: 'PLTE', data: [0, 0, 0, 200, 30, 30, 30, 200, 30, 30, 30, 200] },
          { type: 'tRNS', data: [0, 255, 255] },
        ],
      ),
    },
    {
      name: 'palette2.png',
      bytes: storedPng(
        { ...size, depth: 2, type: 3 },
        all.map(() => range(0, 4).map(() => 0b00_01_10_11)),
        [
          { type: 'PLTE', data: [90, 0, 0, 200, 30, 30, 30, 200, 30, 30, 30, 200] },
          { type: 'tRNS', data: [0] },
        ],
      ),
    },
    {
      name: 'animated.png',
      bytes: storedPng({ ...size, depth: 8, type: 6 }, rowsOf(all, all, colourAt), [
        { type: 'acTL', data: [...uint32(1), ...uint32(0)] },
        {
          type: 'fcTL',
          data: [
            ...uint32(0),
            ...uint32(SIDE),
            ...uint32(SIDE),
            ...uint32(0),
            ...uint32(0),
            0,
            10,
            0,
            100,
            0,
            0,
          ],
        },
      ]),
    },
  ];
}

/** The exponent of a gAMA chunk, `null` where there is none. */
function gammaOf(bytes: Buffer): number | null {
  const at = bytes.indexOf('gAMA');
  return at < 0 ? null : bytes.readUInt32BE(at + 4) / 100_000;
}

/** A sample of a gamma as sRGB has it (IEC 61966-2-1). */
function toSrgb(sample: number, gamma: number): number {
  const linear = (sample / 255) ** (1 / gamma);
  return 255 * (linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055);
}

/** What an independent decoder sees in a file's trimmed box, brought to sRGB; `null` where it is blank. */
export function decoded(bytes: Buffer): { width: number; height: number; rgba: number[] } | null {
  const { width, height, data } = PNG.sync.read(bytes);
  const box = trimBox(new Uint8ClampedArray(data), width, height);
  if (!box) return null;
  const gamma = gammaOf(bytes);
  const rgba: number[] = [];
  for (let y = box.y; y < box.y + box.height; y += 1) {
    for (let x = box.x; x < box.x + box.width; x += 1) {
      const at = 4 * (y * width + x);
      for (let c = 0; c < 3; c += 1) {
        const sample = data[at + c] as number;
        rgba.push(gamma === null ? sample : toSrgb(sample, gamma));
      }
      rgba.push(data[at + 3] as number);
    }
  }
  return { width: box.width, height: box.height, rgba };
}
