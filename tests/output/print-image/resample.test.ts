import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createResampler } from '../../../src/output/print-image';
import { orient } from '../../../src/output/print-image/orientation';
import { difference, type Picture, paint, quarter, scaled } from './reference';

function resampled(picture: Picture, width: number, height: number): Picture {
  const resampler = createResampler(picture, { width, height });
  const stride = 4 * picture.width;
  for (let row = 0; row < picture.height; row += 1) {
    resampler.push(new Uint8ClampedArray(picture.data.subarray(row * stride, (row + 1) * stride)));
  }
  return { width, height, data: new Uint8Array(resampler.finish().buffer) };
}

const pictures = fc
  .record({ width: fc.integer({ min: 1, max: 14 }), height: fc.integer({ min: 1, max: 14 }) })
  .chain(({ width, height }) =>
    fc
      .uint8Array({ minLength: 4 * width * height, maxLength: 4 * width * height })
      .map((data): Picture => ({ width, height, data })),
  );
const side = fc.integer({ min: 1, max: 40 });

describe('resampling', () => {
  it('is what its definition says, within the rounding of one level', () => {
    fc.assert(
      fc.property(pictures, side, side, (picture, width, height) => {
        if (picture.width === width && picture.height === height) return;
        const apart = difference(scaled(picture, width, height), resampled(picture, width, height));
        expect(apart.alpha).toBeLessThanOrEqual(1);
        expect(apart.opaque).toBeLessThanOrEqual(1);
        expect(apart.colour).toBeLessThanOrEqual(1.5);
      }),
    );
  });

  it('hands a picture of the wanted size on as it is, and clears what no one sees', () => {
    const picture = paint(3, 2, (x, y) => [10 * x, 20, 30, y === 0 ? 0 : 7]);
    const { data } = resampled(picture, 3, 2);
    expect([...data.subarray(0, 12)]).toEqual(new Array(12).fill(0));
    expect(data.subarray(12)).toEqual(picture.data.subarray(12));
  });

  it.each([
    [7, 5],
    [40, 90],
    [200, 11],
  ])('keeps an even colour even at %i x %i, whatever its alpha', (width, height) => {
    const picture = paint(31, 23, () => [201, 3, 77, 190]);
    const { data } = resampled(picture, width, height);
    for (let at = 0; at < data.length; at += 4)
      expect([...data.subarray(at, at + 4)]).toEqual([201, 3, 77, 190]);
  });

  it('leaves no ring of faint pixels outside of an edge', () => {
    const picture = paint(60, 60, (x) => (x < 30 ? [0, 0, 0, 255] : [0, 0, 0, 0]));
    const { data, width } = resampled(picture, 97, 97);
    const alphas = Array.from({ length: width }, (_, x) => data[4 * (48 * width + x) + 3] ?? 0);
    const edge = alphas.findIndex((alpha) => alpha < 255);
    expect(alphas.slice(0, edge - 4).every((alpha) => alpha === 255)).toBe(true);
    expect(alphas.slice(edge + 4).every((alpha) => alpha === 0)).toBe(true);
  });

  it('carries no colour of clear pixels into the edge', () => {
    const picture = paint(40, 40, (x) => (x < 20 ? [255, 0, 0, 255] : [0, 255, 0, 0]));
    const { data } = resampled(picture, 23, 23);
    for (let at = 0; at < data.length; at += 4) expect(data[at + 1]).toBe(0);
  });
});

describe('a picture as it lies', () => {
  const pixelsOf = ({ data }: Picture) => new Uint32Array(data.slice().buffer);
  const numbered = paint(3, 2, (x, y) => [x, y, 9, 255]);
  const at = (picture: Uint32Array, width: number, x: number, y: number) => {
    const [red, green] = new Uint8Array(picture.buffer, 4 * (y * width + x), 2);
    return [red, green];
  };
  const size = { width: 3, height: 2 };

  it('is turned by a quarter clockwise', () => {
    const turned = orient(pixelsOf(numbered), size, { quarters: 1, half: false, mirrored: false });
    expect(turned).toEqual(pixelsOf(quarter(numbered)));
    // Its upper left corner lies at the upper right.
    expect(at(turned, 2, 1, 0)).toEqual([0, 0]);
    expect(at(turned, 2, 0, 0)).toEqual([0, 1]);
  });

  it('is turned half round, or mirrored from side to side, turned or not', () => {
    const half = orient(pixelsOf(numbered), size, { quarters: 0, half: true, mirrored: false });
    expect(at(half, 3, 0, 0)).toEqual([2, 1]);
    const mirrored = orient(pixelsOf(numbered), size, { quarters: 0, half: false, mirrored: true });
    expect(at(mirrored, 3, 0, 0)).toEqual([2, 0]);
    const all = orient(pixelsOf(numbered), size, { quarters: 1, half: true, mirrored: true });
    // Turned: (0,0) upper right; half round: lower left; mirrored: lower right.
    expect(at(all, 2, 1, 2)).toEqual([0, 0]);
  });
});
