import { strFromU8 } from 'fflate';
import { isSrgb, readProfile } from './icc';
import { isJpeg, jpegProfile } from './jpeg';
import { isPng, readPngFacts } from './png';
import { outsideNeeds } from './svg';
import { isWebp, readWebpFacts } from './webp';

/** What a file says of itself that changes how it prints. */
export interface FileFacts {
  /** The name of a colour profile that is not sRGB. */
  readonly profile: string | null;
  /** A gamma other than that of sRGB. */
  readonly gamma: number | null;
  readonly animated: boolean;
  /** More than eight bits a channel, which are read as eight. */
  readonly deep: boolean;
  /** Scripts and outside addresses in an SVG. */
  readonly outside: number;
}

/** The gAMA of sRGB, 1/2.2 (W3C PNG, third edition, 11.3.2.5), and how near to it is the same. */
const SRGB_GAMMA = 1 / 2.2;
const SAME_GAMMA = 0.02;

const plain: FileFacts = { profile: null, gamma: null, animated: false, deep: false, outside: 0 };

/** The name of a profile other than sRGB; what it calls itself, or else what the file does. */
function otherProfile(icc: Uint8Array | null, nameInFile = ''): string | null {
  const profile = icc && readProfile(icc);
  if (profile) return isSrgb(profile) ? null : profile.name || nameInFile || profile.space;
  return nameInFile !== '' && !/srgb/i.test(nameInFile) ? nameInFile : null;
}

/** Reads them from the file's bytes, by what it is and not by its name. */
export function fileFacts(bytes: Uint8Array): FileFacts {
  if (isPng(bytes)) {
    const { bitDepth, animated, profile, gamma } = readPngFacts(bytes);
    return {
      ...plain,
      profile: profile && otherProfile(profile.icc, profile.name),
      gamma: gamma !== null && Math.abs(gamma - SRGB_GAMMA) > SAME_GAMMA ? gamma : null,
      animated,
      deep: bitDepth > 8,
    };
  }
  if (isJpeg(bytes)) return { ...plain, profile: otherProfile(jpegProfile(bytes)) };
  if (isWebp(bytes)) {
    const { animated, icc } = readWebpFacts(bytes);
    return { ...plain, animated, profile: otherProfile(icc) };
  }
  return { ...plain, outside: outsideNeeds(strFromU8(bytes)) };
}
