/// <reference path="../../src/artwork/browser/pdfjs-images.d.ts" />
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as fc from 'fast-check';
import { JpegImage } from 'pdfjs-dist/legacy/image_decoders/pdf.image_decoders.mjs';
import { describe, expect, it } from 'vitest';
import { fileFacts, jpegInks } from '../../src/artwork';
import { inksToRgba, readInks, srgbOf } from '../../src/artwork/inks';
import { hasAllBlocks } from '../../src/artwork/jpeg-scan';
import { type Blocks, inkJpeg } from './ink-jpeg';

const bytes = new Uint8Array(
  readFileSync(createRequire(import.meta.url).resolve('pdfjs-dist/iccs/CGATS001Compat-v2-micro.icc')),
);

type Four = [number, number, number, number];
type Three = [number, number, number];

/**
 * What Little CMS 2.14 (transicc -t1 -c0, relative colorimetric, no precalculation) makes of percentages of four inks by the same profile
 * (CGATS TR 001, 8.4 kB, lut16Type): CIE L*a*b* and sRGB.
 */
const reference: readonly [Four, Three, Three][] = [
  [
    [0, 0, 0, 0],
    [100.0, -0.0, -0.0],
    [255, 255, 255],
  ],
  [
    [100, 0, 0, 0],
    [62.345, -44.168, -50.168],
    [0, 174, 239],
  ],
  [
    [0, 100, 0, 0],
    [52.04, 80.621, -7.051],
    [236, 0, 140],
  ],
  [
    [0, 0, 100, 0],
    [94.966, -6.453, 95.516],
    [255, 242, 0],
  ],
  [
    [0, 0, 0, 100],
    [12.31, 1.992, 0.109],
    [35, 31, 32],
  ],
  [
    [100, 100, 0, 0],
    [25.332, 25.27, -55.332],
    [46, 48, 146],
  ],
  [
    [0, 100, 100, 0],
    [51.664, 74.07, 53.77],
    [237, 28, 36],
  ],
  [
    [100, 0, 100, 0],
    [57.333, -73.941, 29.703],
    [0, 166, 80],
  ],
  [
    [50, 40, 40, 0],
    [59.225, -0.938, -0.852],
    [140, 143, 144],
  ],
  [
    [100, 100, 100, 100],
    [0.0, -0.0, -0.0],
    [0, 0, 0],
  ],
  [
    [12, 34, 56, 78],
    [26.743, 6.914, 17.824],
    [79, 59, 36],
  ],
  [
    [73, 21, 9, 3],
    [59.329, -20.672, -31.309],
    [43, 155, 197],
  ],
  [
    [5, 88, 61, 17],
    [46.35, 55.156, 23.004],
    [194, 59, 75],
  ],
  [
    [33, 3, 77, 45],
    [51.641, -16.406, 34.023],
    [110, 130, 62],
  ],
];

const shares = (inks: Four): Four => inks.map((ink) => ink / 100) as Four;

describe('inks by a profile', () => {
  const look = readInks(bytes);
  if (!look) throw new Error('no profile of inks');

  it.each(reference)('%j are what an independent engine makes of them', (inks, lab, rgb) => {
    const found = look(shares(inks));
    const off = Math.hypot(...found.map((figure, index) => figure - (lab[index] as number)));
    expect(off, String(found)).toBeLessThan(0.1);
    for (const [index, channel] of srgbOf(found).entries()) {
      expect(Math.abs(channel - (rgb[index] as number)), `${srgbOf(found)}`).toBeLessThanOrEqual(1);
    }
  });

  it('have no step between neighbours', () => {
    const ink = fc.double({ min: 0, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(ink, ink, ink, ink), fc.integer({ min: 0, max: 3 }), (inks, at) => {
        const more = inks.map((share, index) => (index === at ? share + 0.0005 : share)) as Four;
        const [a, b] = [look(inks), look(more)];
        expect(Math.hypot(...a.map((figure, index) => figure - (b[index] as number)))).toBeLessThan(0.5);
      }),
    );
  });

  it('are opaque pixels, each as it would be alone', () => {
    const pixels = [0, 0, 0, 0, 255, 0, 0, 0, 0, 0, 0, 255, 0, 0, 0, 0];
    const rgba = inksToRgba(pixels, look);
    expect([...rgba.subarray(0, 4)]).toEqual([255, 255, 255, 255]);
    expect([...rgba.subarray(4, 8)]).toEqual([...srgbOf(look([1, 0, 0, 0])), 255]);
    expect([...rgba.subarray(12)]).toEqual([255, 255, 255, 255]);
  });

  it('are refused where the profile is damaged or of other colours', () => {
    expect(readInks(new Uint8Array(20))).toBeNull();
    expect(readInks(bytes.subarray(0, 4000))).toBeNull();
    const rgb = bytes.slice();
    rgb.set([0x52, 0x47, 0x42, 0x20], 16);
    expect(readInks(rgb)).toBeNull();
  });

  it('are never read past the end of a profile, whatever its bytes are', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(700), fc.nat(255)), { maxLength: 12 }),
        fc.nat(bytes.length),
        (changes, length) => {
          const other = bytes.slice(0, length);
          for (const [at, value] of changes) if (at < length) other[at] = value;
          const read = readInks(other);
          if (read) for (const figure of read([0.3, 0.9, 0, 1])) expect(Number.isNaN(figure)).toBe(false);
        },
      ),
    );
  });
});

