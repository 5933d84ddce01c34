import { seededRandom } from '../../src/units';

/** How a camera sees a code on a screen. Angles are degrees; lengths are pixels of the frame. */
export interface Shot {
  readonly width: number;
  readonly height: number;
  /** What the code with its quiet zone takes of the frame's shorter side while it faces the camera. */
  readonly fill: number;
  /** How the screen is turned about its upright and its level axis, and the camera about its own. */
  readonly yaw: number;
  readonly pitch: number;
  readonly roll: number;
  /** Where the code's middle lies off the frame's, as shares of the frame's width and height. */
  readonly off: readonly [number, number];
  /** Standard deviation of the blur. */
  readonly blur: number;
  /** Standard deviation of the noise, in 256 levels. */
  readonly noise: number;
  /** The screen's white at the frame's left and right edge, where 1 is the brightest that the camera tells apart. */
  readonly light: readonly [number, number];
  /** What the room's light adds at the frame's left and right edge. */
  readonly glare: readonly [number, number];
}

/** A frame in which all goes well: the square that is read of a camera of 1280 by 720 pixels. */
export const STILL: Shot = {
  width: 720,
  height: 720,
  fill: 0.8,
  yaw: 0,
  pitch: 0,
  roll: 0,
  off: [0, 0],
  blur: 0.6,
  noise: 3,
  light: [0.85, 0.85],
  glare: [0.02, 0.02],
};

/** Levels of grey, a byte a pixel. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly luma: Uint8ClampedArray;
}

/**
 * The focal length as a share of the frame's shorter side. Across the longer side of a frame of 16 by 9 it is some 64 degrees, as phones have
 * (common practice, no source); a square frame is the middle of such a one.
 */
const FOCAL = 1.42;
/** Rays a pixel, each way. */
const RAYS = 2;
/** The dark glyphs of a screen are not quite black, and its page shows grey between code and edge. */
const SCREEN = { black: 0.01, page: 0.7, edge: 0.75, room: 0.05 } as const;

/** Shares of light that are told apart: far finer than the noise of any shot. */
const SHARES = 2 ** 16;
const sRgb = Float64Array.from({ length: SHARES + 1 }, (_, at) => {
  const linear = at / SHARES;
  return 255 * (linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055);
});

type Vector = readonly [number, number, number];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

const sin = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);
const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);

/** Axes of the screen in the camera's space: along its width, along its height, away from it. */
function axesOf({ yaw, pitch, roll }: Shot): [Vector, Vector, Vector] {
  const turned = ([x, y, z]: Vector): Vector => {
    const [y1, z1] = [y * cos(pitch) - z * sin(pitch), y * sin(pitch) + z * cos(pitch)];
    const [x2, z2] = [x * cos(yaw) + z1 * sin(yaw), z1 * cos(yaw) - x * sin(yaw)];
    return [x2 * cos(roll) - y1 * sin(roll), x2 * sin(roll) + y1 * cos(roll), z2];
  };
  return [turned([1, 0, 0]), turned([0, 1, 0]), turned([0, 0, 1])];
}

/**
 * Where a pixel lies on the screen, in sides of the code from its middle: u = (a x + b y + c) / (g x + h y + i) and v likewise, since a
 * plane seen through a pinhole is a homography.
 */
function projection(shot: Shot): { u: Vector; v: Vector; w: Vector } {
  const { width, height, fill, off } = shot;
  const shorter = Math.min(width, height);
  const focal = FOCAL * shorter;
  const away = FOCAL / fill;
  const [across, down, normal] = axesOf(shot);
  const centre: Vector = [(off[0] * width * away) / focal, (off[1] * height * away) / focal, away];
  const depth = dot(centre, normal);
  // A pixel's ray is (x - width / 2, y - height / 2, focal): a form over (x, y, 1) of its product with any axis.
  const form = ([a, b, c]: Vector): Vector => [a, b, c * focal - (a * width + b * height) / 2];
  const w = form(normal);
  const along = (axis: Vector): Vector => {
    const [a, b, c] = form(axis);
    const from = dot(centre, axis);
    return [a * depth - from * w[0], b * depth - from * w[1], c * depth - from * w[2]];
  };
  return { u: along(across), v: along(down), w };
}

