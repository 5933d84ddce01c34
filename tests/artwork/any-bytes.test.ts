import fc from 'fast-check';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import {
  fileFacts,
  isWholeJpeg,
  isWholePng,
  isWholeWebp,
  readJpegHeader,
  readPngHeader,
  readWebpHeader,
} from '../../src/artwork';
import { CASES, timer } from '../model/damage';
import { jpegBytes, pngWith } from './files';

const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
const whole = {
  png: pngWith(
    [{ type: 'pHYs', data: [0, 0, 46, 35, 0, 0, 46, 35, 1] }],
    PNG.sync.write(new PNG({ width: 4, height: 3 })),
  ),
  jpeg: jpegBytes([
    {
      marker: 0xe1,
      data: [...ascii('Exif\0\0MM\0*'), 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0],
    },
  ]),
  webp: Uint8Array.from([
    ...ascii('RIFF'),
    40,
    0,
    0,
    0,
    ...ascii('WEBPVP8X'),
    10,
    0,
    0,
    0,
    ...new Array<number>(30).fill(1),
  ]),
};

/** The file with some bytes changed, cut off anywhere. */
const damaged = (bytes: Uint8Array) =>
  fc
    .tuple(
      fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.nat(255)), { maxLength: 6 }),
      fc.integer({ min: 0, max: bytes.length }),
    )
    .map(([changes, length]) => {
      const copy = bytes.slice();
      for (const [at, value] of changes) copy[at] = value;
      return copy.subarray(0, length);
    });

describe('any damage to an image', () => {
  const timed = timer('images');

  it.each([
    ['png', readPngHeader, isWholePng],
    ['jpeg', readJpegHeader, isWholeJpeg],
    ['webp', readWebpHeader, isWholeWebp],
  ] as const)('of a %s is told or read over, and never ends the reader', (kind, read, isWhole) => {
    fc.assert(
      fc.property(damaged(whole[kind]), (bytes) => {
        const header = timed(() => read(bytes));
        if (header.ok) expect(Math.min(header.value.width, header.value.height)).toBeGreaterThan(0);
        expect(typeof timed(() => isWhole(bytes))).toBe('boolean');
        expect(timed(() => fileFacts(bytes))).toHaveProperty('animated');
      }),
      { numRuns: CASES },
    );
  });
});
