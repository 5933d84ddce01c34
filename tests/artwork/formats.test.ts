import { describe, expect, it } from 'vitest';
import { isJpeg, isWebp, jpegInks, readJpegHeader, readSvgHeader, readWebpHeader } from '../../src/artwork';

const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
const uint16 = (value: number) => [value >> 8, value & 0xff];

/** A JPEG up to its frame header, by ISO/IEC 10918-1 B.2.2 and ISO/IEC 10918-5 (JFIF) 6.1. */
const jpeg = ({ units = 1, density = 300, down = null as number | null, components = 3 } = {}) =>
  Uint8Array.from([
    ...[0xff, 0xd8],
    ...[
      0xff,
      0xe0,
      ...uint16(16),
      ...ascii('JFIF\0'),
      1,
      2,
      units,
      ...uint16(density),
      ...uint16(down ?? density),
      0,
      0,
    ],
    ...[0xff, 0xfe, ...uint16(6), ...ascii('note')],
    ...[0xff, 0xc2, ...uint16(8 + 3 * components), 8, ...uint16(400), ...uint16(600), components],
    ...new Array<number>(3 * components).fill(0),
  ]);

describe('a JPEG', () => {
  it('tells its size, and its density by JFIF in dots an inch', () => {
    const read = readJpegHeader(jpeg());
    expect(read).toMatchObject({ ok: true, value: { width: 600, height: 400 } });
    // 300 dots an inch are 11811 a metre.
    expect(read.ok && read.value.density?.x).toBeCloseTo(11_811.02, 2);
  });

  it('tells it in dots a centimetre, or only proportions', () => {
    expect(readJpegHeader(jpeg({ units: 2, density: 118 }))).toMatchObject({
      ok: true,
      value: { density: { x: 11_800 } },
    });
    expect(readJpegHeader(jpeg({ units: 0, density: 1 }))).toMatchObject({
      ok: true,
      value: { density: null, aspect: 1 },
    });
    expect(readJpegHeader(jpeg({ units: 0, density: 2, down: 1 }))).toMatchObject({
      ok: true,
      value: { density: null, aspect: 2 },
    });
  });

  it('in four inks is named, and one cut off is', () => {
    expect(jpegInks(jpeg({ components: 4 }))).toEqual({ inverted: false, orientation: 1, icc: null });
    expect(jpegInks(jpeg())).toBeNull();
    expect(readJpegHeader(jpeg().slice(0, 30))).toEqual({ ok: false, problem: 'broken' });
    expect(isJpeg(jpeg())).toBe(true);
    expect(isJpeg(Uint8Array.from(ascii('PNG')))).toBe(false);
  });
});

/** A WebP header of one chunk (RFC 9649, section 2.4). */
const webp = (chunk: string, payload: readonly number[]) =>
  Uint8Array.from([
    ...ascii('RIFF'),
    0,
    0,
    0,
    0,
    ...ascii('WEBP'),
    ...ascii(chunk),
    0,
    0,
    0,
    0,
    ...payload,
    ...new Array<number>(16).fill(0),
  ]);

describe('a WebP', () => {
  it.each([
    ['extended', webp('VP8X', [0x10, 0, 0, 0, ...[0x57, 0x02, 0], ...[0x8f, 0x01, 0]])],
    ['lossless', webp('VP8L', [0x2f, ...[0x57, 0xc2, 0x63, 0x00]])],
    ['lossy', webp('VP8 ', [0, 0, 0, 0x9d, 0x01, 0x2a, ...[0x58, 0x02], ...[0x90, 0x01]])],
  ])('%s tells its size', (_, bytes) => {
    expect(isWebp(bytes)).toBe(true);
    expect(readWebpHeader(bytes)).toEqual({
      ok: true,
      value: { width: 600, height: 400, density: null, aspect: 1 },
    });
  });

  // Exif 2.32, 4.6.4: resolutions of 300 and 150 an inch, as rationals behind the directory; RFC 9649, section 2.7.
  it.each([
    ['from the TIFF header on', []],
    ['behind the mark of JPEG', ascii('Exif\0\0')],
  ])('tells its density by Exif %s', (_, mark) => {
    const entry = (tag: number, type: number, value: number) => [
      ...[tag & 0xff, tag >> 8, type, 0, 1, 0, 0, 0],
      ...[value, 0, 0, 0],
    ];
    const rational = (value: number) => [value & 0xff, value >> 8, 0, 0, 1, 0, 0, 0];
    const tiff = [
      ...ascii('II*\0'),
      ...[8, 0, 0, 0, 3, 0],
      ...[...entry(0x011a, 5, 50), ...entry(0x011b, 5, 58), ...entry(0x0128, 3, 2), 0, 0, 0, 0],
      ...[...rational(300), ...rational(150)],
    ];
    const exif = [...mark, ...tiff];
    const chunk = (kind: string, data: readonly number[]) => [
      ...ascii(kind),
      ...[data.length, 0, 0, 0],
      ...data,
      ...(data.length % 2 === 1 ? [0] : []),
    ];
    const bytes = Uint8Array.from([
      ...[...ascii('RIFF'), 0, 0, 0, 0, ...ascii('WEBP')],
      ...chunk('VP8X', [0x08, 0, 0, 0, ...[0x57, 0x02, 0], ...[0x8f, 0x01, 0]]),
      ...chunk('VP8 ', [1, 2, 3]),
      ...chunk('EXIF', exif),
    ]);
    const read = readWebpHeader(bytes);
    expect(read).toMatchObject({ ok: true, value: { width: 600, height: 400, aspect: 2 } });
    // 300 an inch are 11811 a metre.
    expect(read.ok && read.value.density?.x).toBeCloseTo(11_811.02, 2);
  });

  it('of no known kind is broken', () => {
    expect(readWebpHeader(webp('ABCD', []))).toEqual({ ok: false, problem: 'broken' });
  });
});

