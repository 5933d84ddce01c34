import { decode, type TiffIfd } from 'tiff';
import { fail, fromUnit, ok, type Result } from '../../../units';
import { MOST_PIXELS, WIDEST } from '../../most-pixels';
import { eightBits, type Flat, type FlatProblem } from './flat';

/** PhotometricInterpretation (TIFF 6.0, section 8): 0 and 1 are greys, 2 is RGB, 3 a table of colours. */
const LAST_READ = 3;
const RGB = 2;
/** ResolutionUnit: 2 an inch, 3 a centimetre; 1 tells the proportions alone. */
const units = { 2: fromUnit(1, 'in'), 3: fromUnit(1, 'cm') } as const;
/** The tag of an embedded profile (ICC.1, annex B.4). */
const PROFILE = 34_675;

/** Greys, or colours, with or without alpha, as four channels. */
function fourChannels({ components, alpha }: TiffIfd, samples: Uint8ClampedArray): Uint8ClampedArray {
  if (components === 4 && alpha) return samples;
  const colours = alpha ? components - 1 : components;
  const rgba = new Uint8ClampedArray((samples.length / components) * 4);
  for (let from = 0, to = 0; from < samples.length; from += components, to += 4) {
    for (let channel = 0; channel < 3; channel += 1)
      rgba[to + channel] = samples[from + (colours >= 3 ? channel : 0)] as number;
    rgba[to + 3] = alpha ? (samples[from + colours] as number) : 255;
  }
  return rgba;
}

/** Reads the first picture of a TIFF. */
export function readTiff(bytes: Uint8Array): Result<Flat, FlatProblem> {
  const [head] = decode(bytes, { ignoreImageData: true, pages: [0] });
  if (!head) return fail('broken');
  const { width, height } = head;
  if (width * height > MOST_PIXELS) return fail('too-large');
  if (width > WIDEST) return fail('too-wide');
  if (head.type > LAST_READ) return fail('layered');
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
