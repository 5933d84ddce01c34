import { decode, type TiffIfd } from 'tiff';
import { fail, fromUnit, ok, type Result } from '../../../units';
import { MOST_PIXELS, WIDEST } from '../../most-pixels';
import { eightBits, type Flat, type FlatProblem } from './flat';

/** PhotometricInterpretation (TIFF 6.0, section 8): 0 and 1 are greys, 2 is RGB, 3 a table of colours. */
const LAST_READ = 3;
const RGB = 2;
const PALETTE = 3;
/** ResolutionUnit: 2 an inch, 3 a centimetre; 1 tells the proportions alone. */
const units = { 2: fromUnit(1, 'in'), 3: fromUnit(1, 'cm') } as const;
/** The tag of an embedded profile (ICC.1, annex B.4). */
const PROFILE = 34_675;

/** Samples of a pixel that tell its colour; the next tells its alpha, if any does. */
const colourSamples = ({ type }: TiffIfd): number => (type === RGB ? 3 : 1);

/** What each sample says, as eight bits: a shade, or one of a table of colours. */
function shadesOf(picture: TiffIfd): (samples: Uint8ClampedArray, from: number, channel: number) => number {
  const { type, palette, bitsPerSample } = picture;
  if (type === PALETTE) {
    const table = palette?.map((colour) => colour.map((channel) => channel >>> 8)) ?? [];
    return (samples, from, channel) => table[samples[from] as number]?.[channel] ?? 0;
  }
  // A single bit is given as 0 or 1.
  const scale = bitsPerSample === 1 ? 255 : 1;
  return type === RGB
    ? (samples, from, channel) => samples[from + channel] as number
    : (samples, from) => scale * (samples[from] as number);
}

/** Greys, or colours, with or without alpha, as four channels. */
function fourChannels(picture: TiffIfd, samples: Uint8ClampedArray): Uint8ClampedArray {
  const { components, alpha } = picture;
  if (components === 4 && alpha) return samples;
  const shade = shadesOf(picture);
  const rgba = new Uint8ClampedArray((samples.length / components) * 4);
  for (let from = 0, to = 0; from < samples.length; from += components, to += 4) {
    for (let channel = 0; channel < 3; channel += 1) rgba[to + channel] = shade(samples, from, channel);
    rgba[to + 3] = alpha ? (samples[from + colourSamples(picture)] as number) : 255;
  }
  return rgba;
}

/** Whether the library's samples are what they are taken for: pixel by pixel, alpha the last of those that it is multiplied into. */
const isRead = (picture: TiffIfd): boolean =>
  picture.type <= LAST_READ &&
  (picture.planarConfiguration === 1 || picture.components === 1) &&
  !(picture.associatedAlpha && picture.components !== colourSamples(picture) + 1) &&
  (picture.type !== PALETTE || picture.bitsPerSample === 8);

/** Reads the first picture of a TIFF. */
export function readTiff(bytes: Uint8Array): Result<Flat, FlatProblem> {
  const [head] = decode(bytes, { ignoreImageData: true, pages: [0] });
  if (!head) return fail('broken');
  const { width, height } = head;
  if (width * height > MOST_PIXELS) return fail('too-large');
  if (width > WIDEST) return fail('too-wide');
  if (!isRead(head)) return fail('layered');
  const [picture] = decode(bytes, { pages: [0] });
  if (!picture || picture.data instanceof Float32Array || picture.data instanceof Float64Array)
    return fail('layered');
  const unit = units[picture.resolutionUnit as keyof typeof units];
  const [x, y] = [picture.xResolution, picture.yResolution];
  const icc: unknown = picture.fields.get(PROFILE);
  return ok({
    width,
    height,
    rgba: fourChannels(picture, eightBits(picture.data)),
    density: unit && x > 0 && y > 0 ? { x: (x * 1_000_000) / unit, y: (y * 1_000_000) / unit } : null,
    icc:
      picture.type >= RGB && (icc instanceof Uint8Array || Array.isArray(icc)) ? Uint8Array.from(icc) : null,
  });
}
