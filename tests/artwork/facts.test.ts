import { deflateSync } from 'node:zlib';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { fileFacts, isWholeJpeg, isWholePng, isWholeWebp, readJpegHeader } from '../../src/artwork';
import { jpegBytes, pngWith } from './files';

const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
const uint32 = (value: number) => [value >>> 24, (value >> 16) & 0xff, (value >> 8) & 0xff, value & 0xff];

/** An ICC profile with nothing but its header and a description (ICC.1:2022, 7.2 and 9.2.41). */
function profile(name: string, space = 'RGB ', version: 'desc' | 'mluc' = 'desc'): number[] {
  const text =
    version === 'desc'
      ? [...ascii('desc'), 0, 0, 0, 0, ...uint32(name.length + 1), ...ascii(name), 0]
      : [
          ...ascii('mluc'),
          ...[0, 0, 0, 0],
          ...uint32(1),
          ...uint32(12),
          ...ascii('enUS'),
          ...uint32(2 * name.length),
          ...uint32(28),
          ...[...name].flatMap((letter) => [0, letter.charCodeAt(0)]),
        ];
  const header = new Array<number>(128).fill(0);
  header.splice(16, 4, ...ascii(space));
  header.splice(36, 4, ...ascii('acsp'));
  return [...header, ...uint32(1), ...ascii('desc'), ...uint32(144), ...uint32(text.length), ...text];
}

const iccp = (icc: readonly number[], name = 'icc') => ({
  type: 'iCCP',
  data: [...ascii(name), 0, 0, ...deflateSync(Uint8Array.from(icc))],
});

const plain = {
  profile: null,
  gamma: null,
  animated: false,
  deep: false,
  outside: 0,
  fonts: [],
  embedded: null,
  aspect: 1,
};

describe('what a PNG says of its colours', () => {
  it.each([
    ['nothing', [], plain],
    ['sRGB', [{ type: 'sRGB', data: [0] }], plain],
    ['a profile that is sRGB', [iccp(profile('sRGB IEC61966-2.1'))], plain],
    ['another profile', [iccp(profile('Wide Gamut RGB'))], { ...plain, profile: 'Wide Gamut RGB' }],
    [
      'one of the newer kind',
      [iccp(profile('Display RGB', 'RGB ', 'mluc'))],
      { ...plain, profile: 'Display RGB' },
    ],
    ['one that cannot be read', [iccp([1, 2, 3], 'Shop monitor')], { ...plain, profile: 'Shop monitor' }],
    ['the gamma of sRGB', [{ type: 'gAMA', data: uint32(45_455) }], plain],
    ['another gamma', [{ type: 'gAMA', data: uint32(100_000) }], { ...plain, gamma: 1 }],
    [
      'another gamma, but sRGB too',
      [
        { type: 'gAMA', data: uint32(100_000) },
        { type: 'sRGB', data: [0] },
      ],
      plain,
    ],
    ['an animation', [{ type: 'acTL', data: [...uint32(3), ...uint32(0)] }], { ...plain, animated: true }],
  ])('%s', (_, chunks, facts) => {
    expect(fileFacts(pngWith(chunks))).toEqual(facts);
  });

  it('more than eight bits a channel', () => {
    const deep = PNG.sync.write(new PNG({ width: 2, height: 2, bitDepth: 16 }), { bitDepth: 16 });
    expect(fileFacts(new Uint8Array(deep))).toMatchObject({ deep: true });
  });
});

describe('what a JPEG says', () => {
  it('its profile, put together from its parts in any order', () => {
    const icc = profile('Press RGB');
    const part = (number: number, data: readonly number[]) => ({
      marker: 0xe2,
      data: [...ascii('ICC_PROFILE\0'), number, 2, ...data],
    });
    const bytes = jpegBytes([part(2, icc.slice(100)), part(1, icc.slice(0, 100))]);
    expect(fileFacts(bytes)).toEqual({ ...plain, profile: 'Press RGB' });
  });

  /** Exif 2.32, 4.6.4: orientation, and 600 x 300 dots an inch. */
  const exif = (orientation: number, little: boolean) => {
    const two = (value: number) => (little ? [value & 0xff, value >> 8] : [value >> 8, value & 0xff]);
    const four = (value: number) => (little ? uint32(value).reverse() : uint32(value));
    const entries = [
      [...two(0x0112), ...two(3), ...four(1), ...two(orientation), 0, 0],
      [...two(0x011a), ...two(5), ...four(1), ...four(62)],
      [...two(0x011b), ...two(5), ...four(1), ...four(70)],
      [...two(0x0128), ...two(3), ...four(1), ...two(2), 0, 0],
    ];
    return {
      marker: 0xe1,
      data: [
        ...ascii('Exif\0\0'),
        ...ascii(little ? 'II' : 'MM'),
        ...two(42),
        ...four(8),
        ...two(entries.length),
        ...entries.flat(),
        ...four(0),
        ...four(600),
        ...four(1),
        ...four(300),
        ...four(1),
      ],
    };
  };

  it.each([
    [1, 600, 400],
    [3, 600, 400],
    [5, 400, 600],
    [6, 400, 600],
    [8, 400, 600],
  ])('that it is turned: orientation %i is %i x %i', (orientation, width, height) => {
    for (const little of [true, false]) {
      const read = readJpegHeader(jpegBytes([exif(orientation, little)]));
      expect(read).toMatchObject({ ok: true, value: { width, height } });
      const density = read.ok ? read.value.density : null;
      // The denser axis turns with the image.
      expect(density && density.x > density.y).toBe(orientation < 5);
    }
  });
});