/** What the sensor gets before its lens blurs it, in linear light. */
function exposed(modules: readonly (readonly boolean[])[], shot: Shot): Float32Array {
  const { width, height, light, glare } = shot;
  const { u, v, w } = projection(shot);
  const size = modules.length;
  const darkness = Uint8Array.from(modules.flatMap((row) => row.map(Number)));
  const screen = (x: number, y: number): number => {
    const far = w[0] * x + w[1] * y + w[2];
    const column = (u[0] * x + u[1] * y + u[2]) / far;
    const row = (v[0] * x + v[1] * y + v[2]) / far;
    if (Math.abs(column) > SCREEN.edge || Math.abs(row) > SCREEN.edge) return SCREEN.room;
    const [across, down] = [Math.floor((column + 0.5) * size), Math.floor((row + 0.5) * size)];
    if (across < 0 || down < 0 || across >= size || down >= size) return SCREEN.page;
    return darkness[down * size + across] === 1 ? SCREEN.black : 1;
  };
  const linear = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      let sum = 0;
      for (let ray = 0; ray < RAYS * RAYS; ray += 1) {
        sum += screen(x + ((ray % RAYS) + 0.5) / RAYS, y + (Math.floor(ray / RAYS) + 0.5) / RAYS);
      }
      const right = x / width;
      linear[y * width + x] =
        ((light[0] + (light[1] - light[0]) * right) * sum) / RAYS ** 2 +
        glare[0] +
        (glare[1] - glare[0]) * right;
    }
  }
  return linear;
}

/** Blurred by a Gaussian along rows, then turned over its diagonal: twice is the whole of it. */
function blurred(pixels: Float32Array, width: number, height: number, deviation: number): Float32Array {
  const reach = Math.ceil(3 * deviation);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, at) =>
    deviation > 0 ? Math.exp(-((at - reach) ** 2) / (2 * deviation ** 2)) : 1,
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const out = new Float32Array(pixels.length);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      let sum = 0;
      for (let k = -reach; k <= reach; k += 1) {
        const near = Math.min(width - 1, Math.max(0, x + k));
        sum += (weights[k + reach] ?? 0) * (pixels[y * width + near] ?? 0);
      }
      out[x * height + y] = sum / total;
    }
  }
  return out;
}

/**
 * A code as a camera sees it on a screen: a pinhole's perspective, uneven light, glare, blur, and noise in what is written (sRGB,
 * IEC 61966-2-1).
 * @param modules the code with its quiet zone, dark ones true
 * @param seed of the noise
 */
export function photograph(modules: readonly (readonly boolean[])[], shot: Shot, seed: number): Frame {
  const { width, height, blur, noise } = shot;
  const random = seededRandom(seed);
  const once = blurred(exposed(modules, shot), width, height, blur);
  const twice = blurred(once, height, width, blur);
  const luma = new Uint8ClampedArray(width * height);
  for (let at = 0; at < luma.length; at += 1) {
    // Box and Muller 1958.
    const normal = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    luma[at] = (sRgb[Math.round(SHARES * Math.min(1, twice[at] ?? 0))] ?? 0) + noise * normal;
  }
  return { width, height, luma };
}

/** A frame's levels as red, green and blue. */
export function pixelsOf({ width, height, luma }: Frame) {
  const data = new Uint8ClampedArray(4 * luma.length).fill(255);
  for (let at = 0; at < luma.length; at += 1) {
    const level = luma[at] ?? 0;
    for (let channel = 0; channel < 3; channel += 1) data[4 * at + channel] = level;
  }
  return { width, height, data };
}