describe('an SVG', () => {
  it.each([
    ['<svg width="50mm" height="2.5cm" viewBox="0 0 100 50">', { width: 0.05, height: 0.025 }],
    [
      '<?xml version="1.0"?>\n<svg xmlns="x"\n width=\'2in\' height=\'72pt\'>',
      { width: 0.0508, height: 0.0254 },
    ],
    ['<svg width="96px" height="96px">', { width: 0.0254, height: 0.0254 }],
    // A number alone is of px (SVG 2, 8.9); one side follows from the other; a style goes before attributes (6.6).
    ['<svg width="192" height="96">', { width: 0.0508, height: 0.0254 }],
    ['<svg width="50mm" viewBox="0 0 100 40">', { width: 0.05, height: 0.02 }],
    ['<svg height="20mm" width="auto" viewBox="0 0 100 40">', { width: 0.05, height: 0.02 }],
    [
      '<svg style="fill: red; width: 30mm; height:15mm" width="9" height="9">',
      { width: 0.03, height: 0.015 },
    ],
    [
      '<svg style="max-width: 100%; width: 30mm !important" viewBox="0 0 2 1">',
      { width: 0.03, height: 0.015 },
    ],
    [
      '<!-- <svg width="9mm" height="9mm"> --><!DOCTYPE svg [<!ENTITY a "<svg width=\'7mm\'>">]><svg width="20mm" height="10mm">',
      { width: 0.02, height: 0.01 },
    ],
  ])('tells its size in metres: %s', (text, metres) => {
    const read = readSvgHeader(text);
    if (!read.ok || !read.value.metres) throw new Error('no size');
    expect(read.value.metres.width).toBeCloseTo(metres.width, 6);
    expect(read.value.metres.height).toBeCloseTo(metres.height, 6);
  });

  it('without a unit has proportions only', () => {
    expect(readSvgHeader('<svg viewBox="0 0 300 100">')).toEqual({
      ok: true,
      value: { width: 300, height: 100, metres: null, units: 1 },
    });
    expect(readSvgHeader('<svg width="100%" height="100%" viewBox="0,0,30,10">')).toMatchObject({
      ok: true,
      value: { metres: null },
    });
  });

  it('that is none, or has no size, is refused', () => {
    expect(readSvgHeader('<html></html>')).toEqual({ ok: false, problem: 'not-image' });
    expect(readSvgHeader('<svg>')).toEqual({ ok: false, problem: 'no-size' });
    expect(readSvgHeader('<svg width="20mm">')).toEqual({ ok: false, problem: 'no-size' });
  });

  it('in a unit of a font or of a window has proportions only', () => {
    for (const size of ['width="10em"', 'style="width: 50vw"', 'width="calc(1in + 2mm)"'])
      expect(readSvgHeader(`<svg ${size} viewBox="0 0 30 10">`)).toMatchObject({
        ok: true,
        value: { width: 30, height: 10, metres: null },
      });
  });

  it('is as wide as its size says where its box has other proportions', () => {
    // The box of 100 x 100 is fitted into 40 x 20 mm: 5 units on a millimetre.
    const read = readSvgHeader('<svg width="40mm" height="20mm" viewBox="0 0 100 100">');
    if (!read.ok) throw new Error('no size');
    expect(read.value.width / read.value.height).toBeCloseTo(2, 9);
    expect((read.value.width * read.value.units) / 40).toBeCloseTo(5, 9);
  });
});
