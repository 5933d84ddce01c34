import type { Curve } from './profiles';

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
export const PROPHOTO_TO_XYZ: Matrix = [
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
export const transposed = (matrix: Matrix): number[][] =>
  matrix.map((_, column) => matrix.map((row) => row[column] ?? 0));

export const SRGB_CURVE: Curve = { parameters: [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045] };
const toLinear = (byte: number) =>
  byte / 255 <= 0.04045 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4;

export interface Space {
  readonly curve: Curve;
  /** From linear to XYZ under D50, as a profile holds it. */
  readonly toXyz: Matrix;
  readonly linear: (byte: number) => number;
}

export const spaces: Record<string, Space> = {
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

/** The light of sRGB that a colour is, by the matrices that are published. */
export const published = ({ toXyz, linear }: Space, colour: readonly number[]): number[] => {
  const lights = colour.map(linear);
  return times(times(XYZ_TO_SRGB, D50_TO_D65), toXyz).map((row) =>
    row.reduce((sum, share, at) => sum + share * (lights[at] ?? 0), 0),
  );
};

export const encoded = (light: number): number =>
  light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
