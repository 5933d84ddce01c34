import { describe, expect, it } from 'vitest';
import { clipFinder, readMatrixProfile } from '../../src/artwork/wide-gamut';
import { paint } from './pixels';
import { matrixProfile } from './profiles';
import { encoded, PROPHOTO_TO_XYZ, published, type Space, SRGB_CURVE, spaces, transposed } from './spaces';

const profileOf = ({ curve, toXyz }: Space) =>
  readMatrixProfile(matrixProfile('Wide', transposed(toXyz), curve)) ?? expect.fail('no profile');

/** Colours all over the cube, its corners among them. */
const colours = Array.from({ length: 9 ** 3 }, (_, at) =>
  [at % 9, Math.floor(at / 9) % 9, Math.floor(at / 81)].map((step) => Math.min(255, step * 32)),
);

describe('a profile of curves and a matrix', () => {
  it.each(Object.keys(spaces))('of %s gives the light of sRGB that CSS Color 4 has', (name) => {
    const space = spaces[name] ?? expect.fail(name);
    const { curves, toSrgb } = profileOf(space);
    for (const colour of colours) {
      const lights = curves.map((curve, channel) => curve[colour[channel] ?? 0] ?? 0);
      const own = toSrgb.map((row) => row.reduce((sum, share, at) => sum + share * (lights[at] ?? 0), 0));
      published(space, colour).forEach((light, channel) => {
        // A profile holds its numbers in 1/65,536.
        expect(Math.abs((own[channel] ?? Number.NaN) - light)).toBeLessThan(2e-4);
      });
    }
  });

  it.each([
    ['of another space', (icc: Uint8Array) => icc.set([0x43, 0x4d, 0x59, 0x4b], 16)],
    ['with a table', (icc: Uint8Array) => icc.set([0x41, 0x32, 0x42, 0x30], 132)],
    ['without a primary', (icc: Uint8Array) => icc.set([0, 0, 0, 0], 132 + 12)],
    ['with a curve of no kind', (icc: Uint8Array) => icc.fill(0, 132 + 12 * 7 + 60)],
  ])('%s is none', (_, damage) => {
    const icc = matrixProfile('Wide', transposed(PROPHOTO_TO_XYZ), SRGB_CURVE);
    damage(icc);
    expect(readMatrixProfile(icc)).toBeNull();
  });

  it('is none however it is cut off', () => {
    const icc = matrixProfile('Wide', transposed(PROPHOTO_TO_XYZ), SRGB_CURVE);
    for (let length = 0; length < icc.length - 3; length += 1) {
      expect(readMatrixProfile(icc.slice(0, length))).toBeNull();
    }
  });
});

describe('what sRGB does not hold', () => {
  it.each(Object.keys(spaces))(
    'of %s is what the published matrices put out of it, with its share and places',
    (name) => {
      const space = spaces[name] ?? expect.fail(name);
      const side = 27;
      const rgba = paint(side, side, (x, y) => {
        const colour = colours[Math.floor(y) * side + Math.floor(x)] ?? [0, 0, 0];
        return [colour[0] ?? 0, colour[1] ?? 0, colour[2] ?? 0, 255];
      });
      const finder = clipFinder({ width: side, height: side }, profileOf(space));
      for (let top = 0; top < side; top += 10) {
        const rows = Math.min(10, side - top);
        finder.add(rgba.slice(4 * side * top, 4 * side * (top + rows)), top, rows);
      }
      const { share, where } = finder.find();
      /** Levels of 255 that the worst channel lies out. */
      const out = colours.map(
        (colour) =>
          255 *
          Math.max(
            ...published(space, colour)
              .map(encoded)
              .map((value) => Math.max(-value, value - 1)),
          ),
      );
      const marked = new Set<number>();
      for (let pair = 0; pair < where.runs.length; pair += 2) {
        for (let at = where.runs[pair] ?? 0; at < (where.runs[pair + 1] ?? 0); at += 1) marked.add(at);
      }
      // Half a level is left to the profile's own rounding.
      out.forEach((levels, at) => {
        if (levels > 4.5) expect(marked.has(at)).toBe(true);
        if (levels < 3.5) expect(marked.has(at)).toBe(false);
      });
      expect(share).toBeCloseTo(marked.size / colours.length, 9);
      expect(share > 0).toBe(name !== 'sRGB by another name');
    },
  );

  it('is none of what does not print', () => {
    const { add, find } = clipFinder(
      { width: 2, height: 1 },
      profileOf(spaces['a space of 1.8'] ?? expect.fail('')),
    );
    add(Uint8ClampedArray.of(0, 255, 0, 7, 255, 255, 255, 255), 0, 1);
    expect(find()).toEqual({ share: 0, where: { width: 2, height: 1, runs: [] } });
  });
});