describe('a file that is cut off', () => {
  it('is a PNG without its end', () => {
    const whole = pngWith([]);
    expect(isWholePng(whole)).toBe(true);
    for (const length of [whole.length - 12, whole.length - 20, 45]) {
      expect(isWholePng(whole.subarray(0, length))).toBe(false);
    }
  });

  it('is a JPEG without its end', () => {
    const whole = Uint8Array.from([...jpegBytes([]), 0xff, 0xda, 0, 2, 1, 2, 3, 0xff, 0xd9]);
    expect(isWholeJpeg(whole)).toBe(true);
    expect(isWholeJpeg(Uint8Array.from([...whole, 0, 0, 0]))).toBe(true);
    expect(isWholeJpeg(whole.subarray(0, whole.length - 2))).toBe(false);
  });
});

describe('a WebP that is cut off', () => {
  it('is shorter than it says', () => {
    const whole = Uint8Array.from([
      ...ascii('RIFF'),
      22,
      0,
      0,
      0,
      ...ascii('WEBP'),
      ...new Array<number>(18).fill(0),
    ]);
    expect(isWholeWebp(whole)).toBe(true);
    expect(isWholeWebp(whole.subarray(0, 29))).toBe(false);
  });
});

describe('an SVG', () => {
  const svg = (inner: string) =>
    fileFacts(new TextEncoder().encode(`<svg viewBox="0 0 9 9">${inner}</svg>`)).outside;

  it.each([
    ['<path d="M0 0h9v9z"/>', 0],
    ['<use href="#star"/><image href="data:image/png;base64,AAAA"/>', 0],
    ['<a href="https://example.org"><path d="M0 0"/></a>', 0],
    ['<script>alert(1)</script>', 1],
    ['<rect onclick="go()" width="1"/>', 1],
    ['<image xlink:href="photo.png"/>', 1],
    ["<image href='https://example.org/a.png'/>", 1],
    ['<style>@import "a.css"; .b { fill: url("https://example.org/c.svg#d") }</style>', 2],
    ['<!-- <script></script> -->', 0],
  ])('%s', (inner, count) => {
    expect(svg(inner)).toBe(count);
  });
});

