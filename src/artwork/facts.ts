import { strFromU8 } from 'fflate';
import type { Result } from '../units';
import { isSrgb, readProfile } from './icc';
import { readInks } from './inks';
import { isJpeg, jpegInks, jpegProfile, readJpegHeader } from './jpeg';
import { isPng, readPngFacts, readPngHeader } from './png';
import { fontsNeeded, outsideNeeds, readSvgHeader } from './svg';
import { coarsestImage } from './svg-images';
import { isWebp, readWebpFacts, readWebpHeader } from './webp';

/** What a file says of itself that changes how it prints. */
export interface FileFacts {
  /** The name of a colour profile that is not sRGB. */
  readonly profile: string | null;
  /** Of an image in four inks, where that profile is from. */
  readonly inks?: 'held' | 'assumed';
  /** A gamma other than that of sRGB. */
  readonly gamma: number | null;
  readonly animated: boolean;
  /** More than eight bits a channel, which are read as eight. */
  readonly deep: boolean;
  /** Scripts and outside addresses in an SVG. */
  readonly outside: number;
  /** Fonts that an SVG or a PDF asks for and does not hold. */
  readonly fonts: readonly string[];
  /** Pixels of the coarsest image in an SVG or a PDF, across all of the drawing. */
  readonly embedded: number | null;
  /** Pixels on a length across, over those down: 1 where they are square. */
  readonly aspect: number;
}

/** The gAMA of sRGB, 1/2.2 (W3C PNG, third edition, 11.3.2.5), and how near to it is the same. */
const SRGB_GAMMA = 1 / 2.2;
const SAME_GAMMA = 0.02;

/** Of a file of which nothing is to be said. */
export const plainFacts: FileFacts = {
  profile: null,
  gamma: null,
  animated: false,
  deep: false,
  outside: 0,
  fonts: [],
  embedded: null,
  aspect: 1,
};

/** What the text of an SVG tells. */
function svgFacts(text: string): FileFacts {
  const density = coarsestImage(text);
  const header = readSvgHeader(text);
  const across = header.ok ? header.value.width * header.value.units : 0;
  return {
    ...plainFacts,
    outside: outsideNeeds(text),
    fonts: fontsNeeded(text),
    embedded: density === null || across === 0 ? null : density * across,
  };
}

const aspectOf = (header: Result<{ readonly aspect: number }, string>): number =>
  header.ok ? header.value.aspect : 1;

/** The name of a profile other than sRGB; what it calls itself, or else what the file does. */
function otherProfile(icc: Uint8Array | null, nameInFile = ''): string | null {
  const profile = icc && readProfile(icc);
  if (profile) return isSrgb(profile) ? null : profile.name || nameInFile || profile.space;
  return nameInFile !== '' && !/srgb/i.test(nameInFile) ? nameInFile : null;
}

/** What four inks are taken to look like where a file does not say: web offset in North America, by its characterization data. */
const ASSUMED_INKS = 'CGATS TR 001';

const inksFacts = (icc: Uint8Array | null): Pick<FileFacts, 'profile' | 'inks'> =>
  icc && readInks(icc)
    ? { profile: readProfile(icc)?.name || 'CMYK', inks: 'held' }
    : { profile: ASSUMED_INKS, inks: 'assumed' };

/** Reads them from the file's bytes, by what it is and not by its name. */
export function fileFacts(bytes: Uint8Array): FileFacts {
  if (isPng(bytes)) {
    const { bitDepth, animated, profile, gamma } = readPngFacts(bytes);
    return {
      ...plainFacts,
      aspect: aspectOf(readPngHeader(bytes)),
      profile: profile && otherProfile(profile.icc, profile.name),
      gamma: gamma !== null && Math.abs(gamma - SRGB_GAMMA) > SAME_GAMMA ? gamma : null,
      animated,
      deep: bitDepth > 8,
    };
  }
  if (isJpeg(bytes)) {
    const aspect = aspectOf(readJpegHeader(bytes));
    const inks = jpegInks(bytes);
    if (inks) return { ...plainFacts, aspect, ...inksFacts(inks.icc) };
    return { ...plainFacts, aspect, profile: otherProfile(jpegProfile(bytes)) };
  }
  if (isWebp(bytes)) {
    const { animated, icc } = readWebpFacts(bytes);
    const aspect = aspectOf(readWebpHeader(bytes));
    return { ...plainFacts, aspect, animated, profile: otherProfile(icc) };
  }
  return svgFacts(strFromU8(bytes));
}

/** The colour profile that lies in a raster file, its bytes as they are; `null` without one, or where it is that of sRGB. */
export function wideProfile(bytes: Uint8Array): Uint8Array | null {
  const icc = isPng(bytes)
    ? readPngFacts(bytes).profile?.icc
    : isJpeg(bytes)
      ? jpegProfile(bytes)
      : isWebp(bytes)
        ? readWebpFacts(bytes).icc
        : null;
  const profile = icc && readProfile(icc);
  return icc && profile && !isSrgb(profile) ? icc : null;
}