/** A profile of lutAToBType (ICC.1:2022, 10.12) made by hand: a table of two places a side. */
function newer(pcs: string): Uint8Array {
  const curve = [0x63, 0x75, 0x72, 0x76, 0, 0, 0, 0, 0, 0, 0, 0];
  const places = Array.from({ length: 16 }, (_, place) => {
    const [c = 0, m = 0, y = 0, k = 0] = [8, 4, 2, 1].map((bit) => (place & bit ? 1 : 0));
    // Lightness falls with each ink, red-green with magenta, yellow-blue with yellow.
    return [255 * Math.max(0, 1 - 0.2 * (c + m + y) - 0.4 * k), 128 + 100 * m, 128 + 100 * y];
  }).flat();
  const table = [2, 2, 2, 2, ...new Array<number>(12).fill(0), 1, 0, 0, 0, ...places];
  const gamma = [0x70, 0x61, 0x72, 0x61, 0, 0, 0, 0, 0, 0, 0, 0, 0, 2, 0, 0];
  const word = (value: number) => [value >>> 24, (value >> 16) & 255, (value >> 8) & 255, value & 255];
  const [b, grid] = [32, 32 + 3 * curve.length];
  const a = grid + table.length;
  const tag = [
    ...[...'mAB '].map((sign) => sign.charCodeAt(0)),
    ...word(0),
    4,
    3,
    0,
    0,
    ...[b, 0, 0, grid, a].flatMap(word),
    ...curve,
    ...curve,
    ...curve,
    ...table,
    ...[gamma, gamma, gamma, gamma].flat(),
  ];
  const head = new Uint8Array(144);
  for (const [at, text] of [
    [16, 'CMYK'],
    [20, pcs],
    [36, 'acsp'],
  ] as const) {
    head.set(
      [...text].map((sign) => sign.charCodeAt(0)),
      at,
    );
  }
  head.set([...word(1), 0x41, 0x32, 0x42, 0x31, ...word(144), ...word(tag.length)], 128);
  return Uint8Array.from([...head, ...tag]);
}

/** As `decodeInks` does it, which needs a browser for the rest. */
function storedInks(file: Uint8Array): number[][] {
  const image = new JpegImage();
  image.parse(file);
  const { width, height } = image;
  const data = image.getData({ width, height, isSourcePDF: true });
  const inverted = jpegInks(file)?.inverted ?? false;
  return Array.from({ length: width / 8 }, (_, block) =>
    [0, 1, 2, 3].map((ink) => {
      const stored = data[4 * (8 * block + 3) + ink] as number;
      return inverted ? 255 - stored : stored;
    }),
  );
}

describe('a JPEG of four inks', () => {
  const inks = [
    [255, 0, 0, 0],
    [0, 127, 255, 40],
  ] as const;
  const inverted = inks.map((block) => block.map((ink) => 255 - ink)) as unknown as Blocks;

  it.each<[string, Blocks, 0 | 2 | null]>([
    ['as they are, without a mark', inks, null],
    ['inverted, with one', inverted, 0],
    // White is luma in full; a middle chroma is none.
    [
      'as luma and chroma of inverted inks',
      [
        [0, 128, 128, 255],
        [255, 128, 128, 255],
      ],
      2,
    ],
  ])('is read %s', (_, blocks, transform) => {
    const file = inkJpeg(blocks, transform);
    expect(hasAllBlocks(file)).toBe(true);
    const found = storedInks(file);
    const wanted =
      transform === 2
        ? [
            [0, 0, 0, 0],
            [255, 255, 255, 0],
          ]
        : inks;
    for (const [block, ink] of wanted.entries()) {
      for (const [at, share] of ink.entries()) {
        expect(Math.abs((found[block]?.[at] ?? -9) - share), JSON.stringify(found)).toBeLessThanOrEqual(1);
      }
    }
  });

  it('tells its profile, or the one that is assumed', () => {
    expect(fileFacts(inkJpeg(inks, 0, bytes))).toMatchObject({ profile: 'uCMY', inks: 'held' });
    expect(fileFacts(inkJpeg(inks, 0))).toMatchObject({ profile: 'CGATS TR 001', inks: 'assumed' });
    expect(fileFacts(inkJpeg(inks, 0, bytes.subarray(0, 3000)))).toMatchObject({ inks: 'assumed' });
  });
});

describe('a profile of the newer kind', () => {
  it('is read by its curves and its table: closed form', () => {
    const look = readInks(newer('Lab '));
    if (!look) throw new Error('no profile');
    // Curves of gamma 2: a half is a quarter of the ink.
    const [l, a, b] = look([0, 0.5, 1, 0]);
    expect(l).toBeCloseTo(100 * (1 - 0.2 * 1.25), 2);
    expect(a).toBeCloseTo(25, 2);
    expect(b).toBeCloseTo(100, 2);
  });
});