describe('the fonts that an SVG needs', () => {
  const fonts = (inner: string) =>
    fileFacts(new TextEncoder().encode(`<svg viewBox="0 0 9 9">${inner}</svg>`)).fonts;

  it.each([
    ['<text font-family="Quillon, serif">Zq</text>', ['Quillon']],
    ['<text style="font-size: 4px; font-family: \'Quillon Sans\', serif">Zq</text>', ['Quillon Sans']],
    ['<text style="font: italic bold 4px/1.2 Quillon, serif">Zq</text>', ['Quillon']],
    ['<style>.a { fill: red; font-family: Quillon }</style><text class="a">Zq</text>', ['Quillon']],
    ['<g font-family="Quillon"><text><tspan>Zq</tspan></text></g>', ['Quillon']],
    ['<text font-family="serif">Zq</text>', []],
    ['<text font-family="Quillon"> </text>', []],
    ['<path font-family="Quillon" d="M0 0h9v9z"/>', []],
    [
      '<style>@font-face { font-family: Quillon; src: url(data:font/woff2;base64,AA) }</style><text font-family="Quillon">Zq</text>',
      [],
    ],
    [
      '<style>@font-face { font-family: Quillon; src: url(q.woff2) }</style><text font-family="Quillon">Zq</text>',
      ['Quillon'],
    ],
    ['<style>.a { font-family: Quillon }</style><text class="b">Zq</text>', []],
    ['<style>.a { font-family: Quillon }</style><g class="a"><text>Zq</text></g>', ['Quillon']],
    ['<style>text { font-family: Quillon } .b { font: 9px serif }</style><text class="b">Zq</text>', []],
    ['<style>text { font: italic 9px/1.2 "Quillon Bold", serif }</style><text>Zq</text>', ['Quillon Bold']],
    ['<style>g > .a { font-family: Quillon }</style><g><text class="b a">Zq</text></g>', ['Quillon']],
    ['<style>g > .a { font-family: Quillon }</style><g><a><text class="a">Zq</text></a></g>', []],
    ['<style>g .a { font-family: Quillon }</style><g><a><text class="a">Zq</text></a></g>', ['Quillon']],
    [
      '<style>/* text { font-family: Old } */ @media screen { #t { font-family: Quillon } }</style><text id="t">Zq</text>',
      ['Quillon'],
    ],
    [
      '<style>.a { font-family: Quillon !important }</style><text class="a" style="font-family: Marrow">Zq</text>',
      ['Quillon'],
    ],
    [
      '<style>.a { font-family: Quillon }</style><text class="a" style="font-family: Marrow">Zq</text>',
      ['Marrow'],
    ],
    ['<style>.a { font-family: Quillon }</style><text class="a" font-family="Marrow">Zq</text>', ['Quillon']],
    [
      '<style><![CDATA[.a{font-family:Quillon}]]></style><text class="a"><tspan>Zq</tspan></text>',
      ['Quillon'],
    ],
    ['<text font-family="Quillon"></text><text>Zq</text>', []],
  ])('%s', (inner, names) => expect(fonts(inner)).toEqual(names));
});

describe('the style sheets of an SVG', () => {
  it('take no longer the deeper it is and the longer their selectors are', () => {
    const deep = `${'<g>'.repeat(200)}<text>Zq</text>${'</g>'.repeat(200)}`;
    const rules = Array.from({ length: 300 }, () => `${'g '.repeat(40)}b text { font-family: Quillon }`);
    const svg = `<svg viewBox="0 0 9 9"><style>${rules.join('')}</style>${deep}</svg>`;
    const started = performance.now();
    expect(fileFacts(new TextEncoder().encode(svg)).fonts).toEqual([]);
    expect(performance.now() - started).toBeLessThan(5_000);
  });
});

describe('the coarsest image in an SVG', () => {
  const png = PNG.sync.write(new PNG({ width: 40, height: 20 })).toString('base64');
  const image = (rest: string) => `<image href="data:image/png;base64,${png}" ${rest}/>`;
  const embedded = (inner: string, size = 'viewBox="0 0 100 50"') =>
    fileFacts(new TextEncoder().encode(`<svg ${size}>${inner}</svg>`)).embedded;

  // 40 pixels on 20 units are 200 on the 100 of the drawing.
  it.each([
    [image('width="20" height="10"'), 200],
    [`<g transform="scale(2)">${image('width="20" height="10" transform="rotate(30)"')}</g>`, 100],
    [`<g transform="translate(3 4) matrix(0 2 -2 0 5 5)">${image('width="20" height="10"')}</g>`, 100],
    // Fitted into its box: 20 units high for 20 pixels; or stretched over all of it.
    [image('width="80" height="20"'), 100],
    [image('width="80" height="20" preserveAspectRatio="none"'), 50],
    [image('width="20" height="10"') + image('width="50" height="25"'), 80],
    [image(''), 100],
    // By styles and style sheets as by attributes (SVG 2, 7.2 and 8.7).
    [`<style>.p { width: 20px; height: 10px }</style>${image('class="p" width="80" height="20"')}`, 200],
    [image('style="width: 20px; height: 10px" width="80" height="20"'), 200],
    [`<style>.s { transform: scale(2) }</style><g class="s">${image('width="20" height="10"')}</g>`, 100],
    ['<path d="M0 0"/>', null],
    ['<image href="photo.png" width="20" height="10"/>', null],
    ['<image href="data:image/png;base64,AAAA" width="20" height="10"/>', null],
  ])('%#', (inner, across) => {
    if (across === null) expect(embedded(inner)).toBeNull();
    else expect(embedded(inner)).toBeCloseTo(across, 6);
  });

  it('counts across all of the drawing, whatever its size and box', () => {
    expect(embedded(image('width="20" height="10"'), 'width="80mm" viewBox="0 0 100 50"')).toBeCloseTo(
      200,
      6,
    );
    // A box of 100 x 100 in 80 x 40 mm stands in the middle: the drawing is 200 units across.
    const fitted = 'width="80mm" height="40mm" viewBox="0 0 100 100"';
    expect(embedded(image('width="20" height="10"'), fitted)).toBeCloseTo(400, 6);
  });
});
