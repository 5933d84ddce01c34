const ascii = (bytes: Uint8Array, at: number, length: number) =>
  String.fromCharCode(...bytes.subarray(at, at + length));

/** What an ICC profile calls itself, and the space its numbers are in. */
export interface Profile {
  readonly name: string;
  /** `RGB`, `CMYK`, `GRAY`… */
  readonly space: string;
}

/**
 * Reads a profile's colour space and description (ICC.1:2022, 7.2.6 and 9.2.41; the older textDescriptionType of ICC.1:2001, 6.5.17).
 * @returns `null` if it is no profile
 */
export function readProfile(icc: Uint8Array): Profile | null {
  if (icc.length < 132 || ascii(icc, 36, 4) !== 'acsp') return null;
  const view = new DataView(icc.buffer, icc.byteOffset, icc.byteLength);
  const space = ascii(icc, 16, 4).trim();
  const count = Math.min(view.getUint32(128), 200);
  for (let entry = 0; entry < count; entry += 1) {
    const at = 132 + 12 * entry;
    if (at + 12 > icc.length) break;
    if (ascii(icc, at, 4) !== 'desc') continue;
    const [start, size] = [view.getUint32(at + 4), view.getUint32(at + 8)];
    if (start + size > icc.length) break;
    return { name: descriptionOf(icc.subarray(start, start + size)), space };
  }
  return { name: '', space };
}

function descriptionOf(tag: Uint8Array): string {
  const view = new DataView(tag.buffer, tag.byteOffset, tag.byteLength);
  const type = ascii(tag, 0, 4);
  if (type === 'desc' && tag.length >= 12) {
    const length = Math.min(view.getUint32(8), tag.length - 12);
    return ascii(tag, 12, length).replace(/\0.*$/s, '').trim();
  }
  if (type === 'mluc' && tag.length >= 28) {
    const [length, start] = [view.getUint32(20), view.getUint32(24)];
    if (start + length > tag.length) return '';
    const units = Array.from({ length: Math.floor(length / 2) }, (_, index) =>
      view.getUint16(start + 2 * index),
    );
    return String.fromCharCode(...units)
      .replace(/\0.*$/s, '')
      .trim();
  }
  return '';
}

/** Whether a profile is the one that browsers and most software take for granted (IEC 61966-2-1). */
export const isSrgb = ({ name, space }: Profile): boolean => space === 'RGB' && /srgb/i.test(name);
