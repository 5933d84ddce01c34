import { describe, expect, it } from 'vitest';
import { isJpeg, isWebp, readJpegHeader, readSvgHeader, readWebpHeader } from '../../src/artwork';

const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
const uint16 = (value: number) => [value >> 8, value & 0xff];

/** A JPEG up to its frame header, by ISO/IEC 10918-1 B.2.2 and ISO/IEC 10918-5 (JFIF) 6.1. */
const jpeg = ({ units = 1, density = 300, components = 3 } = {}) =>
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
      ...uint16(density),
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
      value: { density: null },
    });
  });

  it('in four inks is named, and one cut off is', () => {
    expect(readJpegHeader(jpeg({ components: 4 }))).toEqual({ ok: false, problem: 'cmyk' });
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
    expect(readWebpHeader(bytes)).toEqual({ ok: true, value: { width: 600, height: 400, density: null } });
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
  ])('tells its size in metres: %s', (text, metres) => {
    const read = readSvgHeader(text);
    if (!read.ok || !read.value.metres) throw new Error('no size');
    expect(read.value.metres.width).toBeCloseTo(metres.width, 6);
    expect(read.value.metres.height).toBeCloseTo(metres.height, 6);
  });

  it('without a unit has proportions only', () => {
    expect(readSvgHeader('<svg viewBox="0 0 300 100">')).toEqual({
      ok: true,
      value: { width: 300, height: 100, metres: null },
    });
    expect(readSvgHeader('<svg width="100%" height="100%" viewBox="0,0,30,10">')).toMatchObject({
      ok: true,
      value: { metres: null },
    });
  });

  it('that is none, or has no size, is refused', () => {
    expect(readSvgHeader('<html></html>')).toEqual({ ok: false, problem: 'not-image' });
    expect(readSvgHeader('<svg>')).toEqual({ ok: false, problem: 'no-size' });
  });
});
