import { getDefaultSRGBProfile } from '@cantoo/pdf-lib';

/** The ICC profile of sRGB (IEC 61966-2-1), 3 kB. */
export const srgbProfile = (): Uint8Array => getDefaultSRGBProfile();
