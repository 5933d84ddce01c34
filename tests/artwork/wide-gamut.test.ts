import { describe, expect, it } from 'vitest';
import { clipFinder, readMatrixProfile } from '../../src/artwork/wide-gamut';
import { paint } from './pixels';
import { type Curve, matrixProfile } from './profiles';

type Matrix = readonly (readonly number[])[];

/** CSS Color Module Level 4, 18, sample code: linear RGB to XYZ, under D65 where nothing else is said. */
const P3_TO_XYZ: Matrix = [
  [608311 / 1250200, 189793 / 714400, 198249 / 1000160],
  [35783 / 156275, 247089 / 357200, 198249 / 2500400],
  [0 / 1, 32229 / 714400, 5220557 / 5000800],
];
const A98_TO_XYZ: Matrix = [
  [573536 / 994567, 263643 / 1420810, 187206 / 994567],
  [591459 / 1989134, 6239551 / 9945670, 374412 / 4972835],
  [53769 / 1989134, 351524 / 4972835, 4929758 / 4972835],
];
const SRGB_TO_XYZ: Matrix = [
  [506752 / 1228815, 87881 / 245763, 12673 / 70218],
  [87098 / 409605, 175762 / 245763, 12673 / 175545],
  [7918 / 409605, 87881 / 737289, 1001167 / 1053270],
];
const XYZ_TO_SRGB: Matrix = [
  [12831 / 3959, -329 / 214, -1974 / 3959],
  [-851781 / 878810, 1648619 / 878810, 36519 / 878810],
  [705 / 12673, -2585 / 12673, 705 / 667],
];
/** Under D50. */
const PROPHOTO_TO_XYZ: Matrix = [
  [0.7977666449006423, 0.13518129740053308, 0.0313477341283922],
  [0.2880748288194013, 0.711835234241873, 0.00008993693872564],
  [0, 0, 0.8251046025104602],
];
const D65_TO_D50: Matrix = [
  [1.0479297925449969, 0.022946870601609652, -0.05019226628920524],
  [0.02962780877005599, 0.9904344267538799, -0.017073799063418826],
  [-0.009243040646204504, 0.015055191490298152, 0.7518742814281371],
];
const D50_TO_D65: Matrix = [
  [0.955473421488075, -0.02309845494876471, 0.06325924320057072],
  [-0.0283697093338637, 1.0099953980813041, 0.021041441191917323],
  [0.012314014864481998, -0.020507649298898964, 1.330365926242124],
];

const times = (a: Matrix, b: Matrix): number[][] =>
  a.map((row) =>
    row.map((_, column) => row.reduce((sum, value, at) => sum + value * (b[at]?.[column] ?? 0), 0)),
  );
const transposed = (matrix: Matrix): number[][] =>
  matrix.map((_, column) => matrix.map((row) => row[column] ?? 0));

const SRGB_CURVE: Curve = { parameters: [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045] };
const toLinear = (byte: number) =>
  byte / 255 <= 0.04045 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4;

interface Space {
  readonly curve: Curve;
  /** From linear to XYZ under D50, as a profile holds it. */
  readonly toXyz: Matrix;
  readonly linear: (byte: number) => number;
}

const spaces: Record<string, Space> = {
  'sRGB by another name': { curve: SRGB_CURVE, toXyz: times(D65_TO_D50, SRGB_TO_XYZ), linear: toLinear },
  'a P3 with the curve of sRGB': {
    curve: SRGB_CURVE,
    toXyz: times(D65_TO_D50, P3_TO_XYZ),
    linear: toLinear,
  },
  'a space of 563/256': {
    curve: { gamma: 563 / 256 },
    toXyz: times(D65_TO_D50, A98_TO_XYZ),
    linear: (byte) => (byte / 255) ** (563 / 256),
  },
  'a space of 1.8': {
    curve: { table: Array.from({ length: 1024 }, (_, at) => Math.round(65_535 * (at / 1023) ** 1.8)) },
    toXyz: PROPHOTO_TO_XYZ,
    linear: (byte) => (byte / 255) ** 1.8,
  },
};

const profileOf = ({ curve, toXyz }: Space) =>
  readMatrixProfile(matrixProfile('Wide', transposed(toXyz), curve)) ?? expect.fail('no profile');

/** The light of sRGB that a colour is, by the matrices that are published. */
const published = ({ toXyz, linear }: Space, colour: readonly number[]): number[] => {
  const lights = colour.map(linear);
  return times(times(XYZ_TO_SRGB, D50_TO_D65), toXyz).map((row) =>
    row.reduce((sum, share, at) => sum + share * (lights[at] ?? 0), 0),
  );
};

const encoded = (light: number): number =>
  light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;

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
