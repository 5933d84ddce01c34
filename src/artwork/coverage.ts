import { type Micrometres, toMm } from '../units';

/** Sums over an image's pixels that tell how much ink a copy takes; all are counted in pixels. */
export interface InkSums {
  /** Pixels that bear ink: alpha of at least 8 in 255. */
  bearing: number;
  /** White under everything that prints, as dense as alpha says. */
  white: number;
  /** Colour on top: white artwork needs none, full tones and black need all. */
  colour: number;
  /** Opaque pixels that are nearly black. */
  black: number;
}

/** Ink on one copy, in square millimetres. */
export interface Coverage {
  readonly bearing: number;
  readonly white: number;
  readonly colour: number;
}

const LEAST = 8;
const OPAQUE = 128;
/** The strongest channel of what counts as black. */
const BLACK = 40;

export const noInk = (): InkSums => ({ bearing: 0, white: 0, colour: 0, black: 0 });

/**
 * Adds pixels to the sums. Colour is `alpha x (1 - min(r, g, b))`, the share of the strongest of three inks: a model of
 * our own, to be calibrated by what a shop really uses. Artwork is mostly flat: a run of equal pixels is added at once.
 * @param rgba four bytes a pixel, straight alpha
 */
export function addInk(sums: InkSums, rgba: Uint8ClampedArray): void {
  const pixels = new Int32Array(rgba.buffer, rgba.byteOffset, rgba.length / 4);
  let [bearing, white, colour, black] = [0, 0, 0, 0];
  for (let at = 0, next = 0; at < pixels.length; at = next) {
    const pixel = pixels[at];
    do next += 1;
    while (next < pixels.length && pixels[next] === pixel);
    const alpha = rgba[4 * at + 3] as number;
    if (alpha === 0) continue;
    const [r, g, b] = [rgba[4 * at] as number, rgba[4 * at + 1] as number, rgba[4 * at + 2] as number];
    const count = next - at;
    if (alpha >= LEAST) bearing += count;
    white += count * alpha;
    colour += count * alpha * (255 - Math.min(r, g, b));
    if (alpha >= OPAQUE && r <= BLACK && g <= BLACK && b <= BLACK) black += count;
  }
  sums.bearing += bearing;
  sums.white += white / 255;
  sums.colour += colour / (255 * 255);
  sums.black += black;
}

/** What sums over a box of pixels are on film, at the size that box is printed in. */
export function coverageOf(
  sums: InkSums,
  pixels: { readonly width: number; readonly height: number },
  printed: { readonly width: Micrometres; readonly height: Micrometres },
): Coverage {
  const pixel = (toMm(printed.width) * toMm(printed.height)) / (pixels.width * pixels.height);
  return { bearing: sums.bearing * pixel, white: sums.white * pixel, colour: sums.colour * pixel };
}

/** What a copy takes before a mend and after it. */
export interface InkChange {
  readonly before: Coverage;
  readonly after: Coverage;
}
